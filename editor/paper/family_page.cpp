#include <algorithm>

#include "editor/document/class_map.hpp"
#include "editor/look/asking.hpp"
#include "editor/look/wording.hpp"
#include "editor/paper/html.hpp"
#include "editor/paper/report_pages.hpp"

namespace wrenlet::desk::paper {

namespace {

using exercise::Position;
using exercise::Task;
using practice::SoundLine;
using practice::Standing;

constexpr std::size_t kMostLines = 4, kMostWords = 3;

/// What a line is about, for somebody who has never heard of phonemes.
std::string inPlainWords(const SoundLine& line) {
    const auto skill = exercise::skillFromId(line.cell.skill);
    const std::string sound = inPlainLetters(line.cell.turns_on.sound);
    switch (line.cell.turns_on.position) {
        case Position::first:
            return "the sound " + sound + " at the beginning of words";
        case Position::last:
            return "the sound " + sound + " at the end of words";
        case Position::middle:
            return "the sound " + sound + " in the middle of words";
        case Position::rime:
            return "words that rhyme";
        case Position::word_count:
            return "counting the words of a sentence";
        case Position::count:
            return skill && skill->unit == exercise::Unit::phoneme
                       ? "saying the sounds of a word one by one"
                       : "taking words apart into their beats";
        case Position::whole:
        case Position::first_part:
        case Position::last_part:
            return "putting words together and taking them apart";
        case Position::tune:
            return "hearing whether a sentence asks or tells";
        case Position::letter:
            break;
    }
    return "the letter " + line.cell.turns_on.sound.substr(line.cell.turns_on.sound.find(':') + 1);
}

/// Something to do in a minute, without anything but a voice.
std::string atHome(const SoundLine& line) {
    const std::string sound = inPlainLetters(line.cell.turns_on.sound);
    switch (line.cell.turns_on.position) {
        case Position::first:
            return "On the way home, find things that begin with " + sound +
                   ". Say the sound alone, short, without an \u201cuh\u201d after it.";
        case Position::last:
            return "Say a word and let your child say only how it ends. Words that end in " +
                   sound + " are the ones to find.";
        case Position::middle:
            return "Say three words, two of them with " + sound +
                   " in the middle. Which two go together?";
        case Position::rime:
            return "Say a word and look for one that rhymes, as silly as you like; a made-up "
                   "word counts.";
        case Position::word_count:
        case Position::tune:
            return "Say a short sentence; your child says it after you and lifts a finger for "
                   "each word.";
        case Position::count:
            return "Clap the names of people and things you see, a clap for each beat.";
        case Position::whole:
        case Position::first_part:
        case Position::last_part:
            return "Say a word made of two (rain and bow). Say it without one of them: what is "
                   "left?";
        case Position::letter:
            break;
    }
    return "Look for the letter on signs and boxes, and say its name and its sound.";
}

/// A thing said to be so, with words that it was asked of.
struct Thing {
    std::string what, home;
    std::vector<std::string> words;
};

std::vector<Thing> things(const OpenedClass& opened, const practice::ChildProgress& child,
                          Standing said) {
    std::vector<const SoundLine*> chosen;
    for (const SoundLine& line : child.lines)
        if (line.said == said) chosen.push_back(&line);
    std::stable_sort(chosen.begin(), chosen.end(), [&](const auto* a, const auto* b) {
        const double one = a->evidence.reading.p_missed, other = b->evidence.reading.p_missed;
        return said == Standing::missed ? one > other : one < other;
    });
    std::vector<Thing> things;
    for (const SoundLine* line : chosen) {
        const std::string what = inPlainWords(*line);
        auto thing = std::find_if(things.begin(), things.end(),
                                  [&](const Thing& one) { return one.what == what; });
        if (thing == things.end()) {
            if (things.size() == kMostLines) continue;
            thing = things.insert(thing, {what, atHome(*line), {}});
        }
        const Position position = line->cell.turns_on.position;
        const std::string word = examplesOf(opened, line->cell, 1);
        if (!word.empty() && thing->words.size() < kMostWords && position != Position::word_count &&
            position != Position::tune)
            thing->words.push_back(word);
    }
    return things;
}

std::vector<std::string> lines(const OpenedClass& opened, const practice::ChildProgress& child,
                               Standing said, bool home) {
    std::vector<std::string> texts;
    for (const Thing& thing : things(opened, child, said)) {
        std::string text = wording::capital(thing.what);
        if (!thing.words.empty()) text += " (" + wording::names(thing.words) + ")";
        texts.push_back(text + "." + (home ? " " + thing.home : ""));
    }
    return texts;
}

std::string listed(std::string_view head, const std::vector<std::string>& texts) {
    if (texts.empty()) return {};
    std::string html = element("h2", head) + "<ul>\n";
    for (const std::string& text : texts) html += element("li", text);
    return html + "</ul>\n";
}

}  // namespace

std::string familyPage(const OpenedClass& opened, std::size_t child, std::int64_t today) {
    const practice::ChildProgress& progress = opened.children[child];
    const std::string& name = progress.child.name;
    std::string body = element("h1", "What " + name + " practised");
    body += element("p", opened.list.title + ", " + wording::date(today), "soft");
    body += element("p", progress.answers == 0
                             ? name + " has not practised yet."
                             : name + " practised hearing the sounds of words: " +
                                   wording::counted(progress.answers, "answer") + " on " +
                                   wording::counted(progress.days, "day") + ", " +
                                   wording::minutes(progress.practised_ms) + " of answering.");
    const auto well = lines(opened, progress, Standing::steady, false);
    const auto growing = lines(opened, progress, Standing::growing, false);
    const auto now = lines(opened, progress, Standing::missed, true);
    body += listed("Goes well", well);
    body += listed("Growing", growing);
    body += listed("What we practise now, and what you could play at home", now);
    if (well.empty() && growing.empty() && now.empty() && progress.answers > 0)
        body += element("p", "There are too few answers yet to say more.");
    body += element("p",
                    "Hearing the sounds inside words comes before reading them. A minute here and "
                    "there, aloud and for fun, is plenty. How your family or your language says a "
                    "word is never wrong.");
    body += element("p",
                    std::string(kCaution) +
                        " Hearing, other languages at home, noise and a tired day all play a part. "
                        "If you are worried, speak to the teacher, who knows whom to ask.",
                    "caution");
    return page("What " + name + " practised", body);
}

}  // namespace wrenlet::desk::paper
