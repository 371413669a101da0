#include "editor/document/why.hpp"

#include <algorithm>

#include "content/practice/policy.hpp"
#include "content/practice/shield.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using practice::Response;
using practice::SoundLine;

std::string plain(const std::string& id) {
    const auto colon = id.find(':');
    return wording::word(colon == std::string::npos ? id : id.substr(colon + 1));
}

std::string tenths(double share) {
    return wording::figure(static_cast<std::int64_t>(share * 10 + .5));
}

std::string chances(double p) {
    return wording::figure(static_cast<std::int64_t>(p * 100 + .5)) + " in 100";
}

std::string reasonsFor(const SoundLine& line, std::size_t not_counted) {
    const practice::Evidence& evidence = line.evidence;
    std::string text = wording::figure(evidence.right) + " of " +
                       wording::counted(evidence.seen, "first answer") + " right; guessing gets " +
                       tenths(evidence.guess) + " of 10.";
    if (evidence.shielded > 0)
        text += " " + wording::counted(evidence.shielded, "wrong one", "wrong ones") +
                " along a shield: these say nothing.";
    if (not_counted > 0)
        text += " " + wording::counted(std::int64_t(not_counted), "more answer") +
                " given without listening: not counted.";
    if (line.heard.all() > 0) text += " By ear: " + wording::heard(line.heard) + ".";
    switch (saidOf(line)) {
        case Said::too_little:
            return text + " Under " + wording::figure(practice::kFewestTries) +
                   " answers, or with a wide range and under " +
                   wording::figure(practice::kEnoughTries) + ", nothing is said.";
        case Said::shielded:
            return text + " Without the shield it would look missed; so nothing is said.";
        default:
            break;
    }
    const practice::Model& model = practice::kModel;
    text += " By these, and by the answers to sounds and tasks beside it, the chance is " +
            chances(evidence.reading.p_missed) + " that less than " + tenths(model.known_from) +
            " of 10 are known";
    if (evidence.standing != line.said) return text + "; with a shield that is not called steady.";
    switch (line.said) {
        case practice::Standing::missed:
            return text + ": from " + chances(model.missed_from) + " on it is called missed.";
        case practice::Standing::steady:
            return text + ": up to " + chances(model.steady_to) + " it is called steady.";
        default:
            return text + ": between " + chances(model.steady_to) + " and " +
                   chances(model.missed_from) + " it is called growing.";
    }
}

std::string noteOf(const Response& response, const WhyAnswer& answer,
                   const std::vector<std::string>& shields) {
    if (!answer.is_counted) return "not counted: without listening";
    if (answer.is_right)
        return response.hearings > 2 ? "heard " + wording::times(response.hearings) : "";
    if (practice::isShielded(response.turns_on, response.means, shields))
        return "along a shield: says nothing";
    return response.means;
}

}  // namespace

Why whyOf(const OpenedClass& opened, std::size_t child, const practice::Cell& cell) {
    const practice::ChildProgress& progress = opened.children[child];
    Why why{cell, wording::capital(wording::place(cell.turns_on)), "", {}};
    const auto line = std::find_if(progress.lines.begin(), progress.lines.end(),
                                   [&](const SoundLine& one) { return one.cell == cell; });
    std::size_t not_counted = 0;
    for (const Response& response : opened.responses) {
        if (response.child != progress.child.id || !response.isEvidence() ||
            !(practice::cellOf(response) == cell))
            continue;
        WhyAnswer answer;
        answer.day = response.day;
        answer.asked = plain(response.asked);
        answer.chosen = plain(response.chosen);
        answer.is_right = response.isRight();
        answer.is_counted = !practice::isAmong(response, progress.not_counted);
        answer.note = noteOf(response, answer, progress.child.shields);
        not_counted += answer.is_counted ? 0 : 1;
        why.answers.push_back(std::move(answer));
    }
    for (const practice::Heard& heard : opened.heard) {
        if (heard.child != progress.child.id ||
            !(practice::Cell{heard.skill, heard.turns_on} == cell))
            continue;
        WhyAnswer answer;
        answer.day = heard.day;
        answer.asked = plain(heard.asked);
        answer.chosen = std::string(wording::heardAs(heard.mark));
        answer.is_right = heard.mark == practice::HeardAs::right;
        answer.is_heard = true;
        answer.note = heard.is_new_word ? "aloud, a word new here" : "aloud";
        why.answers.push_back(std::move(answer));
    }
    std::stable_sort(why.answers.begin(), why.answers.end(),
                     [](const WhyAnswer& a, const WhyAnswer& b) { return a.day < b.day; });
    std::reverse(why.answers.begin(), why.answers.end());
    if (line == progress.lines.end()) return why;
    why.heading += ": " + std::string(wordOf(saidOf(*line)));
    why.reasons = reasonsFor(*line, not_counted);
    return why;
}

}  // namespace wrenlet::desk
