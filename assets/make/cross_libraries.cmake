# The libraries of the web page, or of the programs for Windows, under the names that the native build
# finds its own by. They lie in the folder that assets/make/web_libraries.sh, or windows_libraries.sh,
# prints.
set(WRENLET_CROSS_LIBRARIES "" CACHE PATH "Where that script put them")
if(NOT EXISTS ${WRENLET_CROSS_LIBRARIES}/whole)
    message(FATAL_ERROR "the libraries for this target are missing: ./play --web builds those of the "
        "page, ./check --windows those for Windows; or say: "
        "WRENLET_CROSS_LIBRARIES=$(assets/make/web_libraries.sh) cmake --preset web")
endif()

# cross_library(NAME PART...): a library of that name out of these archives and libraries.
function(cross_library name)
    add_library(${name} INTERFACE IMPORTED)
    target_include_directories(${name} SYSTEM INTERFACE ${WRENLET_CROSS_LIBRARIES}/include)
    foreach(part ${ARGN})
        if(NOT part MATCHES "::")
            set(part ${WRENLET_CROSS_LIBRARIES}/lib/lib${part}.a)
        endif()
        target_link_libraries(${name} INTERFACE ${part})
    endforeach()
endfunction()

cross_library(nlohmann_json::nlohmann_json)
cross_library(SQLite::SQLite3 sqlite3)
cross_library(ZLIB::ZLIB z)
cross_library(PkgConfig::ZIP zip ZLIB::ZLIB)
cross_library(PkgConfig::OGG ogg)
cross_library(PkgConfig::SODIUM sodium)
cross_library(SDL2::SDL2 SDL2)
cross_library(PkgConfig::SDL2_MIXER SDL2_mixer SDL2::SDL2)
cross_library(PkgConfig::SDL2_TTF SDL2_ttf freetype ZLIB::ZLIB SDL2::SDL2)
cross_library(PkgConfig::SDL2_IMAGE SDL2_image SDL2::SDL2)
foreach(library SDL2::SDL2 PkgConfig::SDL2_MIXER PkgConfig::SDL2_TTF PkgConfig::SDL2_IMAGE)
    target_include_directories(${library} SYSTEM INTERFACE ${WRENLET_CROSS_LIBRARIES}/include/SDL2)
endforeach()
if(WIN32)
    # Windows starts at WinMain, which SDL has, and mingw's own start is what asks for it.
    add_library(SDL2::SDL2main INTERFACE IMPORTED)
    target_link_libraries(SDL2::SDL2main INTERFACE
        mingw32 ${WRENLET_CROSS_LIBRARIES}/lib/libSDL2main.a SDL2::SDL2)
    find_package(Threads REQUIRED)
    # What SDL and libsodium need of Windows.
    target_link_libraries(SDL2::SDL2 INTERFACE user32 gdi32 winmm imm32 ole32 oleaut32 shell32
        setupapi version uuid advapi32)
    target_compile_definitions(PkgConfig::SODIUM INTERFACE SODIUM_STATIC)
    target_compile_definitions(PkgConfig::ZIP INTERFACE ZIP_STATIC)
    target_link_libraries(PkgConfig::SODIUM INTERFACE advapi32)

    # Of the desk alone.
    cross_library(PkgConfig::IMGUI imgui freetype ZLIB::ZLIB)
    cross_library(PkgConfig::FREETYPE freetype ZLIB::ZLIB)
    target_include_directories(PkgConfig::FREETYPE SYSTEM INTERFACE
        ${WRENLET_CROSS_LIBRARIES}/include/freetype2)
    cross_library(PkgConfig::MICROHTTPD microhttpd gnutls hogweed nettle gmp)
    target_link_libraries(PkgConfig::MICROHTTPD INTERFACE ws2_32 crypt32 ncrypt bcrypt advapi32)
    cross_library(PkgConfig::QRENCODE qrencode)
    cross_library(PkgConfig::SNDFILE sndfile FLAC vorbisenc vorbis ogg opus mp3lame mpg123)
    target_link_libraries(PkgConfig::SNDFILE INTERFACE shlwapi)
    cross_library(PkgConfig::SAMPLERATE samplerate)
    cross_library(PkgConfig::SOXR soxr)
    cross_library(PkgConfig::EXIF exif)
    cross_library(PkgConfig::EBUR128 ebur128)
    cross_library(sphinxbase sphinxbase)
    cross_library(pocketsphinx pocketsphinx sphinxbase)
    foreach(part flite flite_cmu_us_rms flite_usenglish flite_cmulex)  # one archive has them all
        cross_library(${part} flite)
    endforeach()
    set(SPHINX_INCLUDE_DIRS ${WRENLET_CROSS_LIBRARIES}/include/pocketsphinx
        ${WRENLET_CROSS_LIBRARIES}/include/sphinxbase)
    # Libraries that are headers alone; the rest of the folder they lie in is another system's.
    file(MAKE_DIRECTORY ${CMAKE_BINARY_DIR}/headers)
    foreach(headers boost doctest stb)
        file(CREATE_LINK /usr/include/${headers} ${CMAKE_BINARY_DIR}/headers/${headers} SYMBOLIC)
    endforeach()
    include_directories(SYSTEM ${CMAKE_BINARY_DIR}/headers)
endif()
