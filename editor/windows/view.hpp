// What a page is given to draw with: the pencil, the desk's state, the room it has, and a list for
// what the teacher wishes, which is done when the frame is drawn and not in the middle of it.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "editor/booth/booth.hpp"
#include "editor/bring/bring_place.hpp"
#include "editor/classlist/class_list_place.hpp"
#include "editor/document/desk.hpp"
#include "editor/ear/ear_place.hpp"
#include "editor/handout/hand_out_place.hpp"
#include "editor/help/spot.hpp"
#include "editor/look/layout.hpp"
#include "editor/paper/papers_place.hpp"
#include "editor/serve/serve_place.hpp"
#include "editor/settings/settings_place.hpp"
#include "editor/tomorrow/tomorrow_place.hpp"
#include "editor/tryout/finder.hpp"
#include "editor/tryout/try_place.hpp"
#include "editor/unit/words_place.hpp"
#include "editor/windows/ui.hpp"

namespace wrenlet::desk {

/// Badges, the logo and the pictures of words as textures of exactly so many pixels.
class Pictures {
  public:
    virtual ~Pictures() = default;
    /// Null when there is no such picture. `name` is that of a file in art/, without ".svg", or
    /// "word:" and the name of a word's picture.
    virtual ImTextureID picture(std::string_view name, int pixels) = 0;
    /// A picture that was drawn by another program, as a texture of its own pixels. Only the newest
    /// is kept. Null when it is not there.
    virtual ImTextureID drawn(const std::filesystem::path&) { return nullptr; }
    /// Where the open unit has its own.
    virtual void ownPictures(const std::filesystem::path&) {}
};

/// Which part of the map is in view, and which place was pointed at when it was last chosen.
struct MapScroll {
    std::size_t first_row = 0, first_column = 0;
    MapPoint seen;       // the point that was last brought into view
    ImVec2 mouse{0, 0};  // where it was last, in pixels
    bool armed = false;  // a press began on the place already pointed at
};

/// The places of the desk, in the order of her work.
enum class Place : std::uint8_t { words, booth, try_out, hand_out, klass };

/// What lies over the place she is in, until Esc or another place.
enum class Sheet : std::uint8_t { none, settings, help };

/// What the list of words was last scrolled to.
struct WordsScroll {
    WordsRow seen;
};

/// A sound that the teacher wants to hear at the desk.
using Hear = std::function<void(const pack::VoiceNeed&)>;

/// What the queue of the booth was last scrolled to.
struct QueueScroll {
    std::size_t seen = static_cast<std::size_t>(-1);
};

/// What the list of skills was last scrolled to, and whether words are looked for.
struct TryScroll {
    std::size_t seen = static_cast<std::size_t>(-1);
    bool finding = false;
};

/// What the list of another's pack was last scrolled to.
struct BringScroll {
    std::size_t seen = 0;
};

/// What the class list was last scrolled to.
struct ClassListScroll {
    std::string seen;
};

/// What the tables and the sheet were last scrolled to.
struct TomorrowScroll {
    std::string table;
    std::size_t row = 0;
    bool choosing = false;  // what could be asked as well was in view
};

/// Which child the list of papers was last scrolled to, and how high its cards were.
struct PapersScroll {
    std::size_t seen = static_cast<std::size_t>(-1);
    float height = 0;  // u
};

/// Which child and skill the list of sounds was last scrolled to.
struct SoundsScroll {
    std::size_t child = 0;
    std::string skill;
};

struct View {
    Ui& ui;
    const Desk& desk;
    Frame frame;
    float width = 0, height = 0;  // u
    std::int64_t now_ms = 0;
    Pictures* pictures = nullptr;
    MapScroll& scroll;
    SoundsScroll& sounds;
    Place place = Place::klass;
    OpenUnit* unit = nullptr;  // none is open
    WordsPlace& words;
    WordsScroll& words_scroll;
    Booth* booth = nullptr;  // of the open unit
    QueueScroll& queue_scroll;
    TryPlace* try_out = nullptr;  // of the open unit
    Finder* finder = nullptr;     // of the open unit
    TryScroll& try_scroll;
    HandOutPlace* hand_out = nullptr;  // of the open unit
    BringPlace& bring;
    BringScroll& bring_scroll;
    OpenClassList* class_list;  // null: no classroom is open, or its list cannot be read
    ClassListPlace& class_place;
    ClassListScroll& class_scroll;
    TomorrowPlace* tomorrow = nullptr;  // null: no class list is open
    TomorrowScroll& tomorrow_scroll;
    PapersPlace* papers = nullptr;  // the same
    PapersScroll& papers_scroll;
    std::string& new_title;  // of a unit to be made
    std::vector<std::function<void(Desk&)>>& wishes;
    std::function<void()> gather;  // look into the classroom folder again
    std::function<void(Place)> go;
    std::function<void(const std::string&)> delete_child;  // for good, by id
    EarPlace& ear;
    std::function<void(EarWords)> ask_aloud;  // the child shown; null: there is nothing to ask from
    std::function<void(practice::HeardAs)> mark_aloud;
    std::function<void()> close_aloud;
    std::function<void(const std::string&)> make_unit;            // with a title
    std::function<void()> close_unit;                             // to choose another
    std::function<void(const std::filesystem::path&)> open_unit;  // a unit's folder
    const std::vector<UnitFolder>& units;                         // of this classroom
    const std::vector<Problem>& unit_problems;  // of a unit that could not be opened
    const Hear& hear;                           // null: there is no sound
    SettingsPlace& settings;
    Sheet sheet = Sheet::none;
    Spot spot = Spot::map;              // of the place under the sheet, unless that is Settings
    std::function<void(Sheet)> show{};  // none: back to the place
    ServePlace* serve = nullptr;        // null: there is no classroom to serve

    /// At Hand out, the tablets' page and not the pack's.
    bool showsTablets() const { return serve != nullptr && (serve->open || unit == nullptr); }

    void wish(std::function<void(Desk&)> what) { wishes.push_back(std::move(what)); }
    void later(std::function<void()> what) {
        wishes.push_back([what = std::move(what)](Desk&) { what(); });
    }
};

// One file each. They draw into view.frame.body and above it.
void drawRail(View& view);
void drawFoot(View& view);
void drawSettingsPage(View& view);
void drawHelpPage(View& view);
void drawMapPage(View& view);
void drawStandoutPane(View& view, const Area& area);
void drawReading(View& view, const Area& area);       // the place pointed at, read out
void drawReadingStrip(View& view, const Area& area);  // the same in one line, without the pane
void drawChildPage(View& view);
void drawSoundsCard(View& view, const Area& area);
void drawChoicesCard(View& view, const Area& area);
void drawCourseCard(View& view, const Area& area);
/// True when the child shown is being asked; she may have gone on to another since.
bool isAskedAloud(const Desk& desk, const EarPlace& ear);
void drawEarCard(View& view, const Area& area);  // REQUIRES: ear.isOpen()
void drawWhyCard(View& view, const Area& area);  // REQUIRES: desk.why()
void drawEmptyPage(View& view);
void drawClassListPage(View& view);
void drawClassListPane(View& view, const Area& area);  // the child in hand
void drawClassListFoot(View& view, const Area& foot);
void drawTomorrowPage(View& view);
void drawTomorrowSheet(View& view, const Area& area);  // the table or the lesson in hand
void drawTomorrowFoot(View& view, const Area& foot);
void drawPapersPage(View& view);
void drawPapersFoot(View& view, const Area& foot);
void drawWordsPage(View& view);
void drawBringPage(View& view);
void drawBringFoot(View& view, const Area& foot);
void drawWordList(View& view, const Area& area);
void drawWordPane(View& view, const Area& area);
void drawPictureChooser(View& view, const Area& area);  // REQUIRES: words.choosing
void drawBoothPage(View& view);
void drawTryPage(View& view);
/// Whether words for its skill are looked for: asked for, or there is no question to see.
bool isFindingMore(const TryPlace& place, const TryScroll& scroll);
void drawTrySkills(View& view, const Area& area);
void drawTryPane(View& view, const Area& area);  // what is asked and heard
void drawFinder(View& view, const Area& area);   // words that would give a skill more
void drawHandOutPage(View& view);
/// The buttons between the pack's page and the tablets'; their width.
float drawHandOutWays(View& view, float right);
void drawTabletsPage(View& view);  // REQUIRES: serve
void drawTabletsFoot(View& view, const Area& foot);
void drawTakeCard(View& view, const Area& area);  // the last take, its wave and what was found

}  // namespace wrenlet::desk
