# Libraries that Debian has for this machine alone, built for another: from the sources of the very
# versions that are installed here (of the newest, where Debian has left those behind), once, and kept in ~/.cache/wrenlet/NAME-KEY, or in what
# WRENLET_CROSS_CACHE names instead of ~/.cache/wrenlet. KEY follows from these scripts and those
# versions. Sourced by web_libraries.sh and windows_libraries.sh, which say how one compiles:
#   cross           for what, as it is said and as NAME
#   cross_script    the script that sources this
#   cross_tools     packages with the compilers
#   cross_cmake     (an array) how cmake is called; cross_cc, cross_ar: the compiler and the archiver
#   build_libraries FOLDER_OF_SOURCES: calls the functions below, into $prefix
# and may add to cross_packages, and to cross_tars.
set -euo pipefail
# shellcheck source=assets/make/setup.sh
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

# The packages installed here whose sources are built, in the order in which they need one another.
cross_packages="zlib1g-dev libsdl2-dev libfreetype-dev libsdl2-ttf-dev libsdl2-mixer-dev
    libsdl2-image-dev libsqlite3-dev libzip-dev libogg-dev libsodium-dev"
# More of them, of which upstream's archive is taken as it is: what Debian adds is about its own way
# of building.
cross_tars=""

# cross_sources PACKAGE...: as SOURCE=VERSION, one a line.
cross_sources() { dpkg-query -W -f '${source:Package}=${source:Version}\n' "$@"; }

cross_key() {
    {
        cat "$wrenlet_root/assets/make/cross_libraries.sh" "$cross_script"
        # shellcheck disable=SC2086
        cross_sources $cross_packages $cross_tars
        # shellcheck disable=SC2086
        dpkg-query -W -f '${Package}=${Version}\n' $cross_tools nlohmann-json3-dev
    } | sha256sum | cut -c1-12
}

# fetch_sources FOLDER: with lists of our own, so that the machine's package settings stay as they
# are; its own entries tell where the sources lie.
fetch_sources() {
    local entry archive
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
    # those_there PACKAGE...: their sources, at the versions installed here where those are still kept.
    those_there() {
        local source
        for source in $(cross_sources "$@"); do
            apt-cache "${options[@]}" showsrc "${source%%=*}" 2>/dev/null | grep -qxF "Version: ${source#*=}" ||
                source=${source%%=*}
            echo "$source"
        done
    }
    # Entries that have no sources fail here; whether ours were among them is seen below.
    logged apt-get "${options[@]}" update || say "Libraries for $cross: not every list of sources was found; going on"
    mkdir -p "$1/tars"
    # shellcheck disable=SC2046,SC2086
    { (cd "$1" && logged apt-get "${options[@]}" source --yes $(those_there $cross_packages)) &&
        { [ -z "$cross_tars" ] || (cd "$1/tars" && logged apt-get "${options[@]}" source --yes \
            --download-only --tar-only $(those_there $cross_tars)); }; } ||
        fail "apt-get could not fetch the sources of the libraries for $cross (its last words are above)." \
            "bring this machine's packages up to date (apt-get update && apt-get upgrade), then start again."
    for archive in "$1"/tars/*.tar.*; do
        [ ! -f "$archive" ] || tar -xf "$archive" -C "$1"
    done
}

could_not_be_built() {
    fail "$1 could not be built for $cross (its last words are above)." \
        "put that right; all of it is in $wrenlet_log."
}

# cmake_library SOURCE_FOLDER CMAKE_ARGUMENT...: into $prefix. Built for size, where the
# arguments do not say otherwise.
cmake_library() {
    local source=$1
    shift
    say "For $cross: building $(basename "$source")"
    { logged "${cross_cmake[@]}" -S "$source" -B "$source/cross" -G Ninja -DCMAKE_BUILD_TYPE=MinSizeRel \
        -DCMAKE_INSTALL_PREFIX="$prefix" -DCMAKE_PREFIX_PATH="$prefix" \
        -DCMAKE_FIND_ROOT_PATH="$prefix" -DBUILD_SHARED_LIBS=OFF "$@" &&
        logged cmake --build "$source/cross" -j "$(processors)" &&
        logged cmake --install "$source/cross"; } ||
        could_not_be_built "$(basename "$source")"
}

# The game's one font is TrueType, drawn without hints: no other kind of font is read.
truetype_alone() {
    printf 'FT_USE_MODULE( %s )\n' 'FT_Driver_ClassRec, tt_driver_class' 'FT_Module_Class, sfnt_module_class' \
        'FT_Renderer_Class, ft_smooth_renderer_class' >"$1"
}

# listed_library NAME FOLDER "FLAG..." FILE...: a library of these files and no more, where its own way
# of building asks too much of a machine that cannot run what it builds.
listed_library() {
    local name=$1 folder=$2 flags=$3 list
    shift 3
    list=$(dirname "$folder")/$name
    mkdir -p "$list"
    {
        printf 'cmake_minimum_required(VERSION 3.25)\nproject(%s C CXX)\n' "$name"
        printf 'set(CMAKE_CXX_STANDARD 20)\nadd_library(%s STATIC' "$name"
        printf "\n    ${folder%/}/%s" "$@"
        printf ')\ntarget_compile_options(%s PRIVATE %s)\ninstall(TARGETS %s)\n' "$name" "$flags" "$name"
    } >"$list/CMakeLists.txt"
    cmake_library "$list" -DCMAKE_BUILD_TYPE=Release
}

# Debian's sources lack a file that its CMake list names. Nothing here reads gzip's files.
build_zlib() {
    say "For $cross: building zlib"
    (cd "$1" && rm -f gz*.c && logged "$cross_cc" -c -O2 ./*.c && logged "$cross_ar" rcs "$prefix/lib/libz.a" ./*.o &&
        cp zlib.h zconf.h "$prefix/include") || could_not_be_built zlib
}

# Two files. Its CMake list asks for the sizes of types by running a program.
build_ogg() {
    say "For $cross: building libogg"
    (cd "$1" && mkdir -p "$prefix/include/ogg" &&
        sed -e 's/@INCLUDE_[A-Z_]*@/1/; s/@SIZE\([0-9]*\)@/int\1_t/; s/@USIZE\([0-9]*\)@/uint\1_t/' \
            include/ogg/config_types.h.in >include/ogg/config_types.h &&
        logged "$cross_cc" -c -O2 -Iinclude src/framing.c src/bitwise.c &&
        logged "$cross_ar" rcs "$prefix/lib/libogg.a" framing.o bitwise.o &&
        cp include/ogg/*.h "$prefix/include/ogg") || could_not_be_built libogg
}

# build_sqlite SOURCE_FOLDER FLAG...
build_sqlite() {
    say "For $cross: building sqlite3"
    local source=$1
    shift
    (cd "$source" && logged ./configure --disable-tcl --disable-readline && logged make sqlite3.c &&
        logged "$cross_cc" -c -Os -DSQLITE_OMIT_LOAD_EXTENSION "$@" sqlite3.c -o sqlite3.o &&
        logged "$cross_ar" rcs "$prefix/lib/libsqlite3.a" sqlite3.o && cp sqlite3.h "$prefix/include") ||
        could_not_be_built sqlite3
}

# Its sources as they are, with no processor's own instructions: its configure is not in Debian's.
build_sodium() {
    say "For $cross: building libsodium"
    (cd "$1/src/libsodium" &&
        sed -e 's/@VERSION@/1.0.18/; s/@SODIUM_LIBRARY_VERSION_MAJOR@/10/; s/@SODIUM_LIBRARY_VERSION_MINOR@/3/' \
            -e 's/@SODIUM_LIBRARY_MINIMAL_DEF@//' include/sodium/version.h.in >include/sodium/version.h &&
        mkdir -p cross && logged compile_sodium && logged "$cross_ar" rcs "$prefix/lib/libsodium.a" cross/*.o &&
        cp -R include/sodium include/sodium.h "$prefix/include") || could_not_be_built libsodium
}

compile_sodium() {
    # shellcheck disable=SC2016
    find . -name '*.c' -print0 | xargs -0 -n 1 -P "$(processors)" sh -c '
        "$0" -c -O2 -DCONFIGURED=1 -DNATIVE_LITTLE_ENDIAN=1 -Iinclude -Iinclude/sodium "$1" \
            -o "cross/part$(echo "$1" | tr / _).o"' "$cross_cc"
}

build_libzip() {
    cmake_library "$@" -DENABLE_COMMONCRYPTO=OFF -DENABLE_GNUTLS=OFF -DENABLE_MBEDTLS=OFF -DENABLE_OPENSSL=OFF \
        -DENABLE_WINDOWS_CRYPTO=OFF -DENABLE_BZIP2=OFF -DENABLE_LZMA=OFF \
        -DENABLE_ZSTD=OFF -DBUILD_TOOLS=OFF -DBUILD_REGRESS=OFF -DBUILD_EXAMPLES=OFF -DBUILD_DOC=OFF
}

# build_sdl SOURCES SDL_ARGUMENT...: SDL and what is beside it, as the game uses them.
build_sdl() {
    local from=$1
    shift
    cmake_library "$from"/libsdl2-2*/ -DSDL_SHARED=OFF -DSDL_STATIC=ON -DSDL_TEST=OFF -DSDL_TESTS=OFF "$@"
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
}

# Sets cross_prefix. Under a second when they are there.
have_cross_libraries() {
    debian_like || fail "the libraries for $cross are built from Debian's sources, and this is not Debian or Ubuntu." \
        "build them on Debian 12, or in a container of it."
    # shellcheck disable=SC2086
    have_also dpkg-dev tcl ca-certificates $cross_tools $cross_packages $cross_tars
    local cache=${WRENLET_CROSS_CACHE:-${XDG_CACHE_HOME:-${HOME:?}/.cache}/wrenlet}
    cross_prefix=$cache/$cross-$(cross_key)
    [ ! -f "$cross_prefix/whole" ] || return 0
    say "For $cross: building the libraries once; four to twenty minutes"
    rm -rf "$cross_prefix"
    mkdir -p "$cross_prefix/lib" "$cross_prefix/include" ||
        fail "$cross_prefix cannot be made." "name another folder: WRENLET_CROSS_CACHE=FOLDER"
    local prefix=$cross_prefix work
    work=$(mktemp -d)
    wrenlet_log=$cross_prefix/build.log
    fetch_sources "$work"
    build_libraries "$work"
    # Headers alone, those of the native build.
    cp -R /usr/include/nlohmann "$prefix/include"
    rm -rf "$work"
    touch "$cross_prefix/whole"
    wrenlet_log=$wrenlet_root/build/setup.log
}
