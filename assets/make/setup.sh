# What ./play and ./check share: have what the build needs on this machine, build one preset, and
# say plainly what failed. Sourced, not run. Progress goes to stderr, so that stdout stays for
# results. Keeps to bash 3.2, which is what macOS has.
# shellcheck shell=bash

wrenlet_root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
wrenlet_log=$wrenlet_root/build/setup.log

# What is needed, how it is found, and the package that brings it. A program counts wherever it is
# on PATH; a module is asked of pkg-config; the rest ("-") only a package list can tell. Debian 12
# is what we run; the names for Fedora and Homebrew are from memory.
#   kind    found by    Debian                Fedora              Homebrew
needs() {
    cat <<'END'
    program g++         g++                   gcc-c++             -
    program cmake       cmake                 cmake               cmake
    program ninja       ninja-build           ninja-build         ninja
    program pkg-config  pkg-config            pkgconf-pkg-config  pkgconf
    program ccache      ccache                ccache              ccache
    program node        nodejs                nodejs              node
    program npm         npm                   nodejs-npm          -
    module  sdl2        libsdl2-dev           SDL2-devel          sdl2
    module  SDL2_mixer  libsdl2-mixer-dev     SDL2_mixer-devel    sdl2_mixer
    module  SDL2_ttf    libsdl2-ttf-dev       SDL2_ttf-devel      sdl2_ttf
    module  SDL2_image  libsdl2-image-dev     SDL2_image-devel    sdl2_image
    module  imgui       libimgui-dev          imgui-devel         imgui
    module  freetype2   libfreetype-dev       freetype-devel      freetype
    module  sqlite3     libsqlite3-dev        sqlite-devel        sqlite
    module  libsodium   libsodium-dev         libsodium-devel     libsodium
    module  libmicrohttpd libmicrohttpd-dev   libmicrohttpd-devel libmicrohttpd
    module  libqrencode libqrencode-dev       qrencode-devel      qrencode
    module  zlib        zlib1g-dev            zlib-devel          zlib
    module  libzip      libzip-dev            libzip-devel        libzip
    module  libebur128  libebur128-dev        libebur128-devel    libebur128
    module  sndfile     libsndfile1-dev       libsndfile-devel    libsndfile
    module  samplerate  libsamplerate0-dev    libsamplerate-devel libsamplerate
    module  soxr        libsoxr-dev           soxr-devel          libsoxr
    module  ogg         libogg-dev            libogg-devel        libogg
    module  libexif     libexif-dev           libexif-devel       libexif
    other   -           libpocketsphinx-dev   pocketsphinx-devel  -
    other   -           pocketsphinx-en-us    pocketsphinx-models -
    other   -           nlohmann-json3-dev    json-devel          nlohmann-json
    other   -           doctest-dev           doctest-devel       doctest
    other   -           libboost-dev          boost-devel         boost
    other   -           libstb-dev            stb-devel           -
    other   -           flite1-dev            flite-devel         flite
    program espeak-ng   espeak-ng             espeak-ng           espeak-ng
    other   -           festlex-cmu           -                   -
    other   -           fonts-sil-andika      sil-andika-fonts    font-andika
END
}

say() { printf '%s\n' "$*" >&2; }

# fail WHAT WHAT_TO_DO: the only way these scripts give up.
fail() {
    printf '\nWrenlet: %s\n  To go on: %s\n' "$1" "$2" >&2
    exit 1
}

# logged COMMAND...: runs it with no input, its output into the log; on failure shows the end of it.
logged() {
    mkdir -p "$(dirname "$wrenlet_log")"
    "$@" </dev/null >"$wrenlet_log" 2>&1 && return
    local status=$?
    tail -n 25 "$wrenlet_log" >&2
    return "$status"
}

processors() { getconf _NPROCESSORS_ONLN 2>/dev/null || echo 2; }

# The tests stand another system's file in for this one.
debian_like() {
    local release=${WRENLET_OS_RELEASE:-/etc/os-release}
    [ -r "$release" ] && grep -Eq '^(ID|ID_LIKE)=.*(debian|ubuntu)' "$release"
}

has_program() { command -v "$1" >/dev/null 2>&1; }

# The Debian packages that are missing, on one line.
missing_on_debian() {
    local installed kind probe package missing=""
    # shellcheck disable=SC2046
    installed=$(dpkg-query -W -f '${Package} ${db:Status-Status},' \
        $(needs | awk '{ print $3 }') 2>/dev/null || true)
    while read -r kind probe package _; do
        if [ "$kind" = program ]; then
            has_program "$probe" && continue
        else
            case ",$installed" in *",$package installed,"*) continue ;; esac
        fi
        missing="$missing $package"
    done <<<"$(needs)"
    echo "${missing# }"
}

# What is missing elsewhere, as far as it can be told, as rows of needs().
missing_elsewhere() {
    local kind probe rest
    needs | while read -r kind probe rest; do
        case $kind in
            program) has_program "$probe" || echo "$kind $probe $rest" ;;
            module) pkg-config --exists "$probe" 2>/dev/null || echo "$kind $probe $rest" ;;
        esac
    done
}

install_on_debian() {
    local missing=$1 as_root=""
    local by_hand="apt-get update && apt-get install --no-install-recommends $missing"
    if [ "$(id -u)" != 0 ]; then
        has_program sudo || fail "packages are missing, and there is no sudo to install them with." \
            "run this as root, then start again: $by_hand"
        as_root=sudo
    fi
    say "Set-up: bringing the package lists up to date (apt-get update)"
    logged $as_root apt-get -o DPkg::Lock::Timeout=120 update ||
        say "Set-up: that failed; going on with the lists that are here"
    say "Set-up: installing, which can take minutes: $missing"
    # shellcheck disable=SC2086
    logged $as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=120 \
        install -y --no-install-recommends $missing ||
        fail "apt-get could not install what is missing (its last words are above)." \
            "put that right (Ubuntu needs its 'universe' part), or install by hand: $by_hand"
    missing=$(missing_on_debian)
    [ -z "$missing" ] || fail "still missing after the installation: $missing" \
        "look at $wrenlet_log and install them by hand."
}

# column N ROWS: that column of needs(), on one line, without the gaps.
column() { printf '%s\n' "$2" | awk -v n="$1" '$n != "-" { printf "%s%s", s, $n; s = " " }'; }

have_packages() {
    local missing
    if debian_like; then
        missing=$(missing_on_debian)
        [ -z "$missing" ] || install_on_debian "$missing"
        return
    fi
    missing=$(missing_elsewhere)
    if [ -n "$missing" ]; then
        fail "this is not Debian or Ubuntu, so nothing is installed here, and these were not found: $(column 2 "$missing")" \
            "install them and start again. All that is needed, by name:
    Debian:                $(column 3 "$(needs)")
    Fedora (untested):     $(column 4 "$(needs)")
    Homebrew (untested):   $(column 5 "$(needs)")"
    fi
    say "Set-up: this is not Debian or Ubuntu; the tools are here, so going on (untested)"
}

# have_also PACKAGE...: what one command alone needs; only on Debian, elsewhere it says itself what
# it goes without.
have_also() {
    local installed package missing=""
    debian_like || return 0
    installed=$(dpkg-query -W -f '${Package} ${db:Status-Status},' "$@" 2>/dev/null || true)
    for package in "$@"; do
        case ",$installed" in *",$package installed,"*) ;; *) missing="$missing $package" ;; esac
    done
    [ -z "$missing" ] || install_on_debian "${missing# }"
}

have_new_cmake() {
    local version major minor
    version=$(cmake --version | sed -n '1s/^[^0-9]*//p')
    IFS=. read -r major minor _ <<<"$version"
    [ $((major * 1000 + minor)) -ge 3025 ] ||
        fail "cmake $version is too old: 3.25 or newer is needed." \
            "take it from Debian 12, Ubuntu 24.04 or newer, or put a newer cmake first on PATH."
}

# The lock beside the packages it was installed from tells whether they are still the right ones.
have_npm_packages() {
    local lock=$wrenlet_root/assets/package-lock.json
    local stamp=$wrenlet_root/assets/node_modules/.installed-lock.json
    cmp -s "$lock" "$stamp" && return
    say "Set-up: fetching the pronunciations and pictures (npm ci in assets/)"
    logged npm --prefix "$wrenlet_root/assets" ci --ignore-scripts --no-audit --no-fund ||
        fail "npm could not fetch the packages that assets/package-lock.json names (its last words are above)." \
            "see that this machine reaches an npm registry, then start again."
    cp "$lock" "$stamp"
}

# Everything the build needs, or a clear end. Under a second when nothing is missing.
set_up() {
    have_packages
    have_new_cmake
    have_npm_packages
}

configure() {
    logged cmake --preset "$1" ||
        fail "cmake could not configure the $1 build (its last words are above)." \
            "put that right; if the folder was moved or a library changed, delete build/$1 and start again."
}

# build PRESET [TARGET...]: everything, unless targets are named.
build() {
    local preset=$1
    shift
    say "Building: $preset${*:+ ($*)}"
    configure "$preset"
    [ $# = 0 ] || set -- --target "$@"
    cmake --build --preset "$preset" -j "$(processors)" "$@" </dev/null >&2 ||
        fail "the $preset build failed (the compiler's words are above)." \
            "put that right, or, if nothing was changed here, delete build/$preset and start again."
}

# programs PRESET PATTERN: the programs of that name that this build makes, made or not.
programs() {
    ninja -C "$wrenlet_root/build/$1" -t targets all |
        sed -n 's|^bin/\([^:/]*\): .*|\1|p' | while read -r name; do
        # shellcheck disable=SC2254
        case $name in $2) echo "$name" ;; esac
    done
}
