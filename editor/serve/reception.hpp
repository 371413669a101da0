// The desk's side of the link without a socket: who may join, which messages are genuine and new,
// what they are answered. Everything that comes over the network goes through here, on any thread;
// what it will not do it refuses, logs, and leaves everything as it was.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/clock.hpp"
#include "content/link/bytes.hpp"
#include "content/link/join.hpp"
#include "content/link/over_http.hpp"
#include "editor/edits/held_file.hpp"
#include "editor/serve/class_now.hpp"
#include "editor/serve/refusals.hpp"
#include "editor/serve/tablet_desk.hpp"

namespace wrenlet::desk {

struct Reply {
    link::Status status = link::Status::well;
    std::string body;
    int wait_s = 0;  // for too_often and not_now
};

/// A code that is on the teacher's screen.
struct ShownCode {
    std::string code;
    std::int64_t closes_ms = 0;
    int wrong = 0;  // how often somebody guessed
};

/// A tablet for the teacher's list.
struct SeenTablet {
    enum class State : std::uint8_t { playing, waiting, away };
    std::string tablet;
    State state = State::away;
    std::int64_t seen_ms = 0;  // 0: joined and never heard of since
    std::int64_t unsent = 0, kept = 0;
    bool has_pack = false;          // the class's, as it is handed out now
    std::int64_t clock_off_ms = 0;  // its clock against the desk's
};

class Reception {
  public:
    /// A tablet that said nothing for so long is not there: three hellos went by.
    static constexpr std::int64_t kAwayMs = 3 * link::kHelloEveryMs + 5000;

    struct Parts {
        const Clock& clock;
        link::Entropy& entropy;              // asked on any thread
        std::function<void()> changed = {};  // what a teacher sees is another; on any thread
    };
    /// Errors: the list of tablets cannot be read, another desk serves this classroom.
    static Result<std::unique_ptr<Reception>> open(const pack::Classroom& classroom, Parts parts);
    /// Hands in everything.
    ~Reception();

    // From the network; `from` is an address.
    Reply offer();
    Reply join(std::string_view from, std::string_view request);
    Reply talk(std::string_view from, std::string_view message);
    void refused(std::string_view from, std::string what,
                 Refusals::Weight weight = Refusals::Weight::guess);

    // From the teacher.
    /// A new code in place of the one before. Takes some tenths of a second.
    Result<ShownCode> openCode();
    void closeCode();
    std::optional<ShownCode> code() const;    // while it is good
    std::vector<SeenTablet> tablets() const;  // by name
    Result<Done> remove(const std::string& tablet);
    Result<Done> letBack(const std::string& tablet);
    const Refusals& refusals() const { return refusals_; }
    /// The newest thing that could not be done for tablets: a full disk, a pack that is gone.
    std::vector<Problem> problems() const;

    // From whoever keeps it going.
    /// Forgets who was deleted, and hands in what is due of one tablet; true when it did.
    bool handInOne(std::int64_t now_ms);
    /// Rises with each handing in.
    std::uint64_t handedIn() const;

  private:
    Reception(LinkFolder folder, Parts parts);
    std::shared_ptr<TabletDesk> find(std::string_view tablet) const;
    Result<Done> keepList();  // of all but seen_ms, which may be older on disk
    Result<Done> keepNumber(TabletDesk& tablet, std::uint64_t number);
    Reply refuse(link::Status status, std::string_view from, std::string what);
    link::Answer answer(TabletDesk& tablet, const link::Ask& ask);
    link::Answer welcome(TabletDesk& tablet, const link::Hello& hello);
    link::Answer take(TabletDesk& tablet, const link::Responses& sent);
    bool handIn(TabletDesk& tablet, std::int64_t now_ms);
    void forgetDeleted(const std::vector<std::string>& deleted, std::int64_t now_ms);
    void failed(const std::vector<Problem>& problems);
    void changed() const;
    Result<Done> setRemoved(const std::string& tablet, bool removed);

    LinkFolder folder_;
    std::optional<HeldFile> held_;
    Parts parts_;
    mutable ClassNow class_now_;
    Refusals refusals_;

    mutable std::mutex list_mutex_;  // taken after a tablet's own, never before
    std::map<std::string, std::shared_ptr<TabletDesk>, std::less<>> tablets_;
    std::map<std::string, ListedTablet, std::less<>> listed_;  // as it is on disk

    mutable std::mutex door_mutex_;
    std::optional<link::JoinDoor> door_;

    mutable std::mutex told_mutex_;
    std::vector<Problem> problems_;
    std::uint64_t handed_in_ = 0;
    std::vector<std::string> forgotten_;
};

}  // namespace wrenlet::desk
