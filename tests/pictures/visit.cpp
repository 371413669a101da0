#include "tests/pictures/visit.hpp"

#include <algorithm>
#include <iostream>

#include "game/sdl/screenshot.hpp"

namespace wrenlet::game {

Room::Room() {
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(pictures);
    std::filesystem::copy(WRENLET_TEST_STARTER, classroom.folder,
                          std::filesystem::copy_options::recursive);
}

Room::~Room() {
    std::filesystem::remove_all(folder);
}

std::unique_ptr<Visit> Visit::begin(const Room& room, ScreenSize size, const TabletSettings& tablet,
                                    std::optional<exercise::Skill> skill) {
    auto opened = openClassroom(room.classroom, room.tablet, 1);
    if (!opened.ok()) return nullptr;
    std::unique_ptr<Visit> visit(new Visit);
    visit->opened_.emplace(std::move(opened.value()));
    if (skill)
        std::erase_if(visit->opened_->pack.items,
                      [&](const exercise::Item& item) { return item.skill != *skill; });
    TableOptions options;
    options.window = {size.w, size.h, false, true};
    options.assets = WRENLET_TEST_SHARE;
    options.data = "~/.local/share/wrenlet";
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = 3;
    options.app.tablet = tablet;
    auto table = Table::open(*visit->opened_, visit->clock_, options);
    if (!table.ok()) return nullptr;
    visit->table_ = std::move(table.value());
    visit->wait(1'000);
    return visit;
}

void Visit::wait(Millis millis) {
    const Millis until = clock_.now + millis;
    while (clock_.now < until) {
        clock_.now += std::min<Millis>(16, until - clock_.now);
        app().step(clock_.now);
    }
}

void Visit::touch(const std::string& thing, Millis held) {
    const auto box = app().boxOf(thing);
    if (!box) return;
    app().touch({Contact::Kind::down, 1, box->centre(), 0}, clock_.now);
    wait(held);
    app().touch({Contact::Kind::up, 1, box->centre(), 0}, clock_.now);
    wait(500);
}

void Visit::toAdult() {
    touch("leave", 1'800);
    if (app().rightTouch()) touch(*app().rightTouch());
}

void Visit::playUntil(const std::string& place) {
    for (int i = 0; i < 4'000 && app().place().rfind(place, 0) != 0; ++i)
        if (app().rightTouch())
            touch(*app().rightTouch());
        else
            wait(48);
}

bool Visit::waitFor(const std::string& end, Millis most) {
    const auto is_there = [&] {
        const std::string place = app().place();
        return place.size() >= end.size() &&
               place.compare(place.size() - end.size(), end.size(), end) == 0;
    };
    for (const Millis until = clock_.now + most; clock_.now < until && !is_there();) wait(16);
    return is_there();
}

bool Visit::shoot(const std::filesystem::path& file) {
    table_->canvas().draw(app().frame(clock_.now));
    const SurfacePtr picture = readBack(table_->renderer());
    if (!picture || !savePng(picture.get(), file).ok()) return false;
    std::cout << file.string() << "\n";
    return table_->baker().missing().empty();
}

}  // namespace wrenlet::game
