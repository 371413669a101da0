#include "editor/serve/reception.hpp"

#include <algorithm>
#include <ctime>
#include <system_error>
#include <utility>

#include "content/link/join_code.hpp"
#include "content/link/talk.hpp"
#include "editor/serve/tablet_names.hpp"

namespace wrenlet::desk {

namespace {

using link::Status;

constexpr int kBarredWaitS = 30, kBusyWaitS = 5;

int utcOffsetMin(std::int64_t now_ms) {
    const auto seconds = static_cast<std::time_t>(now_ms / 1000);
    std::tm utc{}, local{};
#ifdef _WIN32
    gmtime_s(&utc, &seconds);
    localtime_s(&local, &seconds);
#else
    gmtime_r(&seconds, &utc);
    localtime_r(&seconds, &local);
#endif
    utc.tm_isdst = local.tm_isdst;
    return static_cast<int>(std::difftime(std::mktime(&local), std::mktime(&utc)) / 60);
}

}  // namespace

Reception::Reception(LinkFolder folder, Parts parts)
    : folder_(std::move(folder)),
      parts_(std::move(parts)),
      class_now_(folder_.classroom),
      refusals_(folder_.refused()) {}

Result<std::unique_ptr<Reception>> Reception::open(const pack::Classroom& classroom, Parts parts) {
    const LinkFolder folder{classroom};
    std::error_code error;
    std::filesystem::create_directories(folder.folder(), error);
    std::filesystem::permissions(folder.folder(), std::filesystem::perms::owner_all, error);
    auto held = HeldFile::take(folder.held());
    if (!held)
        return Problem{"The tablets' network",
                       "This classroom is served to tablets already, or its folder cannot be "
                       "written to.",
                       "Stop the other Wrenlet desk first, or look whether the folder is there."};
    auto listed = readTabletList(folder);
    if (!listed.ok()) return listed.problems();
    std::unique_ptr<Reception> reception(new Reception(folder, std::move(parts)));
    reception->held_.emplace(std::move(*held));
    for (ListedTablet& tablet : listed.value()) {
        const std::string name = tablet.identity.tablet;
        reception->listed_.emplace(name, tablet);
        reception->tablets_.emplace(name, std::make_shared<TabletDesk>(folder, std::move(tablet)));
    }
    return reception;
}

Reception::~Reception() {
    const std::int64_t now = parts_.clock.unixMillis();
    forgetDeleted(class_now_.now(now)->welcome.deleted, now);
    for (const auto& [name, tablet] : tablets_) {
        if (tablet->hasMore()) (void)handIn(*tablet, now);
        // Nothing was asked above this number: after a stop in good order no tablet is behind.
        ListedTablet& listed = listed_[name];
        listed.number = tablet->number;
        listed.seen_ms = std::max(listed.seen_ms, tablet->seen_ms);
    }
    if (!tablets_.empty()) (void)keepList();
}

std::shared_ptr<TabletDesk> Reception::find(std::string_view tablet) const {
    const std::lock_guard lock(list_mutex_);
    const auto found = tablets_.find(tablet);
    return found == tablets_.end() ? nullptr : found->second;
}

Result<Done> Reception::keepList() {
    std::vector<ListedTablet> all;
    for (const auto& [name, listed] : listed_) all.push_back(listed);
    return keepTabletList(folder_, all);
}

// The file is written once in so many asks, and then for every tablet: thirty that play side by
// side would else have it written thirty times at one moment.
Result<Done> Reception::keepNumber(TabletDesk& tablet, std::uint64_t number) {
    constexpr std::uint64_t kAhead = 1024;
    if (number > tablet.listed.number) {
        const std::lock_guard lock(list_mutex_);
        ListedTablet& listed = listed_[tablet.listed.identity.tablet];
        if (number > listed.number) {
            const auto before = listed_;
            for (auto& [name, one] : listed_) one.number += kAhead;
            listed.number = std::max(listed.number, number + kAhead);
            listed.seen_ms = parts_.clock.unixMillis();
            if (auto done = keepList(); !done.ok()) {
                listed_ = before;
                return done;
            }
        }
        tablet.listed.number = listed.number;
    }
    tablet.number = number;
    return Done{};
}

Reply Reception::refuse(Status status, std::string_view from, std::string what) {
    refused(from, std::move(what));
    return {status, {}, 0};
}

void Reception::refused(std::string_view from, std::string what, Refusals::Weight weight) {
    refusals_.note(from, std::move(what), parts_.clock.unixMillis(), weight);
}

void Reception::failed(const std::vector<Problem>& problems) {
    {
        const std::lock_guard lock(told_mutex_);
        problems_ = problems;
    }
    changed();
}

std::vector<Problem> Reception::problems() const {
    const std::lock_guard lock(told_mutex_);
    return problems_;
}

void Reception::changed() const {
    if (parts_.changed) parts_.changed();
}

Reply Reception::offer() {
    const std::lock_guard lock(door_mutex_);
    if (!door_ || !door_->isOpen(parts_.clock.unixMillis())) return {Status::code_gone, {}, 0};
    return {Status::well, door_->offer(), 0};
}

Reply Reception::join(std::string_view from, std::string_view request) {
    const std::int64_t now = parts_.clock.unixMillis();
    if (refusals_.isBarred(from, now)) return {Status::too_often, {}, kBarredWaitS};
    const std::lock_guard lock(door_mutex_);
    if (!door_)
        return refuse(Status::code_gone, from, "a tablet that wants to join: no code is open");
    const auto taken = [this](std::string_view name) { return find(name) != nullptr; };
    const auto word_taken = [this](std::string_view word) {
        const std::lock_guard list(list_mutex_);
        return std::any_of(listed_.begin(), listed_.end(), [&](const auto& one) {
            return !one.second.removed && wordOfTablet(one.first) == word;
        });
    };
    link::TabletIdentity identity{nameForTablet(taken, word_taken, parts_.entropy), {}};
    parts_.entropy.fill(identity.key);
    link::JoinDoor after = *door_;
    const auto answer = after.answer(request, now, identity, parts_.entropy);
    if (const auto* const refusal = std::get_if<link::JoinRefusal>(&answer)) {
        door_ = std::move(after);
        switch (*refusal) {
            case link::JoinRefusal::no_request:
                return refuse(Status::no_message, from, "bytes that are no wish to join");
            case link::JoinRefusal::closed:
                return refuse(Status::code_gone, from, "a code that is used up or too old");
            case link::JoinRefusal::too_soon:
                refused(from, "a code too soon after a wrong one");
                return {Status::too_often, {}, kBusyWaitS};
            case link::JoinRefusal::wrong_code:
                break;
        }
        changed();
        return refuse(Status::not_known, from, "a wrong code");
    }
    const auto& joined = std::get<link::Joined>(answer);
    if (!joined.again) {
        const std::lock_guard list(list_mutex_);
        ListedTablet listed{identity, 0, now, 0, false};
        if (listed_.size() >= kMostTablets) {
            const auto oldest = std::find_if(listed_.begin(), listed_.end(),
                                             [](const auto& one) { return one.second.removed; });
            if (oldest == listed_.end()) return {Status::not_now, {}, kBarredWaitS};
            tablets_.erase(oldest->first);
            listed_.erase(oldest);
        }
        listed_[identity.tablet] = listed;
        // The key is on disk before the tablet has it.
        if (const auto kept = keepList(); !kept.ok()) {
            listed_.erase(identity.tablet);
            failed(kept.problems());
            return {Status::not_now, {}, kBusyWaitS};
        }
        tablets_[identity.tablet] = std::make_shared<TabletDesk>(folder_, std::move(listed));
        door_ = std::move(after);
    }
    changed();
    return {Status::well, joined.answer, 0};
}

Reply Reception::talk(std::string_view from, std::string_view message) {
    const std::int64_t now = parts_.clock.unixMillis();
    if (refusals_.isBarred(from, now)) return {Status::too_often, {}, kBarredWaitS};
    const auto envelope = link::readEnvelope(message);
    if (!envelope) return refuse(Status::no_message, from, "bytes that are no message");
    const std::string name(envelope->tablet);
    const auto tablet = find(name);
    if (!tablet)
        return refuse(Status::not_known, from, "a tablet that is not on the list: " + name);
    const std::lock_guard lock(tablet->mutex);
    const link::TabletIdentity& identity = tablet->listed.identity;
    const auto plain = link::openAsk(identity, *envelope);
    if (!plain) return refuse(Status::not_known, from, "a message that " + name + " did not write");
    const auto sealed = [&](const link::Answer& answer) {
        return Reply{
            Status::well,
            link::sealAnswer(identity, envelope->number, link::writeAnswer(answer), parts_.entropy),
            0};
    };
    if (tablet->listed.removed) {
        refused(from, "a tablet that was removed: " + name, Refusals::Weight::none);
        return sealed(link::Removed{});
    }
    // First whether it is new: who plays old ones again does not use up what the tablet may ask.
    if (envelope->number <= tablet->number) {
        refused(from, "a message of " + name + " that is not newer than its last one",
                Refusals::Weight::none);
        return sealed(link::Behind{tablet->number});
    }
    if (!tablet->mayAsk(now)) return {Status::too_often, {}, 1};
    constexpr std::uint64_t kHighestNumber = std::uint64_t{1} << 61;
    const auto ask = link::readAsk(*plain);
    if (!ask || envelope->number > kHighestNumber)
        return refuse(Status::no_message, from, "a message of " + name + " that makes no sense");
    if (const auto kept = keepNumber(*tablet, envelope->number); !kept.ok()) {
        failed(kept.problems());
        return sealed(link::Busy{});
    }
    const bool was_away = now - tablet->seen_ms >= kAwayMs;
    tablet->seen_ms = now;
    const auto given = sealed(answer(*tablet, *ask));
    if (was_away) changed();
    return given;
}

link::Answer Reception::answer(TabletDesk& tablet, const link::Ask& ask) {
    if (const auto* const hello = std::get_if<link::Hello>(&ask)) return welcome(tablet, *hello);
    if (const auto* const sent = std::get_if<link::Responses>(&ask)) return take(tablet, *sent);
    const auto& want = std::get<link::WantPiece>(ask);
    const auto served = class_now_.at(parts_.clock.unixMillis());
    const std::string& bytes = *served->pack_bytes;
    if (want.pack != served->welcome.pack_hash || want.from >= bytes.size())
        return link::Piece{want.pack, want.from, {}};
    return link::Piece{want.pack, want.from,
                       bytes.substr(static_cast<std::size_t>(want.from), link::kPieceBytes)};
}

link::Answer Reception::welcome(TabletDesk& tablet, const link::Hello& hello) {
    const std::int64_t now = parts_.clock.unixMillis();
    const bool is_other = tablet.playing != hello.playing || tablet.unsent != hello.unsent ||
                          tablet.pack_hash != hello.pack;
    tablet.playing = hello.playing;
    tablet.unsent = hello.unsent;
    tablet.pack_hash = hello.pack;
    tablet.clock_off_ms = hello.clock_ms - now;
    if (const auto ready = tablet.prepare(); !ready.ok()) failed(ready.problems());
    if (is_other) changed();
    link::Welcome welcome = class_now_.at(now)->welcome;
    welcome.clock_ms = now;
    welcome.utc_offset_min = utcOffsetMin(now);
    return welcome;
}

link::Answer Reception::take(TabletDesk& tablet, const link::Responses& sent) {
    const std::int64_t now = parts_.clock.unixMillis();
    const auto served = class_now_.at(now);
    link::Kept answer;
    std::vector<practice::Response> wanted;
    for (const practice::Response& response : sent.responses) {
        // Of a deleted child nothing is kept; the tablet may let go of it, and is told to forget.
        if (served->isDeleted(response.child.string()))
            answer.kept.push_back(response.sequence);
        else
            wanted.push_back(response);
    }
    answer.refused = sent.senseless;
    if (!wanted.empty()) {
        const auto kept = tablet.keep(wanted, now);
        if (!kept.ok()) {
            failed(kept.problems());
            return link::Busy{};
        }
        for (const auto sequence : kept.value().kept) answer.kept.push_back(sequence);
        for (const auto sequence : kept.value().refused) answer.refused.push_back(sequence);
    }
    return answer;
}

}  // namespace wrenlet::desk
