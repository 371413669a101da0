#include "editor/windows/desk_window.hpp"

#include <algorithm>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/style.hpp"

namespace wrenlet::desk {

DeskWindow::DeskWindow(OpenedClass opened, Surroundings surroundings)
    : desk_(std::move(opened)),
      surroundings_(std::move(surroundings)),
      settings_(surroundings_.settings) {
    units_ = unitsIn(desk_.opened().classroom.folder);
    openClassList();
    openServing();
}

void DeskWindow::openClassroom(const std::filesystem::path& folder) {
    closeUnit();
    place_ = Place::klass;
    desk_.replace(surroundings_.open(folder));
    units_ = unitsIn(folder);
    openClassList();
    openServing();
}

// Whoever was served from the classroom before is not any more.
void DeskWindow::openServing() {
    serve_.reset();
    const pack::Classroom& classroom = desk_.opened().classroom;
    if (!surroundings_.serving || classroom.folder.empty()) return;
    serve_ = std::make_unique<ServePlace>(classroom, *surroundings_.serving);
}

// What she changed in the class list and is not saved yet stands.
void DeskWindow::takeServed(OpenedClass opened) {
    if (!opened.listed) return;
    if (class_list_) {
        if (!(opened.list == class_list_->list())) opened = withList(opened, class_list_->list());
        class_shown_ = class_list_->work().changes();
    }
    desk_.replace(std::move(opened));
}

// A folder without class.json can be given one; one that cannot be read is left alone.
void DeskWindow::openClassList() {
    const OpenedClass& opened = desk_.opened();
    if (tomorrow_) tomorrow_->finish(surroundings_.now_ms());
    class_list_.reset();
    tomorrow_.reset();
    papers_.reset();
    class_place_ = {};
    std::error_code error;
    const std::filesystem::path& folder = opened.classroom.folder;
    const bool is_new = !opened.listed && std::filesystem::is_directory(folder, error) &&
                        !std::filesystem::exists(opened.classroom.classFile(), error);
    if (surroundings_.bench == nullptr || folder.empty() || !(opened.listed || is_new)) return;
    pack::ClassList list = opened.list;
    if (is_new) list.title = pack::tidied(folder.filename().string()).substr(0, 60);
    const Workbench& bench = *surroundings_.bench;
    class_list_ = std::make_unique<OpenClassList>(
        opened.classroom, std::move(list),
        OpenClassList::Parts{bench.saving, bench.aside, bench.wake,
                             static_cast<std::uint64_t>(surroundings_.now_ms())});
    class_shown_ = class_list_->work().changes();
    tomorrow_ = std::make_unique<TomorrowPlace>(
        opened.classroom, TomorrowPlace::Parts{bench.saving, bench.looking, bench.aside, bench.wake,
                                               surroundings_.open_outside});
    papers_ = std::make_unique<PapersPlace>(
        PapersPlace::Parts{bench.saving, bench.wake, surroundings_.open_outside});
}

// A pack, or the folder of a unit, while a unit is open; at the class list a zip is a school's
// list.
bool DeskWindow::isToBringIn(const std::filesystem::path& path) const {
    std::error_code error;
    const bool is_unit = std::filesystem::is_regular_file(path / "unit.json", error);
    const bool is_pack = path.extension() == ".zip" && place_ != Place::klass;
    return unit_ != nullptr && unit_->canChange() && (is_unit || is_pack);
}

void DeskWindow::drop(const std::filesystem::path& path) {
    std::error_code error;
    if (isToBringIn(path)) {
        go(Place::words);
        bring_.begin(desk_.opened().classroom.folder, *unit_);
        bring_.openFile(path, *unit_);
    } else if (std::filesystem::is_directory(path, error)) {
        openClassroom(path);
    } else if (place_ == Place::klass && class_list_) {
        desk_.showList();
        class_place_.takeFile(path, *class_list_);
    } else if (unit_ == nullptr) {
        openClassroom(path);
    } else if (isMeantAsPicture(path)) {
        takePicture(path);
    } else if (place_ == Place::booth && booth_) {
        booth_->takeFile(path);
    } else {
        addFrom(path);
    }
}

void DeskWindow::takePicture(const std::filesystem::path& file) {
    place_ = Place::words;
    own_pictures_->take(file, words_.in_hand.is_sentence ? "" : words_.in_hand.id);
    words_.choosing.reset();
}

void DeskWindow::addFrom(const std::filesystem::path& file) {
    constexpr std::uint64_t kMostListBytes = 16u << 20;  // of which the first are read
    place_ = Place::words;
    const Result<std::string> bytes = readWhole(file, kMostListBytes);
    if (!bytes.ok()) {
        words_.not_taken = bytes.problems();
        return;
    }
    const std::string typed = std::exchange(words_.typed, bytes.value());
    words_.add(*unit_, file.filename().string());
    words_.typed = typed;
}

void DeskWindow::showUnit(Result<std::unique_ptr<OpenUnit>> opened) {
    unit_problems_ = opened.ok() ? std::vector<Problem>{} : opened.problems();
    if (!opened.ok()) return;
    closeUnit();
    unit_ = std::move(opened.value());
    place_ = Place::words;
    new_title_.clear();
    if (surroundings_.pictures) surroundings_.pictures->ownPictures(unit_->folder().pictures());
    if (!unit_->unit().words.empty())
        words_.in_hand = {pack::wordId(unit_->unit().words.front()), false};
    unit_->step(surroundings_.now_ms());
    own_pictures_ = std::make_unique<OwnPictures>(*unit_);
    const BoothSound& sound = surroundings_.sound;
    if (sound.checking)
        booth_ = std::make_unique<Booth>(
            *unit_, Booth::Parts{sound.microphone, sound.speaker, *sound.checking, sound.ear,
                                 surroundings_.bench->wake});
    const Trying& trying = surroundings_.trying;
    if (trying.game) {
        try_out_ = std::make_unique<TryPlace>(
            *unit_, TryPlace::Parts{*trying.drawing, *trying.playing, *trying.saying, *trying.game,
                                    *trying.making, sound.speaker, trying.folder,
                                    surroundings_.bench->wake});
        finder_ = std::make_unique<Finder>(*unit_, *trying.finding, surroundings_.bench->wake);
        try_scroll_ = {};
    }
    if (surroundings_.packing.building && surroundings_.packing.making)
        hand_out_ = std::make_unique<HandOutPlace>(
            *unit_, desk_.opened().classroom,
            HandOutPlace::Parts{*surroundings_.packing.building, *surroundings_.packing.making,
                                surroundings_.bench->wake, surroundings_.packing.free});
    units_ = unitsIn(desk_.opened().classroom.folder);
}

void DeskWindow::go(Place place) {
    if (place != Place::booth && booth_) booth_->pause();
    if (place != place_ || sheet_ != Sheet::none)
        stage_.ring_shown = false;  // keys are the new page's own
    if (place == Place::hand_out && hand_out_) hand_out_->lookAtFolder();
    place_ = place;
    sheet_ = Sheet::none;
}

void DeskWindow::show(Sheet sheet) {
    if (sheet != Sheet::none && booth_) booth_->pause();
    if (sheet == Sheet::settings) settings_.lookAgain();
    if (sheet != sheet_) stage_.ring_shown = false;
    sheet_ = sheet;
}

Spot DeskWindow::spot() const {
    switch (place_) {
        case Place::words:
            return unit_ && bring_.open         ? Spot::bring
                   : words_.isChoosingPicture() ? Spot::picture
                                                : Spot::words;
        case Place::booth:
            return Spot::booth;
        case Place::try_out:
            return try_out_ && isFindingMore(*try_out_, try_scroll_) ? Spot::finder : Spot::try_out;
        case Place::hand_out:
            return showsTablets() ? Spot::tablets : Spot::hand_out;
        case Place::klass:
            break;
    }
    if (desk_.page() == Page::tomorrow && tomorrow_) return Spot::tomorrow;
    if (desk_.page() == Page::papers && papers_) return Spot::papers;
    if (desk_.page() == Page::child && isAskedAloud(desk_, ear_)) return Spot::aloud;
    if (desk_.page() == Page::child && desk_.why()) return Spot::why;
    return desk_.page() == Page::child  ? Spot::child
           : desk_.page() == Page::list ? Spot::list
                                        : Spot::map;
}

void DeskWindow::openUnit(const std::filesystem::path& folder) {
    if (surroundings_.bench) showUnit(OpenUnit::open({folder}, *surroundings_.bench));
}

void DeskWindow::makeUnit(const std::string& title) {
    if (surroundings_.bench)
        showUnit(OpenUnit::make(desk_.opened().classroom.folder, title, *surroundings_.bench));
}

void DeskWindow::closeUnit() {
    finish();
    hand_out_.reset();
    finder_.reset();
    try_out_.reset();
    booth_.reset();
    own_pictures_.reset();
    unit_.reset();
    words_ = {};
    bring_.close();
    place_ = Place::words;
    units_ = unitsIn(desk_.opened().classroom.folder);
}

void DeskWindow::step() {
    if (own_pictures_)
        if (auto problems = own_pictures_->step(); !problems.empty())
            words_.not_taken = std::move(problems);
    if (unit_) unit_->step(surroundings_.now_ms());
    if (booth_) booth_->step(surroundings_.now_ms());
    if (try_out_) try_out_->step();
    if (finder_) finder_->step();
    if (hand_out_) hand_out_->step(surroundings_.now_ms());
    if (class_list_) class_list_->step(surroundings_.now_ms());
    if (tomorrow_) {
        if (desk_.page() == Page::tomorrow) tomorrow_->begin(desk_.opened());
        tomorrow_->step(desk_.opened(), surroundings_.now_ms());
    }
    if (papers_) papers_->step();
    if (serve_) {
        serve_->step(surroundings_.now_ms());
        if (auto opened = serve_->takeClass()) takeServed(std::move(*opened));
    }
    const bool is_seen = place_ == Place::klass && desk_.page() != Page::list;
    if (class_list_ && is_seen && class_shown_ != class_list_->work().changes()) {
        class_shown_ = class_list_->work().changes();
        desk_.replace(withList(desk_.opened(), class_list_->list()));
    }
}

std::optional<std::int64_t> DeskWindow::due() const {
    std::optional<std::int64_t> soonest;
    const auto take = [&](const std::optional<std::int64_t>& due) {
        if (due && (!soonest || *due < *soonest)) soonest = due;
    };
    if (unit_) take(unit_->due());
    if (hand_out_) take(hand_out_->due());
    if (class_list_) take(class_list_->due());
    if (tomorrow_) take(tomorrow_->due());
    if (serve_) take(serve_->due());
    return soonest;
}

void DeskWindow::undo(bool again) {
    if (place_ == Place::klass && desk_.page() == Page::tomorrow && tomorrow_) {
        again ? tomorrow_->redo() : tomorrow_->undo();
    } else if (place_ == Place::klass && spot() == Spot::aloud) {
        if (!again) ear_.undo(desk_.opened().classroom);
    } else if (place_ == Place::klass) {
        if (class_list_) again ? class_list_->change().redo() : class_list_->change().undo();
    } else if (unit_) {
        unit_->change([again](UnitAtWork& work) { again ? work.redo() : work.undo(); });
    }
}

void DeskWindow::finish() {
    if (booth_) booth_->finish();
    if (unit_) unit_->finish(surroundings_.now_ms());
    if (class_list_) class_list_->finish(surroundings_.now_ms());
    if (tomorrow_) {
        tomorrow_->step(desk_.opened(), surroundings_.now_ms());
        tomorrow_->finish(surroundings_.now_ms());
    }
}

void DeskWindow::frame(float pixel_width, float pixel_height, float scale, const TypeAtlas& atlas) {
    step();
    applyStyle(ImGui::GetStyle(), scale, stage_.finger);
    ImGui::PushFont(atlas.font(Type::body));
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize({pixel_width, pixel_height});
    ImGui::Begin("desk", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                     ImGuiWindowFlags_NoBackground |  // the canvas is paper already
                     ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBringToFrontOnFocus |
                     ImGuiWindowFlags_NoScrollWithMouse);
    {
        Ui ui(atlas, scale, stage_);
        std::vector<std::function<void(Desk&)>> wishes;
        const float width = pixel_width / scale, height = pixel_height / scale;
        View view{
            ui,
            desk_,
            frameFor(width, height),
            width,
            height,
            surroundings_.now_ms(),
            surroundings_.pictures,
            scroll_,
            sounds_,
            place_,
            unit_.get(),
            words_,
            words_scroll_,
            booth_.get(),
            queue_scroll_,
            try_out_.get(),
            finder_.get(),
            try_scroll_,
            hand_out_.get(),
            bring_,
            bring_scroll_,
            class_list_.get(),
            class_place_,
            class_scroll_,
            tomorrow_.get(),
            tomorrow_scroll_,
            papers_.get(),
            papers_scroll_,
            new_title_,
            wishes,
            {},
            [this](Place place) { go(place); },
            [this](const std::string& id) { deleteChild(id); },
            ear_,
            {},
            [this](practice::HeardAs mark) { ear_.mark(mark, desk_.opened().classroom, today()); },
            [this] { closeAloud(); },
            {},
            [this] { closeUnit(); },
            [this](const auto& folder) { openUnit(folder); },
            units_,
            unit_problems_,
            surroundings_.hear,
            settings_,
            sheet_,
            sheet_ == Sheet::settings ? Spot::settings : spot(),
            [this](Sheet sheet) { show(sheet); },
            serve_.get()};
        if (surroundings_.bench && desk_.state() != ClassState::no_folder)
            view.make_unit = [this](const std::string& title) { makeUnit(title); };
        if (surroundings_.bench && !desk_.opened().children.empty())
            view.ask_aloud = [this](EarWords words) {
                desk_.closeWhy();
                ear_.open(desk_.opened(), desk_.child(), desk_.skill(), words, *surroundings_.bench,
                          static_cast<std::uint64_t>(today()));
            };
        view.gather = [&] {
            view.wish([this](Desk& desk) {
                if (class_list_) class_list_->finish(surroundings_.now_ms());
                clearHandedIn(desk.opened().classroom, desk.opened().list.deleted);
                desk.replace(surroundings_.open(desk.opened().classroom.folder));
                if (!class_list_) return openClassList();
                if (desk.opened().listed) class_list_->readAnew(desk.opened().list);
                class_shown_ = class_list_->work().changes();
            });
        };
        keys(view);
        drawRail(view);
        drawPlace(view);
        drawFoot(view);
        for (const auto& wish : wishes) wish(desk_);
    }
    ImGui::End();
    ImGui::PopFont();
}

void DeskWindow::deleteChild(const std::string& id) {
    const pack::Child* child = class_list_ ? class_list_->work().leftChild(id) : nullptr;
    if (child == nullptr) return;
    const std::string name = child->name;
    const std::int64_t now = surroundings_.now_ms();
    class_list_->finish(now);
    if (tomorrow_) tomorrow_->finish(now);
    const pack::Classroom classroom = desk_.opened().classroom;
    const auto done = desk::deleteChild(classroom, id, today());
    // Everything that may still hold the child is opened anew, and with it nothing can be undone.
    desk_.replace(surroundings_.open(classroom.folder));
    openClassList();
    if (done.ok())
        class_place_.wasDeleted(done.value(), name);
    else
        class_place_.not_taken = done.problems();
}

// The figures take in what was marked.
void DeskWindow::closeAloud() {
    const bool is_more = ear_.given() > 0;
    ear_.close();
    if (is_more) desk_.replace(surroundings_.open(desk_.opened().classroom.folder));
}

std::int64_t DeskWindow::today() const {
    return surroundings_.now_ms() / 86'400'000;
}

void DeskWindow::drawPlace(View& view) {
    if (sheet_ == Sheet::settings) {
        drawSettingsPage(view);
    } else if (sheet_ == Sheet::help) {
        drawHelpPage(view);
    } else if (place_ == Place::words && unit_ && bring_.open) {
        drawBringPage(view);
    } else if (place_ == Place::words) {
        drawWordsPage(view);
    } else if (place_ == Place::booth) {
        drawBoothPage(view);
    } else if (place_ == Place::try_out) {
        drawTryPage(view);
    } else if (place_ == Place::hand_out) {
        view.showsTablets() ? drawTabletsPage(view) : drawHandOutPage(view);
    } else if (class_list_ &&
               (desk_.page() == Page::list || desk_.state() == ClassState::no_children ||
                desk_.state() == ClassState::no_list)) {
        desk_.showList();
        drawClassListPage(view);
    } else if (desk_.page() == Page::tomorrow && tomorrow_) {
        drawTomorrowPage(view);
    } else if (desk_.page() == Page::papers && papers_) {
        drawPapersPage(view);
    } else if (desk_.state() != ClassState::ready) {
        drawEmptyPage(view);
    } else if (desk_.page() == Page::map) {
        drawMapPage(view);
    } else {
        drawChildPage(view);
    }
}

void DeskWindow::keys(View& view) {
    if (hit(view, Does::gather)) view.gather();
    const auto size = [&](int step) {
        view.later([this, step] {
            DeskSettings settings = settings_.now();
            settings.text_percent = nextTextPercent(settings.text_percent, step);
            settings_.set(settings);
        });
    };
    if (hit(view, Does::text_larger)) size(1);
    if (hit(view, Does::text_smaller)) size(-1);
    constexpr std::pair<Does, Place> kPlaces[] = {{Does::go_words, Place::words},
                                                  {Does::go_booth, Place::booth},
                                                  {Does::go_try_out, Place::try_out},
                                                  {Does::go_hand_out, Place::hand_out},
                                                  {Does::go_class, Place::klass}};
    for (const auto& [does, place] : kPlaces)
        if (hit(view, does)) view.later([this, place = place] { go(place); });
    if (hit(view, Does::help))
        view.later([this] { show(sheet_ == Sheet::help ? Sheet::none : Sheet::help); });
    if (sheet_ != Sheet::none && input::pressed(Key::escape)) {
        view.later([this] { show(Sheet::none); });
        return;
    }
    const std::string& typed = place_ == Place::klass ? class_place_.typed : words_.typed;
    if (input::ctrl() && (!input::isTyping() || typed.empty())) {
        const bool again = hit(view, Does::redo) || (input::shift() && hit(view, Does::undo));
        const bool back = !again && hit(view, Does::undo);
        if (back || again) view.later([this, again] { undo(again); });
    }
    const bool is_beside = desk_.page() == Page::child && (desk_.why() || ear_.isOpen());
    if (place_ == Place::klass && desk_.page() != Page::list && !is_beside &&
        input::pressed(Key::escape))
        view.wish([this](Desk& desk) {
            const bool is_tomorrow = desk.page() == Page::tomorrow && tomorrow_ != nullptr;
            if (!is_tomorrow || !tomorrow_->back()) desk.showMap();
        });
}

}  // namespace wrenlet::desk
