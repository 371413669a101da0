#!/usr/bin/env bash
# The set-up that ./play and ./check share, on machines where something is missing or fails.
#   setup_test.sh PROJECT_ROOT CASE
# shellcheck disable=SC2016
set -euo pipefail
. "$1/tests/house/stand_ins.sh"

set_up() { bash -c 'set -euo pipefail; . assets/make/setup.sh; set_up; echo went on'; }
goes_on() {
    ends_well set_up
    says "went on"
}
stops() {
    ends_badly set_up
    says "To go on:"
}

without_libzip() {
    stand_in dpkg-query 'shift 3; for name in "$@"; do [ "$name" = libzip-dev ] || printf "%s installed," "$name"; done' \
        "[ ! -e '$place/grown' ] || printf 'libzip-dev installed,'"
}

nothing_is_missing() {
    goes_on
    not_called apt-get
    not_called "npm --prefix"
}

a_missing_library_is_installed() {
    without_libzip
    stand_in apt-get "case \"\$*\" in *install*) echo >'$place/grown' ;; esac"
    goes_on
    called "apt-get .*update"
    called "apt-get .*install -y --no-install-recommends libzip-dev\$"
}

a_library_that_is_still_missing() {
    without_libzip
    stops
    says "still missing after the installation: libzip-dev"
}

a_program_without_its_package_counts() {
    stand_in dpkg-query 'shift 3; for name in "$@"; do [ "$name" = npm ] || printf "%s installed," "$name"; done'
    goes_on
    not_called apt-get
}

an_installation_that_fails() {
    rm "$bin/npm"
    stand_in apt-get 'echo "E: Unable to locate package npm"' 'exit 100'
    stops
    says "Unable to locate package npm"
    says "apt-get could not install"
}

someone_else_without_sudo() {
    without_libzip
    stand_in id 'echo 1000'
    stops
    says "there is no sudo"
    says "libzip-dev"
    not_called apt-get
}

someone_else_with_sudo() {
    without_libzip
    stand_in id 'echo 1000'
    stand_in sudo "case \"\$*\" in *install*) echo >'$place/grown' ;; esac"
    goes_on
    called "sudo env DEBIAN_FRONTEND=noninteractive apt-get .*install"
    not_called "^apt-get"
}

an_old_cmake() {
    stand_in cmake 'echo "cmake version 3.22.1"'
    stops
    says "cmake 3.22.1 is too old: 3.25"
}

a_newer_cmake() {
    stand_in cmake 'echo "cmake version 4.0.2"'
    goes_on
}

another_system_with_everything() {
    echo 'ID=fedora' >"$place/os-release"
    goes_on
    says "untested"
    not_called apt-get
}

another_system_without() {
    echo 'ID=fedora' >"$place/os-release"
    rm "$bin/ninja"
    stand_in pkg-config '[ "$2" != libzip ]'
    stops
    says "not found: ninja libzip"
    says "Debian: .*ninja-build.*libzip-dev"
    says "Fedora (untested): .*libzip-devel"
    not_called apt-get
}

no_system_file_at_all() {
    rm "$place/os-release" "$bin/g++"
    stops
    says "not found: g++"
}

a_kin_of_ubuntu() {
    printf 'ID=linuxmint\nID_LIKE="ubuntu debian"\n' >"$place/os-release"
    without_libzip
    stand_in apt-get "case \"\$*\" in *install*) echo >'$place/grown' ;; esac"
    goes_on
    called apt-get
}

a_changed_lock() {
    echo >>"$place/assets/package-lock.json"
    goes_on
    called "npm --prefix $place/assets ci"
    : >"$place/calls"
    goes_on
    not_called "^npm"
}

npm_that_cannot_fetch() {
    rm "$place/assets/node_modules/.installed-lock.json"
    stand_in npm 'echo "npm ERR! network"' 'exit 1'
    stops
    says "npm ERR! network"
    says "npm could not fetch"
    [ ! -e "$place/assets/node_modules/.installed-lock.json" ] || wrong "took it for installed"
}

"$2"
