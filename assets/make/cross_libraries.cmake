# The libraries of the web page, or of the game for Windows, under the names that the native build
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
endif()
