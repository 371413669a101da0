# A machine that is made up, for the tests of the scripts at the root: a copy of them in a folder of
# its own, and a PATH that holds only stand-ins, so that nothing is installed, built or fetched.
# Sourced by a test that was called with PROJECT_ROOT CASE.
# shellcheck shell=bash disable=SC2016,SC2034
# (what a stand-in does is written here and expanded there)

project=$1
place=$(cd "$(mktemp -d)" && pwd -P)
trap 'rm -rf "$place"' EXIT
bin=$place/bin
output=$place/output
mkdir -p "$bin" "$place/assets/make" "$place/assets/node_modules" "$place/build/release/bin"
cp "$project/play" "$project/check" "$place"
cp "$project/assets/make/setup.sh" "$place/assets/make"
cp "$project/assets/package-lock.json" "$place/assets"
cp "$project/assets/package-lock.json" "$place/assets/node_modules/.installed-lock.json"
echo 'ID=debian' >"$place/os-release"
touch "$place/calls"

# shellcheck disable=SC2046
ln -s $(command -v awk bash cat cmp cp dirname env find getconf grep mkdir mv node rm sed sort tail \
    tee touch uname) "$bin"

# stand_in NAME [LINE...]: a program that notes its call, then does these lines.
stand_in() {
    local program=$bin/$1 name=$1
    case $name in */*) program=$place/$name ;; esac
    shift
    printf '%s\n' "#!$bin/bash" "echo \"${name##*/} \$*\" >>'$place/calls'" "$@" >"$program"
    chmod +x "$program"
}
for tool in g++ ninja pkg-config ccache npm espeak-ng apt-get wine; do stand_in "$tool"; done
stand_in assets/make/web_page.sh 'echo build/release/share/wrenlet/page'
stand_in assets/make/windows_libraries.sh 'echo libraries-for-windows'
mkdir -p "$place/tests/web"
echo 'console.log("played", ...process.argv.slice(2))' >"$place/tests/web/check.mjs"
echo 'console.log("serves", ...process.argv.slice(2))' >"$place/assets/make/serve_page.mjs"
stand_in cmake 'echo "cmake version 3.25.1"'
stand_in id 'echo 0'
stand_in dpkg-query 'shift 3; for name in "$@"; do printf "%s installed," "$name"; done'

# on_it COMMAND...: runs it on that machine; what it prints goes to $output, stdout alone also to
# $output.out.
on_it() {
    (
        cd "$place" || exit
        unset DISPLAY WAYLAND_DISPLAY XDG_RUNTIME_DIR WRENLET_CLASSROOM WRENLET_PICTURES
        export HOME=$place/home PATH=$bin WRENLET_OS_RELEASE=$place/os-release
        set -o pipefail
        { "$@" | tee "$output.out"; } </dev/null >"$output" 2>&1
    )
}

wrong() {
    printf '%s\n--- it said:\n' "$1"
    cat "$output"
    printf -- '--- it called:\n'
    cat "$place/calls"
    exit 1
}
says() { grep -q -- "$1" "$output" || wrong "did not say: $1"; }
called() { grep -q -- "$1" "$place/calls" || wrong "did not call: $1"; }
not_called() { ! grep -q -- "$1" "$place/calls" || wrong "called: $1"; }
ends_well() { on_it "$@" || wrong "ended with an error: $*"; }
ends_badly() {
    if on_it "$@"; then wrong "did not end with an error: $*"; fi
}
last_line_is() { [ "$(tail -n 1 "$output")" = "$1" ] || wrong "the last line is not: $1"; }
