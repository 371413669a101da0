#!/usr/bin/env bash
# The libraries of the web page, built once by emscripten from the sources of the very versions that
# Debian installed for the native build. Prints the folder that has them, for the preset "web".
# Kept in ~/.cache/wrenlet/web-KEY, or in what WRENLET_WEB_CACHE names instead of ~/.cache/wrenlet;
# KEY follows from this script and those versions. Sourced by web_page.sh, or run by itself.
set -euo pipefail
# shellcheck source=assets/make/setup.sh
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

# The packages installed here whose sources are built, in the order in which they need one another.
web_packages="zlib1g-dev libsdl2-dev libfreetype-dev libsdl2-ttf-dev libsdl2-mixer-dev
    libsdl2-image-dev libsqlite3-dev libzip-dev libogg-dev libsodium-dev"

# As SOURCE=VERSION, one a line.
web_sources() {
    # shellcheck disable=SC2086
    dpkg-query -W -f '${source:Package}=${source:Version}\n' $web_packages
}

web_key() {
    {
        cat "$wrenlet_root/assets/make/web_libraries.sh"
        web_sources
        dpkg-query -W -f '${Package}=${Version}\n' emscripten nlohmann-json3-dev
    } | sha256sum | cut -c1-12
}

# fetch_sources FOLDER: with lists of our own, so that the machine's package settings stay as they
# are; its own entries tell where the sources lie.
fetch_sources() {
    local entry
    mkdir -p "$1/parts" "$1/lists/partial"
    for entry in /etc/apt/sources.list /etc/apt/sources.list.d/*; do
        [ -r "$entry" ] || continue
        case $entry in
            *.sources) sed 's/^Types:.*/Types: deb-src/' "$entry" >"$1/parts/${entry##*/}" ;;
            *.list) sed -n 's/^deb /deb-src /p' "$entry" >"$1/parts/${entry##*/}" ;;
        esac
    done
    local options=(-o "Dir::Etc::SourceList=/dev/null" -o "Dir::Etc::SourceParts=$1/parts"
        -o "Dir::State::Lists=$1/lists" -o "APT::Sandbox::User=$(id -un)")
    # Entries that have no sources fail here; whether ours were among them is seen below.
    logged apt-get "${options[@]}" update || say "Web: not every list of sources was found; going on"
    # shellcheck disable=SC2046
    (cd "$1" && logged apt-get "${options[@]}" source --yes $(web_sources)) ||
        fail "apt-get could not fetch the sources that the web page is built from (its last words are above)." \
            "bring this machine's packages up to date (apt-get update && apt-get upgrade), then start again."
}

could_not_be_built() {
    fail "$1 could not be built for the web (its last words are above)." \
        "put that right; all of it is in $wrenlet_log."
}

# cmake_library SOURCE_FOLDER CMAKE_ARGUMENT...: into $prefix. Built for size, as the page is: what
# must be quick (decoding sound and pictures) says so itself.
cmake_library() {
    local source=$1
    shift
    say "Web: building $(basename "$source")"
    { logged emcmake cmake -S "$source" -B "$source/wasm" -G Ninja -DCMAKE_BUILD_TYPE=MinSizeRel \
        -DCMAKE_INSTALL_PREFIX="$prefix" -DCMAKE_PREFIX_PATH="$prefix" \
        -DCMAKE_FIND_ROOT_PATH="$prefix" -DBUILD_SHARED_LIBS=OFF "$@" &&
        logged cmake --build "$source/wasm" -j "$(processors)" &&
        logged cmake --install "$source/wasm"; } ||
        could_not_be_built "$(basename "$source")"
}

# The page's one font is TrueType, drawn without hints: no other kind of font is read.
truetype_alone() {
    printf 'FT_USE_MODULE( %s )\n' 'FT_Driver_ClassRec, tt_driver_class' 'FT_Module_Class, sfnt_module_class' \
        'FT_Renderer_Class, ft_smooth_renderer_class' >"$1"
}

# By its own makefile: Debian's sources lack a file that its CMake list names.
build_zlib() {
    say "Web: building zlib"
    (cd "$1" && logged emconfigure ./configure --static --prefix="$prefix" &&
        logged emmake make libz.a && cp libz.a "$prefix/lib" && cp zlib.h zconf.h "$prefix/include") ||
        could_not_be_built zlib
}

# Two files. Its CMake list, too, asks for the sizes of types by running a program.
build_ogg() {
    say "Web: building libogg"
    (cd "$1" && mkdir -p "$prefix/include/ogg" &&
        sed -e 's/@INCLUDE_[A-Z_]*@/1/; s/@SIZE\([0-9]*\)@/int\1_t/; s/@USIZE\([0-9]*\)@/uint\1_t/' \
            include/ogg/config_types.h.in >include/ogg/config_types.h &&
        logged emcc -c -O2 -Iinclude src/framing.c src/bitwise.c &&
        logged emar rcs "$prefix/lib/libogg.a" framing.o bitwise.o &&
        cp include/ogg/*.h "$prefix/include/ogg") || could_not_be_built libogg
}

build_sqlite() {
    say "Web: building sqlite3"
    (cd "$1" && logged ./configure --disable-tcl --disable-readline && logged make sqlite3.c &&
        logged emcc -c -Oz -DSQLITE_THREADSAFE=0 -DSQLITE_OMIT_LOAD_EXTENSION \
            -DSQLITE_OMIT_JSON -DSQLITE_OMIT_DEPRECATED -DSQLITE_OMIT_SHARED_CACHE -DSQLITE_OMIT_TRACE \
            -DSQLITE_OMIT_DECLTYPE -DSQLITE_OMIT_COMPLETE -DSQLITE_DEFAULT_MEMSTATUS=0 sqlite3.c -o sqlite3.o &&
        logged emar rcs "$prefix/lib/libsqlite3.a" sqlite3.o && cp sqlite3.h "$prefix/include") ||
        could_not_be_built sqlite3
}

# Its sources as they are, with no processor's own instructions: its configure is not in Debian's.
build_sodium() {
    say "Web: building libsodium"
    (cd "$1/src/libsodium" &&
        sed -e 's/@VERSION@/1.0.18/; s/@SODIUM_LIBRARY_VERSION_MAJOR@/10/; s/@SODIUM_LIBRARY_VERSION_MINOR@/3/' \
            -e 's/@SODIUM_LIBRARY_MINIMAL_DEF@//' include/sodium/version.h.in >include/sodium/version.h &&
        mkdir -p wasm && logged compile_sodium && logged emar rcs "$prefix/lib/libsodium.a" wasm/*.o &&
        cp -R include/sodium include/sodium.h "$prefix/include") || could_not_be_built libsodium
}

compile_sodium() {
    # shellcheck disable=SC2016
    find . -name '*.c' -print0 | xargs -0 -n 1 -P "$(processors)" sh -c '
        emcc -c -O2 -DCONFIGURED=1 -DNATIVE_LITTLE_ENDIAN=1 -Iinclude -Iinclude/sodium "$1" \
            -o "wasm/part$(echo "$1" | tr / _).o"' sh
}

# build_web_libraries WORK_FOLDER: all of them into $prefix.
build_web_libraries() {
    local from=$1
    mkdir -p "$prefix/lib" "$prefix/include"
    build_zlib "$from"/zlib-*/
    # No sticks and pads, and no pictures in colours of television: nothing here makes them.
    cmake_library "$from"/libsdl2-2*/ -DSDL_SHARED=OFF -DSDL_STATIC=ON -DSDL_TEST=OFF -DSDL_TESTS=OFF \
        -DSDL_JOYSTICK=OFF -DSDL_HAPTIC=OFF -DSDL_HIDAPI=OFF -DSDL_SENSOR=OFF -DSDL_DISKAUDIO=OFF \
        -DSDL_DUMMYAUDIO=OFF -DSDL_DUMMYVIDEO=OFF -DCMAKE_C_FLAGS="-DSDL_HAVE_YUV=0 -DSDL_HAVE_RLE=0"
    truetype_alone "$from"/freetype-*/include/freetype/config/ftmodule.h
    cmake_library "$from"/freetype-*/ -DFT_DISABLE_HARFBUZZ=ON -DFT_DISABLE_BZIP2=ON \
        -DFT_DISABLE_PNG=ON -DFT_REQUIRE_ZLIB=ON -DFT_DISABLE_BROTLI=ON
    cmake_library "$from"/libsdl2-ttf-*/ -DSDL2TTF_SAMPLES=OFF -DSDL2TTF_HARFBUZZ=OFF -DSDL2TTF_VENDORED=OFF
    cmake_library "$from"/libsdl2-mixer-*/ -DCMAKE_BUILD_TYPE=Release -DSDL2MIXER_SAMPLES=OFF -DSDL2MIXER_DEPS_SHARED=OFF \
        -DSDL2MIXER_VENDORED=OFF -DSDL2MIXER_CMD=OFF -DSDL2MIXER_FLAC=ON -DSDL2MIXER_FLAC_LIBFLAC=OFF \
        -DSDL2MIXER_FLAC_DRFLAC=ON -DSDL2MIXER_MOD=OFF -DSDL2MIXER_MIDI=OFF -DSDL2MIXER_OPUS=OFF \
        -DSDL2MIXER_VORBIS=STB -DSDL2MIXER_MP3=OFF
    cmake_library "$from"/libsdl2-image-*/ -DCMAKE_BUILD_TYPE=Release -DSDL2IMAGE_VENDORED=ON -DSDL2IMAGE_BACKEND_STB=ON \
        -DSDL2IMAGE_SAMPLES=OFF -DSDL2IMAGE_TESTS=OFF -DSDL2IMAGE_DEPS_SHARED=OFF \
        -DSDL2IMAGE_AVIF=OFF -DSDL2IMAGE_JXL=OFF -DSDL2IMAGE_TIF=OFF -DSDL2IMAGE_WEBP=OFF \
        -DSDL2IMAGE_BMP=OFF -DSDL2IMAGE_GIF=OFF -DSDL2IMAGE_JPG=OFF -DSDL2IMAGE_LBM=OFF \
        -DSDL2IMAGE_PCX=OFF -DSDL2IMAGE_PNM=OFF -DSDL2IMAGE_QOI=OFF -DSDL2IMAGE_TGA=OFF \
        -DSDL2IMAGE_XCF=OFF -DSDL2IMAGE_XPM=OFF -DSDL2IMAGE_XV=OFF
    # It asks for the sizes of types by running a program, which emscripten cannot.
    cmake_library "$from"/libzip-*/ -DHAVE_SIZEOF_OFF_T=TRUE -DSIZEOF_OFF_T=8 \
        -DHAVE_SIZEOF_SIZE_T=TRUE -DSIZEOF_SIZE_T=4 -DENABLE_COMMONCRYPTO=OFF -DENABLE_GNUTLS=OFF -DENABLE_MBEDTLS=OFF \
        -DENABLE_OPENSSL=OFF -DENABLE_WINDOWS_CRYPTO=OFF -DENABLE_BZIP2=OFF -DENABLE_LZMA=OFF \
        -DENABLE_ZSTD=OFF -DBUILD_TOOLS=OFF -DBUILD_REGRESS=OFF -DBUILD_EXAMPLES=OFF -DBUILD_DOC=OFF
    build_ogg "$from"/libogg-*/
    build_sqlite "$from"/sqlite3-*/
    build_sodium "$from"/libsodium-*/
    # Headers alone, those of the native build.
    cp -R /usr/include/nlohmann "$prefix/include"
}

# Sets web_prefix. Under a second when they are there.
have_web_libraries() {
    debian_like || fail "the web page's libraries are built from Debian's sources, and this is not Debian or Ubuntu." \
        "build the page on Debian 12, or in a container of it."
    # shellcheck disable=SC2086
    have_also emscripten dpkg-dev tcl ca-certificates $web_packages
    export NODE_PATH=/usr/share/nodejs${NODE_PATH:+:$NODE_PATH} # where Debian's emscripten finds acorn
    local cache=${WRENLET_WEB_CACHE:-${XDG_CACHE_HOME:-${HOME:?}/.cache}/wrenlet}
    web_prefix=$cache/web-$(web_key)
    [ ! -f "$web_prefix/whole" ] || return 0
    say "Web: building the page's libraries once; four to twenty minutes"
    rm -rf "$web_prefix"
    mkdir -p "$web_prefix" || fail "$web_prefix cannot be made." "name another folder: WRENLET_WEB_CACHE=FOLDER"
    local prefix=$web_prefix work
    work=$(mktemp -d)
    wrenlet_log=$web_prefix/build.log
    fetch_sources "$work"
    build_web_libraries "$work"
    rm -rf "$work"
    touch "$web_prefix/whole"
    wrenlet_log=$wrenlet_root/build/setup.log
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
    have_web_libraries
    echo "$web_prefix"
fi
