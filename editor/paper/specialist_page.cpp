#include <algorithm>
#include <cstdio>

#include "content/speech/phoneme.hpp"
#include "editor/document/child_story.hpp"
#include "editor/document/dose.hpp"
#include "editor/ear/probe.hpp"
#include "editor/look/wording.hpp"
#include "editor/paper/html.hpp"
#include "editor/paper/report_pages.hpp"

namespace wrenlet::desk::paper {

namespace {

using practice::SoundLine;

constexpr std::size_t kMostRows = 20;  // what fits a page; the rest is in the CSV file

std::string share(double value) {
    char text[16];
    std::snprintf(text, sizeof text, "%.2f", value);
    return text;
}

/// What was taken most instead.
std::string foil(const practice::Evidence& evidence) {
    std::vector<std::pair<std::string, int>> taken(evidence.taken.begin(), evidence.taken.end());
    std::stable_sort(taken.begin(), taken.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    for (const auto& [means, times] : taken)
        if (!means.empty()) return means + ", " + wording::times(times);
    return {};
}

std::string row(const SoundLine& line) {
    const practice::Evidence& evidence = line.evidence;
    const practice::Reading& reading = evidence.reading;
    const auto skill = exercise::skillFromId(line.cell.skill);
    const std::string code(skill ? exercise::rowOf(*skill).standard : "");
    const Said said = saidOf(line);
    const std::string range = share(reading.low) + " to " + share(reading.high);
    return "<tr>" + element("td", wording::skill(line.cell.skill)) + element("td", code) +
           element("td", wording::place(line.cell.turns_on)) +
           element("td", std::to_string(evidence.right) + " of " + std::to_string(evidence.seen),
                   "number") +
           element("td", share(evidence.guess), "number") + "<td class=\"number\">" +
           rangeBar(reading.low, std::clamp(reading.middle, reading.low, reading.high),
                    reading.high, "share known, " + range) +
           " " + range + "</td>" + element("td", wordOf(said)) + element("td", foil(evidence)) +
           "</tr>\n";
}

/// Missed first, then growing, then what too little is known of, steady last.
int orderOf(const SoundLine& line) {
    switch (saidOf(line)) {
        case Said::missed:
            return 0;
        case Said::shielded:
            return 1;
        case Said::growing:
            return 2;
        case Said::steady:
            return 3;
        default:
            return 4;
    }
}

/// What the teacher heard when she asked aloud, and words that were new beside practised ones.
std::string aloudWords(const OpenedClass& opened, const practice::ChildProgress& child) {
    std::string text;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        practice::HeardCounts all;
        for (const practice::Heard& heard : opened.heard)
            if (heard.child == child.child.id && heard.skill == row.id && !heard.is_new_word)
                all.add(heard.mark);
        const Transfer transfer =
            transferOf(opened.responses, opened.heard, child.child.id, row.id);
        if (all.all() + transfer.new_words.all() == 0) continue;
        text += (text.empty() ? "" : "; ") + wording::skill(row.id) + ": ";
        if (all.all() > 0) text += wording::heard(all);
        if (transfer.new_words.all() > 0)
            text += (all.all() > 0 ? ", " : "") + std::string("words new to the class ") +
                    wording::heard(transfer.new_words) + " (practised words, all told, " +
                    std::to_string(transfer.practised_right) + " of " +
                    std::to_string(transfer.practised) + " right)";
    }
    return text;
}

}  // namespace

std::string specialistPage(const OpenedClass& opened, std::size_t child, std::int64_t today) {
    const practice::ChildProgress& progress = opened.children[child];
    std::string body = element("h1", progress.child.name + ": practice with the sounds of words");
    body += element(
        "p", opened.list.title + ", " + wording::date(today) + ". " + storyOf(opened, child).facts,
        "soft");
    const double hours = static_cast<double>(progress.practised_ms) / 3'600'000;
    body += element("p",
                    "Practised " + share(hours) +
                        " hours here; in the studies that Erbeli et al. (2024) pooled, effects "
                        "were largest near " +
                        share(kDoseMost).substr(0, 4) + " hours. That is a gauge and no limit.",
                    "soft");
    std::vector<const SoundLine*> lines;
    for (const SoundLine& line : progress.lines)
        if (line.evidence.seen > 0) lines.push_back(&line);
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto* a, const auto* b) { return orderOf(*a) < orderOf(*b); });
    if (!lines.empty()) {
        body += "<table>\n<thead><tr>";
        for (const char* head : {"Task", "Standard", "Turns on", "Right", "By guessing",
                                 "Share known, 80 % range", "Said", "Taken instead"})
            body += "<th scope=\"col\">" + escaped(head) + "</th>";
        body += "</tr></thead>\n<tbody>\n";
        for (std::size_t i = 0; i < std::min(kMostRows, lines.size()); ++i) body += row(*lines[i]);
        body += "</tbody></table>\n";
    }
    if (lines.size() > kMostRows)
        body += element("p",
                        wording::counted(std::int64_t(lines.size() - kMostRows), "more line") +
                            " in the CSV file; those that matter most stand here.",
                        "soft");
    if (const std::string aloud = aloudWords(opened, progress); !aloud.empty())
        body += element("p", "Asked aloud by the teacher. " + aloud + ".", "soft");
    body += element("p",
                    "Right: first tries alone. Share known and its range come from a Bayesian "
                    "model of the task and the sound, with guessing and slips taken out, and not "
                    "from the count alone. Missed: 80 % sure or more that less than .6 is known. "
                    "Shielded: an accent or a first language may not tell the two apart; never "
                    "called missed. Sounds in IPA. Standards: Common Core State Standards, "
                    "Reading: Foundational Skills (2010). The model was tuned on simulated "
                    "children, not normed on any group of children.",
                    "soft");
    body +=
        element("p",
                std::string(kCaution) +
                    " It rests on answers at a tablet in a classroom: hearing, language, noise "
                    "and attention affect it. A licensed professional's own assessment decides.",
                "caution");
    return page(progress.child.name + ": practice", body);
}

}  // namespace wrenlet::desk::paper
