#include <nlohmann/json.hpp>

#include "content/practice/progress.hpp"

namespace wrenlet::practice {

namespace {

using nlohmann::ordered_json;

constexpr const char* kCaution =
    "Practice information, not a diagnosis or a screening. Hearing, language and noise affect it; "
    "a "
    "speech-language pathologist or the school's own process decides.";

ordered_json soundJson(const SoundLine& line) {
    const Evidence& evidence = line.evidence;
    ordered_json taken = ordered_json::array();
    for (const auto& [means, times] : evidence.taken)
        taken.push_back({{"means", means}, {"times", times}});
    return {{"skill", line.cell.skill},
            {"sound", line.cell.turns_on.sound},
            {"position", exercise::positionId(line.cell.turns_on.position)},
            {"said", standingWord(line.said)},
            {"shielded", line.shielded},
            {"seen", evidence.seen},
            {"right_first_time", evidence.right},
            {"by_guessing", evidence.guess},
            {"p_missed", evidence.reading.p_missed},
            {"known_low", evidence.reading.low},
            {"known", evidence.reading.middle},
            {"known_high", evidence.reading.high},
            {"foils_taken", std::move(taken)},
            {"last_day", evidence.last_day}};
}

ordered_json childJson(const ChildProgress& child) {
    ordered_json sounds = ordered_json::array();
    for (const SoundLine& line : child.lines) sounds.push_back(soundJson(line));
    ordered_json not_counted = ordered_json::array();
    for (const auto& [day, answers] : answersByDay(child.not_counted))
        not_counted.push_back({{"day", day}, {"answers", answers}});
    return {{"id", child.child.id},
            {"name", child.child.name},
            {"shields", child.child.shields},
            {"answers", child.answers},
            {"days", child.days},
            {"practised_ms", child.practised_ms},
            {"not_counted", std::move(not_counted)},
            {"sounds", std::move(sounds)}};
}

}  // namespace

std::string progressJson(const pack::ClassList& list, std::span<const ChildProgress> children,
                         std::span<const Problem> problems) {
    ordered_json root{{"class", list.title}, {"caution", kCaution}};
    root["children"] = ordered_json::array();
    for (const ChildProgress& child : children) root["children"].push_back(childJson(child));
    root["problems"] = ordered_json::array();
    for (const Problem& problem : problems)
        root["problems"].push_back(
            {{"where", problem.where}, {"what", problem.what}, {"way_out", problem.way_out}});
    // names come from files: what is not UTF-8 is replaced, never thrown over
    return root.dump(2, ' ', false, ordered_json::error_handler_t::replace);
}

}  // namespace wrenlet::practice
