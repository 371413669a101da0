#include "editor/booth/booth.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "editor/voice/another_word.hpp"
#include "editor/voice/audio_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::int64_t kDeafMs = 150;  // after the desk's own sound
constexpr double kUnknownRoomDb = -100;

std::int64_t microseconds(std::size_t sample, int rate) {
    return static_cast<std::int64_t>(sample) * 1'000'000 / rate;
}

}  // namespace

std::string_view troubleCode(Trouble trouble) {
    switch (trouble) {
        case Trouble::silent:
            return "silent";
        case Trouble::clipped:
            return "clipped";
        case Trouble::too_quiet:
            return "too-quiet";
        case Trouble::noisy:
            return "noisy";
        case Trouble::cut_off_start:
            return "cut-off-start";
        case Trouble::cut_off_end:
            return "cut-off-end";
        case Trouble::two_tries:
            return "two-tries";
        case Trouble::added_vowel:
            return "added-vowel";
        case Trouble::another_word:
            return "another-word";
    }
    return "";
}

Booth::Booth(OpenUnit& unit, Parts parts)
    : unit_(unit),
      parts_(std::move(parts)),
      keeper_(unit.folder().takes(), unit.bench().saving, parts_.wake),
      checks_(parts_.checking, parts_.wake) {
    rebuildQueue();
}

std::size_t Booth::hers() const {
    return static_cast<std::size_t>(std::count_if(
        queue_.begin(), queue_.end(),
        [](const BoothEntry& entry) { return entry.voice == BoothEntry::Voice::hers; }));
}

/// The needs are those of the newest look, whose voice they have is that of the unit as it is now.
void Booth::rebuildQueue() {
    const UnitLook& look = unit_.look();
    if (queue_of_ == look.changes && queue_changes_ == unit_.work().changes()) return;
    const std::string held = current() != nullptr ? current()->need.id : "";
    queue_of_ = look.changes;
    queue_changes_ = unit_.work().changes();
    queue_.clear();
    const auto& recordings = unit_.unit().recordings;  // sorted by clip
    for (const pack::VoiceNeed& need : look.needs) {
        const auto found =
            std::lower_bound(recordings.begin(), recordings.end(), need.id,
                             [](const auto& one, const auto& id) { return one.clip < id; });
        BoothEntry entry{need};
        if (found != recordings.end() && found->clip == need.id)
            entry.voice =
                found->said == saidFor(need) ? BoothEntry::Voice::hers : BoothEntry::Voice::changed;
        if (entry.voice != BoothEntry::Voice::demo) entry.whose = found->voice;
        queue_.push_back(std::move(entry));
    }
    if (!has_begun_) {
        at_ = nextWithout(0).value_or(0);
        return;
    }
    const auto same = std::find_if(queue_.begin(), queue_.end(),
                                   [&](const auto& entry) { return entry.need.id == held; });
    at_ = same != queue_.end() ? static_cast<std::size_t>(same - queue_.begin())
                               : std::min(at_, queue_.size());
}

std::optional<std::size_t> Booth::nextWithout(std::size_t after) const {
    for (std::size_t i = 0; i < queue_.size(); ++i) {
        const std::size_t at = (after + i) % queue_.size();
        if (queue_[at].voice != BoothEntry::Voice::hers) return at;
    }
    return std::nullopt;
}

bool Booth::isReady() const {
    return phase_ == Phase::listening && listening_ &&
           listening_->state() != Endpoint::State::reading_room &&
           !(parts_.speaker != nullptr && parts_.speaker->isPlaying());
}

bool Booth::isSpeaking() const {
    return phase_ == Phase::listening && listening_ &&
           listening_->state() == Endpoint::State::speaking;
}

std::vector<Finding> Booth::findings() const {
    if (!last_) return {};
    std::vector<Finding> told = last_->findings;
    const BoothEntry* entry = current();
    const auto& recordings = unit_.unit().recordings;
    const auto found = std::find_if(recordings.begin(), recordings.end(), [&](const auto& one) {
        return entry != nullptr && one.clip == entry->need.id;
    });
    if (found == recordings.end()) return told;
    const auto is_kept = [&](const Finding& finding) {
        return std::find(found->kept.begin(), found->kept.end(), troubleCode(finding.trouble)) !=
               found->kept.end();
    };
    told.erase(std::remove_if(told.begin(), told.end(), is_kept), told.end());
    return told;
}

void Booth::goOn() {
    rebuildQueue();
    has_begun_ = true;
    if (current() == nullptr || !unit_.canChange()) return;
    if (parts_.microphone == nullptr) {
        problems_ = {
            {"Microphone", "No microphone found.", "Plug one in, or go on with the demo voice."}};
        return;
    }
    if (rate_ == 0) {
        const Result<int> started = parts_.microphone->start();
        problems_ = started.problems();
        if (!started.ok()) return;
        rate_ = started.value();
    }
    listen();
}

void Booth::listen() {
    loudest_db_ = kUnknownRoomDb;
    listening_.emplace(rate_, current()->need, room_db_);
    phase_ = Phase::listening;
}

void Booth::pause() {
    if (parts_.microphone != nullptr && rate_ != 0) parts_.microphone->stop();
    rate_ = 0;
    listening_.reset();
    level_db_ = kUnknownRoomDb;
    if (phase_ != Phase::checking) phase_ = Phase::paused;
}

void Booth::choose(std::size_t entry) {
    if (entry >= queue_.size()) return;
    has_begun_ = true;
    at_ = entry;
    last_.reset();
    tries_ = 0;
    if (phase_ == Phase::listening) listen();
    if (phase_ == Phase::finished) phase_ = Phase::paused;
}

void Booth::skip() {
    const auto next = queue_.empty() ? std::nullopt : nextWithout(at_ + 1);
    if (next) choose(*next);
}

void Booth::check(Pcm take) {
    phase_ = Phase::checking;
    listening_.reset();
    checked_ = current()->need;
    checks_.ask([take = std::move(take), need = current()->need, ear = parts_.ear,
                 words = others(current()->need)] {
        return std::make_shared<const CheckedTake>(checkedTake(take, need, ear.get(), words));
    });
}

std::vector<SaidWord> Booth::others(const pack::VoiceNeed& need) const {
    std::vector<pack::VoiceNeed> words;
    std::size_t at = 0;
    if (need.kind != pack::VoiceNeed::Kind::word) return {};
    for (const BoothEntry& entry : queue_) {
        if (entry.need.id == need.id) at = words.size();
        if (entry.need.kind == need.kind) words.push_back(entry.need);
    }
    return words.empty() ? std::vector<SaidWord>{} : othersAround(words, at);
}

void Booth::takeChecked() {
    std::optional<std::shared_ptr<const CheckedTake>> checked = checks_.take();
    if (!checked || !checked_) return;
    const bool is_current = current() != nullptr && current()->need.id == checked_->id;
    checked_.reset();
    if (!is_current) {
        if (rate_ != 0 && current() != nullptr) listen();
        return;
    }
    phase_ = Phase::paused;
    const bool is_silent = (*checked)->spoken.empty();
    if (!is_silent) {
        last_ = **checked;
        ++tries_;
        if (findings().empty()) {
            keepLast();
            return;
        }
    }
    if (rate_ != 0) listen();
}

void Booth::keepLast() {
    const pack::VoiceNeed need = current()->need;
    pack::UnitRecording recording;
    recording.clip = need.id;
    recording.said = saidFor(need);
    recording.take = keeper_.keep(std::make_shared<const Pcm>(last_->take));
    recording.from_us = microseconds(last_->kept.begin, last_->take.rate);
    recording.to_us = microseconds(last_->kept.end, last_->take.rate);
    for (const Finding& finding : last_->findings)
        recording.kept.emplace_back(troubleCode(finding.trouble));
    unit_.change([&](UnitAtWork& work) { work.keepRecording(recording, need.text); });
    rebuildQueue();
    last_.reset();
    tries_ = 0;
    const bool listens = rate_ != 0;
    const auto next = nextWithout(at_ + 1);
    if (next) {
        at_ = *next;
        if (listens) listen();
    } else {
        pause();
        phase_ = Phase::finished;
    }
}

void Booth::keepAsItIs() {
    if (last_ && phase_ != Phase::checking) keepLast();
}

void Booth::cutOff() {
    const std::vector<Finding> told = findings();
    if (told.empty() || phase_ == Phase::checking) return;
    last_ = withEnds(std::move(*last_), endsWithout(*last_, told.front()), current()->need);
    keepLast();
}

void Booth::moveEnds(double from, double to) {
    if (!last_ || phase_ == Phase::checking) return;
    const auto size = static_cast<double>(last_->take.samples.size());
    const auto sample = [&](double part) {
        return static_cast<std::size_t>(std::clamp(part, 0.0, 1.0) * size);
    };
    const Stretch kept{sample(from), sample(to)};
    constexpr double kShortest = 0.03;  // seconds
    if (static_cast<double>(kept.end) - static_cast<double>(kept.begin) <
        kShortest * last_->take.rate)
        return;
    last_ = withEnds(std::move(*last_), kept, current()->need);
}

void Booth::hearLast() {
    if (last_ && parts_.speaker != nullptr)
        parts_.speaker->play(last_->clip.samples, last_->clip.rate);
}

void Booth::takeFile(const std::filesystem::path& file) {
    if (current() == nullptr || !unit_.canChange() || phase_ == Phase::checking) return;
    Result<Pcm> take = readTake(file);
    problems_ = take.problems();
    if (take.ok()) check(std::move(take.value()));
}

void Booth::dropRecording() {
    if (current() == nullptr) return;
    const pack::VoiceNeed need = current()->need;
    unit_.change([&](UnitAtWork& work) { work.dropRecording(need.id, need.text); });
    rebuildQueue();
}

void Booth::step(std::int64_t now_ms) {
    rebuildQueue();
    keeper_.step(now_ms);
    takeChecked();
    if (rate_ == 0 || parts_.microphone == nullptr) return;
    const std::vector<float> heard = parts_.microphone->heard();
    if (parts_.speaker != nullptr && parts_.speaker->isPlaying()) {
        deaf_until_ms_ = now_ms + kDeafMs;
        return;
    }
    if (phase_ != Phase::listening || !listening_ || now_ms < deaf_until_ms_) return;
    // a block at a time, so that what comes after the end is not taken for it
    constexpr std::size_t kBlock = 480;
    for (std::size_t from = 0; from < heard.size() && listening_; from += kBlock) {
        const std::size_t size = std::min(kBlock, heard.size() - from);
        const auto state = listening_->feed({heard.data() + from, size});
        level_db_ = listening_->levelDb();
        room_db_ = listening_->roomDb();
        loudest_db_ = std::max(loudest_db_, level_db_);
        if (state == Endpoint::State::ended) check(listening_->take());
    }
    takeChecked();
}

std::vector<Problem> Booth::problems() const {
    std::vector<Problem> all = problems_;
    all.insert(all.end(), keeper_.problems().begin(), keeper_.problems().end());
    return all;
}

}  // namespace wrenlet::desk
