// The booth: what is to be said, one after another. It listens, hears by itself when she is done,
// checks the take aside, and goes on when nothing is found; otherwise it tells what was found and
// goes on listening, so that she just says it again. Everything it keeps is an edit of the unit.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "editor/booth/microphone.hpp"
#include "editor/booth/take_keeper.hpp"
#include "editor/unit/open_unit.hpp"
#include "editor/voice/hands_free.hpp"
#include "editor/voice/take.hpp"
#include "editor/voice/unit_media.hpp"

namespace wrenlet::desk {

/// Something that needs a voice, and whose it has.
struct BoothEntry {
    enum class Voice : std::uint8_t {
        demo,
        hers,
        changed,  // hers, of what was to be said before the word was changed
    };
    pack::VoiceNeed need;
    Voice voice = Voice::demo;
    std::string whose = {};  // another's name, where the recording was brought in
};

/// A finding's name in files: "added-vowel".
std::string_view troubleCode(Trouble trouble);

class Booth {
  public:
    enum class Phase : std::uint8_t {
        paused,
        listening,
        checking,  // what was heard
        finished,  // everything is hers
    };

    /// What hears, what plays and where takes are checked; all must outlive it. No microphone: only
    /// files can be taken.
    struct Parts {
        Microphone* microphone = nullptr;
        Speaker* speaker = nullptr;
        Aside& checking;
        std::shared_ptr<WordEar> ear;  // null: it is not heard whether it is another word
        std::function<void()> wake;
    };
    Booth(OpenUnit& unit, Parts parts);

    const std::vector<BoothEntry>& queue() const { return queue_; }
    std::size_t at() const { return at_; }  // may be queue().size() when there is nothing
    const BoothEntry* current() const { return at_ < queue_.size() ? &queue_[at_] : nullptr; }
    std::size_t hers() const;  // how many are in her voice, as they are to be said now
    Phase phase() const { return phase_; }
    /// Whether she may speak now: the room was read, and nothing is being played.
    bool isReady() const;
    bool isSpeaking() const;
    double levelDb() const { return level_db_; }
    double loudestDb() const { return loudest_db_; }  // of this try
    double roomDb() const { return room_db_; }        // below -99: not known yet

    /// The last take of what is being said, with what was found and is not silenced; none yet.
    const CheckedTake* lastTake() const { return last_ ? &*last_ : nullptr; }
    std::vector<Finding> findings() const;
    int tries() const { return tries_; }  // of what is being said

    void goOn();  // begins to listen
    void pause();
    void skip();                            // to the next that has not her voice
    void choose(std::size_t entry);         // to be said again, or for the first time
    void hearLast();                        // the take, as children will hear it
    void keepAsItIs();                      // the last take, whatever was found
    void cutOff();                          // the last take without what its first finding marks
    void moveEnds(double from, double to);  // of the last take, 0 to 1 of its length
    void takeFile(const std::filesystem::path& file);
    void dropRecording();  // the demo voice again

    /// Hears and checks what has come; `now_ms` of a steady clock.
    void step(std::int64_t now_ms);
    bool wantsFrames() const { return phase_ == Phase::listening; }
    void finish() { keeper_.finish(); }

    /// Why there is no sound, or a take could not be put on disk.
    std::vector<Problem> problems() const;

  private:
    void rebuildQueue();
    void listen();
    void check(Pcm take);
    void takeChecked();
    void keepLast();
    std::optional<std::size_t> nextWithout(std::size_t after) const;
    std::vector<SaidWord> others(const pack::VoiceNeed& need) const;

    OpenUnit& unit_;
    Parts parts_;
    TakeKeeper keeper_;
    std::vector<BoothEntry> queue_;
    std::optional<std::uint64_t> queue_of_;  // the look's changes that the queue is of
    std::uint64_t queue_changes_ = 0;        // the unit's
    std::size_t at_ = 0;
    bool has_begun_ = false;  // before, the first that needs a voice is always the one to say
    Phase phase_ = Phase::paused;
    std::optional<HandsFree> listening_;
    int rate_ = 0;
    double level_db_ = -100, loudest_db_ = -100, room_db_ = -100;
    Newest<std::shared_ptr<const CheckedTake>> checks_;
    std::optional<pack::VoiceNeed> checked_;  // what is being checked was said for
    std::optional<CheckedTake> last_;
    int tries_ = 0;
    std::int64_t deaf_until_ms_ = 0;  // while the desk's own sound dies away
    std::vector<Problem> problems_;
};

}  // namespace wrenlet::desk
