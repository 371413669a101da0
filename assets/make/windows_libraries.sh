#!/usr/bin/env bash
# The libraries of the game and the desk for Windows, built once by mingw-w64 (cross_libraries.sh).
# Prints the folder that has them, for the preset "windows".
set -euo pipefail
# shellcheck source=assets/make/cross_libraries.sh
. "$(dirname "${BASH_SOURCE[0]}")/cross_libraries.sh"

cross=windows
cross_script=${BASH_SOURCE[0]}
cross_tools="g++-mingw-w64-x86-64-posix m4"
cross_cmake=(cmake "-DCMAKE_TOOLCHAIN_FILE=$wrenlet_root/assets/make/windows.cmake")
cross_cc=x86_64-w64-mingw32-gcc-posix
cross_ar=x86_64-w64-mingw32-ar
# Of the desk alone.
cross_packages="$cross_packages libimgui-dev libflac-dev libvorbis-dev libopus-dev libmp3lame0
    libsndfile1-dev libsamplerate0-dev libsoxr-dev libexif-dev libsphinxbase-dev libpocketsphinx-dev
    libgmp-dev nettle-dev libgnutls28-dev libmicrohttpd-dev"
cross_tars="libebur128-dev libmpg123-dev libqrencode-dev flite1-dev"

# The desk's letters are hinted lightly, by the module that does so for every kind of font.
eval "game_$(declare -f truetype_alone)"
truetype_alone() {
    game_truetype_alone "$1"
    printf 'FT_USE_MODULE( %s )\n' 'FT_Module_Class, autofit_module_class' >>"$1"
}

# configured_library SOURCE_FOLDER ARGUMENT...: by its own configure, into $prefix; with $make_parts, if
# that is set, instead of all its folders. What Debian's patches changed counts as older than what
# autoconf and automake once made of it: neither is here.
configured_library() {
    local source=$1 part
    shift
    say "For $cross: building $(basename "$source")"
    find "$source" \( -name '*.am' -o -name '*.ac' -o -name '*.m4' \) -exec touch -d 2000-01-01 {} +
    (cd "$source" &&
        PKG_CONFIG_LIBDIR=$prefix/lib/pkgconfig logged ./configure --host=x86_64-w64-mingw32 CC="$cross_cc" \
            CFLAGS=-O2 --prefix="$prefix" --disable-shared --enable-static "$@" &&
        for part in ${make_parts:-.}; do
            logged make -C "$part" -j "$(processors)" && logged make -C "$part" install || exit 1
        done) || could_not_be_built "$(basename "$source")"
}

# Its CMake list asks git for its version. No recording of ours is of its kind; libsndfile has the
# Ogg kinds all or none.
build_opus() {
    local source=$1
    # shellcheck disable=SC2046
    listed_library opus "$source" "-w -DOPUS_BUILD -DVAR_ARRAYS -I${source%/}/include -I${source%/}/celt
        -I${source%/}/silk -I${source%/}/silk/float" \
        $(cd "$source" && ls celt/*.c silk/*.c silk/float/*.c src/*.c | grep -vE '_demo|_compare|_tmatrix')
    mkdir -p "$prefix/include/opus"
    cp "$source"/include/*.h "$prefix/include/opus"
}

# What libsndfile reads and writes by. Ogg alone has no list that CMake finds it by.
build_sound() {
    local from=$1 ogg=("-DOGG_INCLUDE_DIR=$prefix/include" "-DOGG_LIBRARY=$prefix/lib/libogg.a")
    cmake_library "$from"/flac-*/ -DCMAKE_BUILD_TYPE=Release -DWITH_OGG=OFF -DBUILD_CXXLIBS=OFF -DBUILD_PROGRAMS=OFF \
        -DBUILD_EXAMPLES=OFF -DBUILD_TESTING=OFF -DBUILD_DOCS=OFF -DINSTALL_MANPAGES=OFF \
        -DWITH_STACK_PROTECTOR=OFF
    cmake_library "$from"/libvorbis-*/ -DCMAKE_BUILD_TYPE=Release "${ogg[@]}"
    build_opus "$from"/opus-*/
    configured_library "$from"/lame-*/ --disable-frontend --disable-decoder
    cmake_library "$from"/mpg123-*/ports/cmake -DCMAKE_BUILD_TYPE=Release -DBUILD_LIBOUT123=OFF -DBUILD_PROGRAMS=OFF
    cmake_library "$from"/libsndfile-*/ -DCMAKE_BUILD_TYPE=Release "${ogg[@]}" -DENABLE_EXTERNAL_LIBS=ON \
        -DCMAKE_C_FLAGS=-DFLAC__NO_DLL -DENABLE_MPEG=ON -DBUILD_PROGRAMS=OFF -DBUILD_EXAMPLES=OFF -DBUILD_TESTING=OFF -DENABLE_CPACK=OFF
    cmake_library "$from"/libsamplerate-*/ -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF -DLIBSAMPLERATE_EXAMPLES=OFF
    cmake_library "$from"/libsoxr-*/ -DCMAKE_BUILD_TYPE=Release -DWITH_OPENMP=OFF -DWITH_LSR_BINDINGS=OFF \
        -DBUILD_TESTS=OFF -DBUILD_EXAMPLES=OFF
    cmake_library "$from"/libebur128-*/ -DCMAKE_BUILD_TYPE=Release -DENABLE_INTERNAL_QUEUE_H=ON
}

build_imgui() {
    local source=$1
    listed_library imgui "$source" "-w -I${source%/} -I$prefix/include/freetype2" \
        imgui.cpp imgui_draw.cpp imgui_tables.cpp imgui_widgets.cpp misc/cpp/imgui_stdlib.cpp \
        misc/freetype/imgui_freetype.cpp
    cp "$source"/*.h "$source"/misc/cpp/*.h "$source"/misc/freetype/*.h "$prefix/include"
}

# The recogniser. What its configure would find out:
build_sphinx() {
    local base=$1 pocket=$2
    printf '#define %s\n' 'SIZEOF_LONG 4' 'HAVE_LONG_LONG 1' 'SIZEOF_LONG_LONG 8' >"$base/include/sphinx_config.h"
    printf '#define %s\n' 'STDC_HEADERS 1' 'HAVE_SYS_STAT_H 1' 'WITH_LAPACK 1' >"$base/include/config.h"
    # shellcheck disable=SC2046
    listed_library sphinxbase "$base" "-w -DHAVE_CONFIG_H -I${base%/}/include -I${base%/}/include/sphinxbase" \
        $(cd "$base" && echo src/libsphinxbase/*/*.c)
    # shellcheck disable=SC2046
    listed_library pocketsphinx "$pocket" "-w -I${base%/}/include -I${base%/}/include/sphinxbase
        -I${pocket%/}/include" $(cd "$pocket" && echo src/libpocketsphinx/*.c)
    mkdir -p "$prefix/include/sphinxbase"
    cp "$base"/include/sphinx_config.h "$base"/include/sphinxbase/*.h "$prefix/include/sphinxbase"
    mkdir -p "$prefix/include/pocketsphinx"
    cp "$pocket"/include/*.h "$prefix/include/pocketsphinx"
}

# The voice of the desk, what it speaks, and no loudspeaker.
build_flite() {
    local source=$1
    # A function in a header that no file has for others.
    sed -i 's/^__inline int/static &/' "$source/include/cst_file.h"
    # shellcheck disable=SC2046
    listed_library flite "$source" "-w -DCST_NO_SOCKETS -DCST_AUDIO_NONE -I${source%/}/include
        -I${source%/}/lang/cmulex -I${source%/}/lang/usenglish -I${source%/}/lang/cmu_us_rms" \
        $(cd "$source" && ls src/cg/*.c src/hrg/*.c src/lexicon/*.c src/regex/*.c src/speech/*.c src/stats/*.c \
            src/synth/*.c src/wavesynth/*.c src/audio/au{dio,_streaming,_none}.c \
            src/utils/*.c lang/cmu_us_rms/*.c lang/usenglish/*.c lang/cmulex/cmu_l*.c lang/cmulex/cmu_postlex.c |
            grep -vE 'cst_(file_(palmos|wince)|mmap_(posix|win32))|_data_raw|_num_bytes|_table\.c')
    mkdir -p "$prefix/include/flite"
    cp "$source"/include/*.h "$prefix/include/flite"
}

# Its configure is not among its sources.
build_exif() {
    local source=$1
    printf '#define GETTEXT_PACKAGE "libexif-12"\n#define GETTEXT_PACKAGE_DIR ""\n' >"$source/config.h"
    echo '#include <stdint.h>' >"$source/libexif/_stdint.h"
    # shellcheck disable=SC2046
    listed_library exif "$source" "-w -I${source%/}" $(cd "$source" && find libexif -name '*.c')
    mkdir -p "$prefix/include/libexif"
    cp "$source"/libexif/*.h "$prefix/include/libexif"
}

# What https needs. Of GnuTLS only what serves by certificates.
build_tls() {
    local from=$1 gnutls
    gnutls=$(echo "$from"/gnutls28-*/)
    # Debian leaves its handbook out, though its configure asks for it.
    mkdir -p "$(echo "$from"/gmp-*/)doc"
    echo 'all install:' >"$(echo "$from"/gmp-*/)doc/Makefile.in"
    configured_library "$from"/gmp-*/ --disable-cxx
    configured_library "$from"/nettle-*/ --disable-documentation --with-include-path="$prefix/include" \
        --with-lib-path="$prefix/lib"
    # No settings file: anyone may write to where it would lie.
    make_parts="gl lib" configured_library "$gnutls" --disable-cxx --disable-tools --disable-tests --disable-doc \
        --disable-guile --disable-nls --disable-libdane --with-included-libtasn1 --with-included-unistring \
        --without-p11-kit --without-idn --without-tpm --without-tpm2 --without-zlib --without-brotli \
        --without-zstd --with-system-priority-file= GMP_CFLAGS="-I$prefix/include" GMP_LIBS="-L$prefix/lib -lgmp"
    # Of a patch of Debian's, and in no list that automake made.
    (cd "$gnutls" && logged "$cross_cc" -O2 -I. -Igl -c gl/gl_linkedhash_list.c -o linkedhash.o &&
        logged "$cross_ar" rs "$prefix/lib/libgnutls.a" linkedhash.o) || could_not_be_built gnutls
}

build_libraries() {
    local from=$1
    build_zlib "$from"/zlib-*/
    build_sdl "$from"
    build_libzip "$from"/libzip-*/
    build_ogg "$from"/libogg-*/
    build_sqlite "$from"/sqlite3-*/
    build_sodium "$from"/libsodium-*/
    build_sound "$from"
    build_imgui "$from"/imgui-*/
    build_sphinx "$from"/sphinxbase-*/ "$from"/pocketsphinx-*/
    build_flite "$from"/flite-*/
    cmake_library "$from"/qrencode-*/ -DWITH_TOOLS=OFF -DWITH_TESTS=OFF -DWITHOUT_PNG=ON
    build_exif "$from"/libexif-*/
    build_tls "$from"
    # GnuTLS is taken for one that is loaded, unless its headers are told so.
    configured_library "$from"/libmicrohttpd-*/ --enable-https --disable-doc --disable-examples --disable-tools \
        --disable-curl GNUTLS_CFLAGS="-I$prefix/include -DGNUTLS_INTERNAL_BUILD" \
        GNUTLS_LIBS="-L$prefix/lib -lgnutls -lhogweed -lnettle -lgmp -lws2_32 -lcrypt32 -lncrypt -lbcrypt"
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
    have_cross_libraries
    echo "$cross_prefix"
fi
