#!/usr/bin/env bash
# ./check with stand-ins for the build and the test runner: what it must never call a success.
#   check_test.sh PROJECT_ROOT CASE
# shellcheck disable=SC2016
set -euo pipefail
. "$1/tests/house/stand_ins.sh"
mkdir "$place/build/dev" "$place/build/asan" "$place/build/windows"

good='100% tests passed, 0 tests failed out of 7'
bad='86% tests passed, 1 tests failed out of 7'

ctest_says() { stand_in ctest "echo '$1'" 'echo "Total Test time (real) = 1 sec"' "exit $2"; }

all_tests_pass() {
    ctest_says "$good" 0
    ends_well ./check
    last_line_is "$good"
    called "ctest --preset dev .*-LE soak"
    called "cmake --build --preset dev"
}

a_test_fails() {
    ctest_says "$bad" 8
    ends_badly ./check
    last_line_is "$bad"
}

no_test_ran() {
    ctest_says 'No tests were found!!!' 0
    ends_badly ./check
    last_line_is 'No tests were found in the dev build.'
}

the_build_fails() {
    stand_in cmake 'case $* in --version) echo "cmake version 3.25.1" ;; --build*) echo "error: x"; exit 1 ;; esac'
    ctest_says "$good" 0
    ends_badly ./check
    says "the dev build failed"
    not_called "^ctest"
}

the_build_cannot_be_configured() {
    stand_in cmake 'case $* in --version) echo "cmake version 3.25.1" ;; --preset*) echo "no SDL2"; exit 1 ;; esac'
    ends_badly ./check
    says "no SDL2"
    says "could not configure the dev build"
}

the_continuous_check_is_the_same() {
    mkdir "$place/.ci"
    cp "$project/.ci/run" "$place/.ci/run"
    ctest_says "$bad" 8
    ends_badly bash .ci/run
    last_line_is "$bad"
}

all_includes_sanitizers_and_soaks() {
    ctest_says "$good" 0
    ends_well ./check --all
    last_line_is "$good"
    called "ctest --preset dev "
    called "ctest --preset asan .*-LE soak"
    ! grep "preset dev .*-LE" "$place/calls" || wrong "left the soaks out"
    called "ctest --preset windows"
    says "played build/release 100"
}

all_fails_when_only_the_page_does() {
    ctest_says "$good" 0
    echo 'process.exit(1)' >"$place/tests/web/check.mjs"
    ends_badly ./check --all
    last_line_is "not all well (see above)"
}

the_page_is_played() {
    ends_well ./check --web
    called "web_page.sh"
    says "played build/release 9"
    stand_in assets/make/web_page.sh 'exit 1'
    ends_badly ./check --web
}

the_game_for_windows_is_tested() {
    ctest_says "$good" 0
    ends_well ./check --windows
    called "windows_libraries.sh"
    called "cmake --build --preset windows"
    [ "$(grep -E '^wine|^ctest' "$place/calls" | cut -d ' ' -f -3)" = 'wine wineboot --init
ctest --preset windows' ] || wrong "did not set wine up before its tests"
    not_called "preset dev"
    ctest_says "$bad" 8
    ends_badly ./check --windows
    ctest_says "$good" 0
    stand_in wine 'exit 1'
    ends_badly ./check --windows
    last_line_is "not run: wine could not be set up (its last words are above)"
    stand_in wine
    ends_well ./check --windows
    stand_in assets/make/windows_libraries.sh 'exit 1'
    ends_badly ./check --windows
}

all_fails_when_only_windows_does() {
    stand_in ctest "case \$* in *windows*) echo '$bad'; exit 8 ;; *) echo '$good' ;; esac"
    ends_badly ./check --all
    last_line_is "$bad"
}

all_fails_when_only_the_first_run_does() {
    stand_in ctest "case \$* in *asan*) echo '$good' ;; *) echo '$bad'; exit 8 ;; esac"
    ends_badly ./check --all
    last_line_is "$bad"
}

benchmarks_print_only_their_lines() {
    stand_in ninja 'echo "bin/bench-draw: CXX_EXECUTABLE_LINKER"; echo "bin/wrenlet: CXX_EXECUTABLE_LINKER"; echo "bench-draw: phony"'
    stand_in build/release/bin/bench-draw 'echo "warming up"' \
        'echo "{\"name\":\"draw\",\"value\":2,\"unit\":\"ms\",\"baseline\":1,\"ratio\":2}"'
    ends_well ./check --bench
    [ "$(cat "$output.out")" = '{"name":"draw","value":2,"unit":"ms","baseline":1,"ratio":2}' ] ||
        wrong "stdout holds something else"
    called "cmake --build --preset release .*--target bench-draw"
}

a_benchmark_that_fails() {
    stand_in ninja 'echo "bin/bench-draw: CXX_EXECUTABLE_LINKER"'
    stand_in build/release/bin/bench-draw \
        'echo "{\"name\":\"draw\",\"value\":2,\"unit\":\"ms\",\"baseline\":1,\"ratio\":2}"' 'exit 3'
    ends_badly ./check --bench
    stand_in build/release/bin/bench-draw 'echo "{\"name\":\"draw\",\"value\":2}"'
    ends_badly ./check --bench
}

no_benchmark_at_all() {
    ends_badly ./check --bench
    says "there is no benchmark"
}

pictures_are_named() {
    stand_in ninja 'echo "bin/wrenlet-pictures: X"; echo "bin/wrenlet-desk-pictures: X"'
    stand_in build/release/bin/wrenlet-pictures 'touch "$1/badges.png"'
    stand_in build/release/bin/wrenlet-desk-pictures 'touch "$1/desk.png"'
    mkdir -p "$place/assets/readme" "$place/some where/readme"
    touch "$place/some where/readme/sort.png"
    ends_well ./check --pictures --readme "$place/some where"
    [ -e "$place/assets/readme/sort.png" ] || wrong "the README's pictures were not copied"
    ends_badly ./check --pictures --readme
    rm -r "$place/some where"
    ends_well ./check --pictures "$place/some where"
    [ "$(cat "$output.out")" = "$place/some where/badges.png
$place/some where/desk.png" ] || wrong "stdout holds something else"
}

the_ear_is_measured() {
    stand_in build/release/bin/wrenlet-ear 'echo "{}"'
    ends_well ./check --ear --json
    [ "$(cat "$output.out")" = '{}' ] || wrong "stdout holds something else"
    called "cmake --build --preset release .*--target wrenlet-ear"
    called "wrenlet-ear --json"
    not_called "apt-get .*install"
    stand_in build/release/bin/wrenlet-ear 'exit 1'
    ends_badly ./check --ear
}

a_voice_for_the_ear_is_installed() {
    stand_in dpkg-query 'shift 3; for name in "$@"; do [ "$name" = festival ] || printf "%s installed," "$name"; done'
    stand_in apt-get
    stand_in build/release/bin/wrenlet-ear 'echo "{}"'
    ends_well ./check --ear
    called "apt-get .*install -y --no-install-recommends festival\$"
}

a_simulation_is_judged() {
    stand_in build/release/bin/wrenlet-simulate 'echo "{}"'
    ends_well ./check --simulate --json --children 20
    [ "$(cat "$output.out")" = '{}' ] || wrong "stdout holds something else"
    called "cmake --build --preset release .*--target wrenlet-simulate"
    called "wrenlet-simulate --seeds judge --threads [0-9]* --json --children 20"
    stand_in build/release/bin/wrenlet-simulate 'exit 2'
    ends_badly ./check --simulate
}

what_it_does_not_know() {
    ends_badly ./check --fast
    ends_badly ./check --pictures
    not_called cmake
}

"$2"
