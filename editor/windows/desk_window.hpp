// The whole desk in one frame of Dear ImGui: rail, foot line and the page between them. Knows
// neither SDL nor the disk; a scripted test drives it as a window does.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "editor/document/desk.hpp"
#include "editor/unit/own_pictures.hpp"
#include "editor/windows/type_atlas.hpp"
#include "editor/windows/ui.hpp"
#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// What the booth hears and is heard with; without a place for checking there is no booth.
struct BoothSound {
    Microphone* microphone = nullptr;
    Speaker* speaker = nullptr;
    Aside* checking = nullptr;
    std::shared_ptr<WordEar> ear;
};

/// What packs are made with.
struct Packing {
    Aside* building = nullptr;
    std::optional<ClipMaking> making;
    FreeBytes free = freeBytesOf;
};

/// What questions are tried out with; without the child's program there is no trying out.
struct Trying {
    ChildGame* game = nullptr;
    Aside* drawing = nullptr;
    Aside* playing = nullptr;
    Aside* saying = nullptr;
    Aside* finding = nullptr;
    std::optional<ClipMaking> making = {};
    std::filesystem::path folder = {};  // for files that pass
};

/// What the window asks of the world outside.
struct Surroundings {
    std::function<OpenedClass(const std::filesystem::path&)> open;  // read a classroom folder
    std::function<std::int64_t()> now_ms;                           // Unix milliseconds
    Pictures* pictures = nullptr;                                   // none: no badges are drawn
    const Workbench* bench = nullptr;  // none: units of words are not worked on
    Hear hear = {};                    // none: there is no sound
    BoothSound sound = {};
    Packing packing = {};
    Trying trying = {};
    SettingsHome settings = {};
    OpenOutside open_outside = {};                  // none: nothing is shown outside
    std::optional<ServePlace::Parts> serving = {};  // none: no tablets are served
};

class DeskWindow {
  public:
    DeskWindow(OpenedClass opened, Surroundings surroundings);

    /// Draws one frame of so many pixels into the current context, between NewFrame and Render.
    void frame(float pixel_width, float pixel_height, float scale, const TypeAtlas& atlas);

    /// What was dropped on the window: a classroom folder, a picture, a recording, a list of words.
    void drop(const std::filesystem::path& path);
    void go(Place place);
    Place place() const { return place_; }
    /// Settings or Help over the place, or the place again.
    void show(Sheet sheet);
    Sheet sheet() const { return sheet_; }
    SettingsPlace& settings() { return settings_; }

    void openUnit(const std::filesystem::path& folder);
    void makeUnit(const std::string& title);
    OpenUnit* unit() { return unit_.get(); }
    Booth* booth() { return booth_.get(); }
    TryPlace* tryOut() { return try_out_.get(); }
    Finder* finder() { return finder_.get(); }
    void findMore() { try_scroll_.finding = true; }
    HandOutPlace* handOut() { return hand_out_.get(); }
    /// Whether frames are wanted at the screen's rate: while it listens, makes a pack or brings up
    /// pictures.
    bool wantsFrames() const {
        return (booth_ && booth_->wantsFrames()) || (hand_out_ && hand_out_->isBuilding()) ||
               (words_.isChoosingPicture() && !words_.choosing->all_shown);
    }
    WordsPlace& words() { return words_; }
    OpenClassList* classList() { return class_list_.get(); }
    ClassListPlace& classPlace() { return class_place_; }
    EarPlace& ear() { return ear_; }
    BringPlace& bring() { return bring_; }
    TomorrowPlace* tomorrow() { return tomorrow_.get(); }
    PapersPlace* papers() { return papers_.get(); }
    ServePlace* serve() { return serve_.get(); }

    /// Looks and saves as is due; whether something is still to be done, and when.
    void step();
    std::optional<std::int64_t> due() const;
    /// Saves what is not saved: before the window goes.
    void finish();

    Desk& desk() { return desk_; }
    Stage& stage() { return stage_; }
    const Stage& stage() const { return stage_; }
    float textSize() const { return static_cast<float>(settings_.now().text_percent) / 100; }

  private:
    void keys(View& view);
    Spot spot() const;
    void deleteChild(const std::string& id);
    void closeAloud();
    std::int64_t today() const;  // days since 1970-01-01
    void drawPlace(View& view);
    void closeUnit();
    void openClassList();
    void openServing();
    void takeServed(OpenedClass opened);
    bool showsTablets() const { return serve_ && (serve_->open || !unit_); }
    void undo(bool again);
    void openClassroom(const std::filesystem::path& folder);
    void addFrom(const std::filesystem::path& file);
    void takePicture(const std::filesystem::path& file);
    bool isToBringIn(const std::filesystem::path& path) const;
    void showUnit(Result<std::unique_ptr<OpenUnit>> opened);

    Desk desk_;
    Surroundings surroundings_;
    SettingsPlace settings_;
    Sheet sheet_ = Sheet::none;
    Stage stage_;
    MapScroll scroll_;
    SoundsScroll sounds_;
    Place place_ = Place::klass;
    std::unique_ptr<OpenUnit> unit_;
    std::unique_ptr<OwnPictures> own_pictures_;  // of that unit
    std::unique_ptr<Booth> booth_;               // of that unit
    QueueScroll queue_scroll_;
    std::unique_ptr<TryPlace> try_out_;  // of that unit
    std::unique_ptr<Finder> finder_;     // of that unit
    TryScroll try_scroll_;
    std::unique_ptr<HandOutPlace> hand_out_;  // of that unit
    BringPlace bring_;
    BringScroll bring_scroll_;
    std::unique_ptr<OpenClassList> class_list_;
    std::uint64_t class_shown_ = 0;  // the change of the list that the map shows
    ClassListPlace class_place_;
    ClassListScroll class_scroll_;
    std::unique_ptr<TomorrowPlace> tomorrow_;  // of the class
    TomorrowScroll tomorrow_scroll_;
    std::unique_ptr<ServePlace> serve_;    // of the open classroom
    std::unique_ptr<PapersPlace> papers_;  // of the class
    PapersScroll papers_scroll_;
    EarPlace ear_;
    WordsPlace words_;
    WordsScroll words_scroll_;
    std::string new_title_;
    std::vector<Problem> unit_problems_;  // of a unit that could not be opened
    std::vector<UnitFolder> units_;       // of the classroom
};

}  // namespace wrenlet::desk
