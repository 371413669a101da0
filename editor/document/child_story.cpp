#include "editor/document/child_story.hpp"

#include <algorithm>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr int kMostMissed = 2;
constexpr std::size_t kMostDays = 2;

// The wrong choice that was taken most, with how often; null when none was.
const std::pair<const std::string, int>* mostTaken(const practice::Evidence& evidence) {
    const std::pair<const std::string, int>* most = nullptr;
    for (const auto& taken : evidence.taken)
        if (!taken.first.empty() && (!most || taken.second > most->second)) most = &taken;
    return most;
}

// With its skill where the place alone could be another skill's.
std::string placeIn(const practice::SoundLine& line) {
    using exercise::Position;
    const std::string place = wording::place(line.cell.turns_on);
    const Position position = line.cell.turns_on.position;
    if (position == Position::word_count || position == Position::rime) return place;
    return place + " (" + wording::skill(line.cell.skill) + ")";
}

std::string summaryOf(const practice::ChildProgress& child) {
    if (child.answers == 0) return child.child.name + " has not played yet.";
    std::vector<const practice::SoundLine*> missed;
    int steady = 0, growing = 0;
    for (const practice::SoundLine& line : child.lines) {
        const Said said = saidOf(line);
        if (said == Said::missed) missed.push_back(&line);
        if (said == Said::steady) ++steady;
        if (said == Said::growing) ++growing;
    }
    std::stable_sort(missed.begin(), missed.end(), [](const auto* a, const auto* b) {
        return a->evidence.reading.p_missed > b->evidence.reading.p_missed;
    });
    std::string text;
    if (!missed.empty()) {
        std::vector<std::string> places;
        for (const auto* line : missed) places.push_back(placeIn(*line));
        text = "Misses " + wording::names(places, kMostMissed) + ". ";
    }
    const auto all = static_cast<std::int64_t>(child.lines.size());
    if (steady > 0) {
        text += "Steady on " + wording::figure(steady) + " of " + wording::counted(all, "place");
        if (growing > 0) text += ", growing on " + wording::figure(growing);
        text += ".";
    } else if (growing > 0) {
        text += "Growing on " + wording::figure(growing) + " of " + wording::counted(all, "place") +
                ".";
    } else if (missed.empty()) {
        text = "Too few answers yet to say more.";
    }
    return text;
}

std::string factsOf(const practice::ChildProgress& child) {
    if (child.answers == 0) return "Answers come in after a session on a tablet.";
    std::string text = wording::counted(child.answers, "answer") + " on " +
                       wording::counted(child.days, "day") + ", " +
                       wording::minutes(child.practised_ms) + " of answering.";
    if (!child.not_counted.empty()) text += " " + notCountedSentence(child);
    if (!child.child.shields.empty())
        text += " Shielded, never called missed: " + wording::names(child.child.shields, 4) + ".";
    return text;
}

}  // namespace

std::string notCountedSentence(const practice::ChildProgress& child) {
    const auto days = practice::answersByDay(child.not_counted);
    if (days.empty()) return {};
    std::int64_t all = 0;
    std::vector<std::string> dates;
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        all += day->second;
        dates.push_back(wording::date(day->first));
    }
    return wording::counted(all, "answer") + " on " + wording::names(dates, kMostDays) +
           " not counted: answered without listening.";
}

ChildStory storyOf(const OpenedClass& opened, std::size_t child) {
    const practice::ChildProgress& progress = opened.children[child];
    ChildStory story{summaryOf(progress), factsOf(progress), {}};
    for (const practice::SoundLine& line : progress.lines) {
        const practice::Evidence& evidence = line.evidence;
        if (evidence.seen + line.heard.all() == 0) continue;
        if (story.groups.empty() || story.groups.back().skill != line.cell.skill)
            story.groups.push_back({line.cell.skill, wording::skill(line.cell.skill), 0, {}});
        SoundGroup& group = story.groups.back();
        group.answers += evidence.seen;
        group.rows.push_back({line.cell, wording::placeShort(line.cell.turns_on),
                              examplesOf(opened, line.cell, 2), saidOf(line), line.shielded,
                              evidence.right, evidence.seen,
                              likelyRange(evidence.right, evidence.seen), evidence.guess});
    }
    std::stable_sort(story.groups.begin(), story.groups.end(),
                     [](const auto& a, const auto& b) { return missedIn(a) > missedIn(b); });
    return story;
}

std::ptrdiff_t missedIn(const SoundGroup& group) {
    return std::count_if(group.rows.begin(), group.rows.end(),
                         [](const SoundRow& row) { return row.said == Said::missed; });
}

std::string takenSentence(const practice::SoundLine& line) {
    if (saidOf(line) == Said::shielded) return "Shielded: never called missed.";
    if (line.evidence.seen == 0)
        return line.heard.all() > 0 ? "Asked aloud only so far." : "Nothing asked here yet.";
    if (const auto* most = mostTaken(line.evidence))
        return wording::capital(most->first) + ", " + wording::times(most->second) + ".";
    if (line.evidence.right == line.evidence.seen) return "Right every time so far.";
    return "No wrong choice stands out.";
}

}  // namespace wrenlet::desk
