#include "editor/tryout/try_place.hpp"

#include <algorithm>
#include <chrono>
#include <map>
#include <system_error>
#include <thread>

#include "content/common/files.hpp"
#include "content/exercise/phrases.hpp"
#include "editor/tryout/tried.hpp"
#include "editor/voice/audio_file.hpp"

namespace wrenlet::desk {

namespace {

std::vector<ShownStill::Line> linesOf(const std::vector<SaidClip>& said,
                                      const OneQuestion& question) {
    std::map<std::string, pack::VoiceNeed> needs;
    for (pack::VoiceNeed& need : heardIn(question)) needs[need.id] = std::move(need);
    std::vector<ShownStill::Line> lines;
    for (const SaidClip& one : said)
        if (const auto need = needs.find(one.clip); need != needs.end())
            lines.push_back({need->second, one.gap_ms});
    return lines;
}

void append(Pcm& sound, const Pcm& clip, int gap_ms) {
    const std::size_t gap = static_cast<std::size_t>(gap_ms) * kClipRate / 1000;
    sound.samples.insert(sound.samples.end(), gap, 0.f);
    sound.samples.insert(sound.samples.end(), clip.samples.begin(), clip.samples.end());
}

}  // namespace

TryPlace::TryPlace(OpenUnit& unit, Parts parts)
    : unit_(unit),
      parts_(std::move(parts)),
      stills_(parts_.drawing, parts_.wake),
      plays_(parts_.playing, parts_.wake),
      sounds_(parts_.saying, parts_.wake),
      keeping_(parts_.drawing),
      tried_(openTried(triedFile())) {
    std::error_code error;
    std::filesystem::create_directories(parts_.folder, error);
}

TryPlace::~TryPlace() {
    *closing_ = true;
    while (plays_.isBusy()) {  // it may be about to open its window
        parts_.game.stop();
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    sounds_.wait();
    stills_.wait();
    keeping_.wait();
    std::error_code error;
    std::filesystem::remove_all(parts_.folder, error);
}

std::filesystem::path TryPlace::triedFile() const {
    return unit_.folder().folder / "tried.json";
}

// A file that cannot be written costs her another look, no work; the unit's own saving tells it.
void TryPlace::noteTried(const exercise::Skill& skill) {
    if (!tried_.insert(std::string(exercise::rowOf(skill).id)).second || !unit_.canChange()) return;
    keeping_.ask([file = triedFile(), tried = tried_] { return keepTried(file, tried).ok(); });
}

const SkillLook* TryPlace::skillLook() const {
    const auto& skills = unit_.look().skills;
    return skill_ < skills.size() ? &skills[skill_] : nullptr;
}

void TryPlace::chooseSkill(std::size_t index) {
    if (index >= unit_.look().skills.size() || index == skill_) return;
    skill_ = index;
    index_ = 0;
}

void TryPlace::moveSkill(int by) {
    const auto last = std::int64_t(unit_.look().skills.size()) - 1;
    if (last < 0) return;
    chooseSkill(std::size_t(std::clamp<std::int64_t>(std::int64_t(skill_) + by, 0, last)));
}

std::size_t TryPlace::count() const {
    const SkillLook* skill = skillLook();
    if (skill == nullptr) return 0;
    const auto& off = unit_.look().left_out;
    return skill->items +
           std::size_t(std::count_if(off.begin(), off.end(), [&](const LeftOutItem& one) {
               return one.item.skill == skill->skill;
           }));
}

const exercise::Item& TryPlace::at(std::size_t index) const {
    const SkillLook& skill = *skillLook();
    std::size_t place = skill.first + index;
    for (const LeftOutItem& off : unit_.look().left_out) {
        if (off.item.skill != skill.skill) continue;
        if (off.before > place) break;
        if (off.before == place) return off.item;
        --place;
    }
    return unit_.look().items[place];
}

bool TryPlace::isLeftOut(const exercise::Item& item) const {
    const auto& off = unit_.unit().items_off;
    return std::binary_search(off.begin(), off.end(), item.id);
}

const exercise::Item* TryPlace::item() const {
    return index_ < count() ? &at(index_) : nullptr;
}

void TryPlace::choose(std::size_t index) {
    if (index < count()) index_ = index;
}

void TryPlace::move(int by) {
    const auto last = std::int64_t(count()) - 1;
    if (last >= 0)
        choose(std::size_t(std::clamp<std::int64_t>(std::int64_t(index_) + by, 0, last)));
}

void TryPlace::another() {
    const auto& skills = unit_.look().skills;
    for (std::size_t i = 1; i < skills.size(); ++i) {
        const std::size_t next = (skill_ + i) % skills.size();
        if (skills[next].items > 0 && !isTried(skills[next])) return chooseSkill(next);
    }
    if (item() == nullptr) return;
    const std::string subject = item()->subject;
    for (std::size_t i = 1; i < count(); ++i) {
        const std::size_t next = (index_ + i) % count();
        if (at(next).subject != subject && !isLeftOut(at(next))) return choose(next);
    }
    choose((index_ + 1) % count());
}

void TryPlace::leaveOut() {
    if (item() == nullptr) return;
    const std::string id = item()->id;
    const bool off = isLeftOut(*item());
    unit_.change([&](UnitAtWork& work) { work.turnItem(id, !off); });
}

void TryPlace::turnSkill() {
    const SkillLook* skill = skillLook();
    if (skill == nullptr) return;
    const std::string id(exercise::rowOf(skill->skill).id);
    const auto& off = unit_.unit().skills_off;
    const bool is_off = std::binary_search(off.begin(), off.end(), id);
    unit_.change([&](UnitAtWork& work) { work.turnSkill(id, !is_off); });
}

bool TryPlace::isFocus(const std::string& sound) const {
    const auto& focus = unit_.unit().focus_sounds;
    return std::binary_search(focus.begin(), focus.end(), sound);
}

void TryPlace::turnFocus(const std::string& sound) {
    const bool on = isFocus(sound);
    unit_.change([&](UnitAtWork& work) { work.turnFocus(sound, !on); });
}

UnitPlaces TryPlace::places() const {
    return UnitPlaces::beside(unit_.folder().file(), unit_.bench().pictures);
}

bool TryPlace::isHers(const pack::VoiceNeed& need) const {
    for (const pack::UnitRecording& recording : unit_.unit().recordings)
        if (recording.clip == need.id) return recording.said == saidFor(need);
    return false;
}

void TryPlace::hear(std::optional<std::size_t> line) {
    if (!isStillNow() || parts_.speaker == nullptr) return;
    std::vector<ShownStill::Line> said = still_->said;
    if (line && *line < said.size()) said = {said[*line]};
    sounds_.ask(
        [said = std::move(said), unit = unit_.unit(), places = places(), making = parts_.making] {
            auto sound = std::make_shared<Pcm>();
            UnitMedia media(unit, places, making);
            std::vector<pack::VoiceNeed> needs;
            for (const ShownStill::Line& one : said) needs.push_back(one.need);
            const std::vector<Result<pack::Clip>> clips = media.clips(needs, {});
            for (std::size_t i = 0; i < clips.size(); ++i) {
                if (!clips[i].ok()) continue;
                const Result<Pcm> heard = decodeTake(clips[i].value().bytes, needs[i].text);
                const int gap_ms = sound->samples.empty() ? 0 : said[i].gap_ms;
                if (heard.ok()) append(*sound, heard.value(), gap_ms);
            }
            return sound;
        });
}

void TryPlace::play() {
    if (item() == nullptr || isPlaying()) return;
    problems_.clear();
    plays_.ask([question = onlyThis(*item(), unit_.look().vocabulary), unit = unit_.unit(),
                places = places(), making = parts_.making, &game = parts_.game,
                file = parts_.folder / "played.zip", closing = closing_] {
        auto played = std::make_shared<Played>();
        const Result<std::string> bytes = packOf(question, unit, places, making, true);
        const Result<Done> written =
            bytes.ok() ? writeWhole(file, bytes.value()) : Result<Done>(bytes.problems());
        if (!written.ok()) {
            played->problems = written.problems();
        } else if (!*closing) {
            played->problems = game.play(file, question.item.id).problems();
        }
        return played;
    });
}

void TryPlace::wantStill(int width, int height) {
    if (item() == nullptr || width < 1 || height < 1) return;
    wanted_ = Wanted{item()->id, unit_.look().changes, width, height};
}

std::size_t TryPlace::tried() const {
    const auto& skills = unit_.look().skills;
    return std::size_t(std::count_if(skills.begin(), skills.end(), [&](const SkillLook& skill) {
        return skill.items > 0 && isTried(skill);
    }));
}

std::size_t TryPlace::toTry() const {
    const auto& skills = unit_.look().skills;
    return std::size_t(std::count_if(skills.begin(), skills.end(),
                                     [](const SkillLook& skill) { return skill.items > 0; }));
}

bool TryPlace::isTried(const SkillLook& skill) const {
    return tried_.count(std::string(exercise::rowOf(skill.skill).id)) != 0;
}

void TryPlace::clamp() {
    const auto& skills = unit_.look().skills;
    if (!skills.empty()) skill_ = std::min(skill_, skills.size() - 1);
    const std::size_t all = count();
    index_ = all == 0 ? 0 : std::min(index_, all - 1);
}

void TryPlace::step() {
    clamp();
    if (wanted_ && wanted_ != asked_ && item() != nullptr && wanted_->item == item()->id) {
        asked_ = wanted_;
        const auto png = parts_.folder / ("still-" + std::to_string(++drawn_) + ".png");
        stills_.ask([question = onlyThis(*item(), unit_.look().vocabulary), unit = unit_.unit(),
                     places = places(), making = parts_.making, &game = parts_.game,
                     file = parts_.folder / "drawn.zip", png, wanted = *wanted_] {
            auto still = std::make_shared<ShownStill>();
            still->item = wanted.item;
            still->width = wanted.width;
            still->height = wanted.height;
            const Result<std::string> bytes = packOf(question, unit, places, making, false);
            const Result<Done> written =
                bytes.ok() ? writeWhole(file, bytes.value()) : Result<Done>(bytes.problems());
            const auto said =
                written.ok() ? game.still({file, wanted.item, png, wanted.width, wanted.height})
                             : Result<std::vector<SaidClip>>(written.problems());
            still->problems = said.problems();
            if (!said.ok()) return still;
            still->png = png;
            still->said = linesOf(said.value(), question);
            return still;
        });
    }
    wanted_.reset();
    if (const auto newest = stills_.take()) {
        std::error_code error;
        if (still_ && !still_->png.empty()) std::filesystem::remove(still_->png, error);
        still_ = **newest;
        if (isStillNow() && !still_->png.empty()) noteTried(item()->skill);
    }
    if (const auto played = plays_.take()) problems_ = (*played)->problems;
    if (const auto sound = sounds_.take())
        if (parts_.speaker != nullptr && !(*sound)->samples.empty())
            parts_.speaker->play((*sound)->samples, (*sound)->rate);
}

}  // namespace wrenlet::desk
