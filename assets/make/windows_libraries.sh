#!/usr/bin/env bash
# The libraries of the game for Windows, built once by mingw-w64 (cross_libraries.sh). Prints the
# folder that has them, for the preset "windows".
set -euo pipefail
# shellcheck source=assets/make/cross_libraries.sh
. "$(dirname "${BASH_SOURCE[0]}")/cross_libraries.sh"

cross=windows
cross_script=${BASH_SOURCE[0]}
cross_tools="g++-mingw-w64-x86-64-posix"
cross_cmake=(cmake "-DCMAKE_TOOLCHAIN_FILE=$wrenlet_root/assets/make/windows.cmake")
cross_cc=x86_64-w64-mingw32-gcc-posix
cross_ar=x86_64-w64-mingw32-ar
build_libraries() {
    local from=$1
    build_zlib "$from"/zlib-*/
    build_sdl "$from"
    build_libzip "$from"/libzip-*/
    build_ogg "$from"/libogg-*/
    build_sqlite "$from"/sqlite3-*/
    build_sodium "$from"/libsodium-*/
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
    have_cross_libraries
    echo "$cross_prefix"
fi
