#!/usr/bin/env bash
# The libraries of the web page, built once by emscripten (cross_libraries.sh). Prints the folder
# that has them, for the preset "web". Sourced by web_page.sh, or run by itself.
set -euo pipefail
# shellcheck source=assets/make/cross_libraries.sh
. "$(dirname "${BASH_SOURCE[0]}")/cross_libraries.sh"

cross=web
cross_script=${BASH_SOURCE[0]}
cross_tools="emscripten"
cross_cmake=(emcmake cmake)
cross_cc=emcc
cross_ar=emar
export NODE_PATH=/usr/share/nodejs${NODE_PATH:+:$NODE_PATH} # where Debian's emscripten finds acorn

build_libraries() {
    local from=$1
    build_zlib "$from"/zlib-*/
    # No sticks and pads, no pictures in colours of television, no quick ways between kinds of pixels
    # that nothing here draws in, and of text encodings SDL's own few: with the C library's tables
    # for Chinese, Japanese and Korean a page is a tenth of a megabyte more.
    build_sdl "$from" -DSDL_JOYSTICK=OFF -DSDL_HAPTIC=OFF -DSDL_HIDAPI=OFF -DSDL_SENSOR=OFF \
        -DSDL_DISKAUDIO=OFF -DSDL_DUMMYAUDIO=OFF -DSDL_DUMMYVIDEO=OFF -DSDL_SYSTEM_ICONV=OFF \
        -DCMAKE_C_FLAGS="-DSDL_HAVE_YUV=0 -DSDL_HAVE_RLE=0 -DSDL_HAVE_BLIT_AUTO=0 -DSDL_HAVE_BLIT_N_RGB565=0"
    # It asks for the sizes of types by running a program, which emscripten cannot.
    build_libzip "$from"/libzip-*/ -DHAVE_SIZEOF_OFF_T=TRUE -DSIZEOF_OFF_T=8 -DHAVE_SIZEOF_SIZE_T=TRUE -DSIZEOF_SIZE_T=4
    build_ogg "$from"/libogg-*/
    build_sqlite "$from"/sqlite3-*/ -Oz -DSQLITE_THREADSAFE=0 -DSQLITE_OMIT_JSON -DSQLITE_OMIT_DEPRECATED \
        -DSQLITE_OMIT_SHARED_CACHE -DSQLITE_OMIT_TRACE -DSQLITE_OMIT_DECLTYPE -DSQLITE_OMIT_COMPLETE \
        -DSQLITE_DEFAULT_MEMSTATUS=0
    build_sodium "$from"/libsodium-*/
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
    have_cross_libraries
    echo "$cross_prefix"
fi
