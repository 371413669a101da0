# The libraries of the web page, under the names that the native build finds its own by. They lie in
# the folder that assets/make/web_libraries.sh prints.
set(WRENLET_WEB_LIBRARIES "" CACHE PATH
    "Where assets/make/web_libraries.sh put the page's libraries")
if(NOT EXISTS ${WRENLET_WEB_LIBRARIES}/whole)
    message(FATAL_ERROR "the web page's libraries are missing: ./play --web builds them, and the "
        "page; or say: WRENLET_WEB_LIBRARIES=$(assets/make/web_libraries.sh) cmake --preset web")
endif()

# web_library(NAME ARCHIVE...): a library of that name out of these archives.
function(web_library name)
    add_library(${name} INTERFACE IMPORTED)
    target_include_directories(${name} SYSTEM INTERFACE ${WRENLET_WEB_LIBRARIES}/include)
    foreach(archive ${ARGN})
        target_link_libraries(${name} INTERFACE ${WRENLET_WEB_LIBRARIES}/lib/lib${archive}.a)
    endforeach()
endfunction()

web_library(nlohmann_json::nlohmann_json)
web_library(SQLite::SQLite3 sqlite3)
web_library(PkgConfig::ZIP zip z)
web_library(ZLIB::ZLIB z)
web_library(PkgConfig::OGG ogg)
web_library(PkgConfig::SODIUM sodium)
web_library(SDL2::SDL2 SDL2)
web_library(PkgConfig::SDL2_MIXER SDL2_mixer SDL2)
web_library(PkgConfig::SDL2_TTF SDL2_ttf freetype SDL2)
web_library(PkgConfig::SDL2_IMAGE SDL2_image SDL2)
foreach(library SDL2::SDL2 PkgConfig::SDL2_MIXER PkgConfig::SDL2_TTF PkgConfig::SDL2_IMAGE)
    target_include_directories(${library} SYSTEM INTERFACE ${WRENLET_WEB_LIBRARIES}/include/SDL2)
endforeach()
