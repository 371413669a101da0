#include "tests/serve/served_room.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <filesystem>
#include <thread>

namespace wrenlet::desk::samples {

namespace fs = std::filesystem;
using practice::samples::fileBytes;
using practice::samples::writeBytes;

ServedRoom::ServedRoom() {
    fs::create_directories(classroom.packs());
    fs::create_directories(folder / "page" / "icons");
    writeBytes(folder / "page/index.html", "<!doctype html><title>Wrenlet</title>");
    writeBytes(folder / "page/wrenlet.js", std::string(5000, 'j'));
    writeBytes(folder / "page/wrenlet.js.gz", "not really");
    writeBytes(folder / "page/icons/icon-192.png", "png");
    writeBytes(folder / "page/notes.txt", "not of the page");
    std::string pack = "PK";
    for (int i = 0; i < 600'000; ++i) pack += static_cast<char>(i * 7 % 251);
    writeBytes(classroom.packFile("by-the-pond-1.zip"), pack);
    pack::ClassList room;
    room.title = "Room 4";
    room.children = {{"c-01", "Wilhelmina", "badge-07", {}, {}, {}},
                     {"c-02", "Ottokar", "badge-08", {}, {}, {}}};
    room.pack = "by-the-pond-1.zip";
    write(room);
    options.page = folder / "page";
    options.server.port = 0;
}

bool ServedRoom::start() {
    auto started = Serving::start(classroom, options, {clock, entropy, {}, {}});
    for (const Problem& problem : started.problems()) MESSAGE(sentence(problem));
    if (!started.ok()) return false;
    serving = std::move(started.value());
    return true;
}

std::string ServedRoom::newCode() {
    const auto code = serving->reception().openCode();
    REQUIRE(code.ok());
    return code.value().code;
}

std::vector<link::TabletIdentity> ServedRoom::withTablets(int count) {
    std::vector<ListedTablet> listed;
    std::vector<link::TabletIdentity> identities;
    for (int i = 0; i < count; ++i) {
        link::TabletIdentity identity{"pebble-" + std::to_string(1000 + i), {}};
        entropy.fill(identity.key);
        identities.push_back(identity);
        listed.push_back({identity, 0, clock.now_ms, 0, false});
    }
    REQUIRE(keepTabletList({classroom}, listed).ok());
    return identities;
}

bool ServedRoom::soon(const std::function<bool()>& holds) const {
    for (int i = 0; i < 300; ++i) {
        if (holds()) return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(30));
    }
    return false;
}

pack::ClassList ServedRoom::list() const {
    return pack::openClassList(classroom).value();
}

void ServedRoom::write(const pack::ClassList& list) const {
    writeBytes(classroom.classFile(), pack::writeClassList(list));
}

std::map<std::string, std::string> ServedRoom::files() const {
    std::map<std::string, std::string> all;
    for (const auto& entry : fs::recursive_directory_iterator(classroom.folder))
        if (entry.is_regular_file() && entry.path().filename() != "refused.log")
            all[entry.path().lexically_relative(classroom.folder).generic_string()] =
                fileBytes(entry.path());
    return all;
}

std::string ServedRoom::refusedLog() const {
    return fs::exists(classroom.folder / "link/refused.log")
               ? fileBytes(classroom.folder / "link/refused.log")
               : std::string();
}

practice::Response responseBy(const std::string& child) {
    practice::Response response = practice::samples::response();
    response.child = child;
    response.session = 1 + child.back();  // each child has one
    response.tablet = "";
    return response;
}

}  // namespace wrenlet::desk::samples
