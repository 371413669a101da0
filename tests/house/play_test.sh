#!/usr/bin/env bash
# ./play with stand-ins for the build and the programs: the teacher's classroom is kept, and a
# machine without a display still leaves something to look at.
#   play_test.sh PROJECT_ROOT CASE
# shellcheck disable=SC2016
set -euo pipefail
. "$1/tests/house/stand_ins.sh"

mkdir -p "$place/build/release/starter-classroom/packs"
echo '{}' >"$place/build/release/starter-classroom/class.json"
stand_in build/release/bin/wrenlet \
    'while [ $# -gt 0 ]; do [ "$1" != --pictures ] || touch "$2/001.png"; shift; done'
stand_in build/release/bin/wrenlet-desk \
    'case $1 in progress) echo "{}" ;; *) [ "${2-}" != --picture ] || touch "$3" ;; esac'

# Something that answers where a display would, at $place/display.
start_display() {
    node -e '
        const server = require("net").createServer(c => c.end()).listen(process.argv[1]);
        server.on("listening", () => console.log("ready"));
        setTimeout(() => process.exit(1), 60000);' "$place/display" >"$place/display.log" &
    server=$!
    trap 'kill "$server"; rm -rf "$place"' EXIT
    until grep -q ready "$place/display.log"; do
        kill -0 "$server" || wrong "the display did not start"
        sleep 0.05
    done
}

the_first_start_makes_the_classroom() {
    start_display
    ends_well env WAYLAND_DISPLAY="$place/display" ./play
    called "wrenlet $place/home/Wrenlet/classroom\$"
    called "cmake --build --preset release .*--target wrenlet wrenlet-desk starter_classroom"
    [ -e "$place/home/Wrenlet/classroom/class.json" ] || wrong "made no classroom"
}

a_classroom_is_never_overwritten() {
    mkdir -p "$place/home/Wrenlet/classroom"
    echo mine >"$place/home/Wrenlet/classroom/class.json"
    start_display
    ends_well env WAYLAND_DISPLAY="$place/display" ./play
    [ "$(cat "$place/home/Wrenlet/classroom/class.json")" = mine ] || wrong "overwrote it"
}

a_folder_of_her_own() {
    start_display
    ends_well env WAYLAND_DISPLAY="$place/display" WRENLET_CLASSROOM="$place/a stick" ./play desk
    called "wrenlet-desk $place/a stick\$"
    [ -e "$place/a stick/class.json" ] || wrong "made no classroom"
    [ ! -e "$place/home" ] || wrong "made another one at home"
}

a_folder_that_cannot_be_made() {
    echo >"$place/file"
    start_display
    ends_badly env WAYLAND_DISPLAY="$place/display" WRENLET_CLASSROOM="$place/file/room" ./play
    says "could not be made"
    not_called "^wrenlet "
}

without_a_display() {
    ends_well ./play
    says "There is no display here"
    called "wrenlet $place/build/play/classroom --data $place/build/play/tablet --off-screen"
    [ "$(tail -n 3 "$output.out")" = "$place/build/play/child/001.png
$place/build/play/desk/progress.json
$place/build/play/desk/progress.png" ] || wrong "the last lines do not name the files"
    [ ! -e "$place/home" ] || wrong "touched the teacher's folder"
}

a_display_that_nobody_answers_at() {
    ends_well env DISPLAY=:4711 WAYLAND_DISPLAY="$place/nothing" ./play
    says "There is no display here"
}

what_is_old_is_not_shown_as_new() {
    mkdir -p "$place/build/play/child"
    touch "$place/build/play/child/999.png"
    ends_well ./play
    [ ! -e "$place/build/play/child/999.png" ] || wrong "kept an old picture"
}

a_child_that_ends_with_an_error() {
    stand_in build/release/bin/wrenlet 'echo "no pack"' 'exit 1'
    ends_badly ./play
    says "wrenlet ended with an error"
}

the_desk_without_a_display() {
    ends_well ./play desk
    last_line_is "$place/build/play/desk.png"
}

the_page_is_served() {
    ends_well ./play --web
    last_line_is "serves build/release/share/wrenlet/page build/release/starter-classroom 8470"
    stand_in assets/make/web_page.sh 'exit 1'
    ends_badly ./play --web
}

what_it_does_not_have() {
    ends_badly ./play --fast
    not_called cmake
}

"$2"
