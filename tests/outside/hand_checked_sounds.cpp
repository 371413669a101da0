// Lines whose words are of one syllable: onset and rime, rhymes, single sounds.
#include <algorithm>

#include "content/exercise/foils.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"
#include "tests/outside/hand_checked_asked.hpp"

namespace wrenlet::handchecked {

using namespace exercise;
using speech::Pronunciation;

namespace {

std::vector<std::string> with(std::vector<std::string> asked,
                              const std::vector<std::string>& more) {
    asked.insert(asked.end(), more.begin(), more.end());
    return asked;
}

std::string idOf(const Asked& out, const std::string& text) {
    const auto ids = idsOf(out.vocabulary, {text});
    return ids.empty() ? "" : ids.front();
}

const Word& wordOf(const Asked& out, const std::string& text) {
    return *out.vocabulary.word(idOf(out, text));
}

std::string rimeOf(const Word& word) {
    return speech::ipa(speech::rhymingPart(word.sounds));
}

/// Parts written in IPA, "k + æ + t"; a difference where a symbol is unknown.
std::vector<Part> soundParts(Asked& out, const std::string& written) {
    std::vector<Part> parts;
    for (const std::string& one : split(written, " + ")) {
        const auto sounds = soundsOf(one);
        expect(out, sounds.has_value(), one + " is no sound");
        if (sounds) parts.push_back(partOf(*sounds));
    }
    return parts;
}

std::vector<std::string> numbers() {
    return {"2", "3", "4", "5"};
}

// --- onset and rime, rhymes ---

void askOnsetSplit(const Line& line, const Words& words, Asked& out) {
    const bool blends = line.skill == "onset-rime.blend";
    const std::string subject = blends ? line.right : line.asked;
    out.vocabulary = words.vocabulary(with({subject}, line.choices));
    out.for_making = words.amongOthers(with({subject}, line.choices));
    const Word& word = wordOf(out, subject);
    const auto parted = speech::onsetAndRime(word.sounds);
    expect(out, parted && speech::ipa(parted->onset) == (line.isNone() ? "" : line.decides),
           "its onset is another one to the program");
    std::vector<Part> parts;
    if (line.isNone())
        parts = {Part{"part:", ""}, partOf(word.sounds)};
    else
        parts = soundParts(out, blends ? line.asked : line.right);
    if (blends)
        out.items = {itemOf(line, word.id, parts, idsOf(out.vocabulary, line.choices), word.id,
                            {line.decides, Position::first})};
    else
        out.items = {itemOf(line, word.id, parts, numbers(), "2", {"2", Position::count})};
    out.same_choices = !blends;
}

void askJudge(const Line& line, const Words& words, Asked& out) {
    const auto pair = split(line.asked, ", ");
    out.vocabulary = words.vocabulary(pair);
    const Word &first = wordOf(out, pair[0]), &second = wordOf(out, pair[1]);
    expect(out, rimeOf(first) == line.decides, "the rime is /" + rimeOf(first) + "/");
    for (const std::string& answer : line.choices)
        if (line.isNone() || answer == line.right)
            out.items.push_back(itemOf(line, first.id, {partOf(first), partOf(second)},
                                       line.choices, answer, {rimeOf(first), Position::rime}));
    // The makers ask as many pairs that rhyme as that do not, so the first word needs rhymes; two
    // for a pair that is near, which comes after a far one.
    const Pronunciation rime = speech::rhymingPart(first.sounds);
    const auto isNear = [&rime](const Word& word) {
        const int apart = speech::wordDistance(rime, speech::rhymingPart(word.sounds));
        return nearnessOf(apart) != Nearness::far;
    };
    auto texts = with(pair, words.rhymes(first, isNear(second) ? 2 : 1));
    if (isNear(second) || line.right != "no")
        for (const Word& word : words.amongOthers({}).words)
            if (!isNear(word)) texts.push_back(word.text);
    out.for_making = words.vocabulary(texts);
    out.same_choices = true;
}

void askRhymeSort(const Line& line, const Words& words, Asked& out) {
    const auto nests = split(line.asked, ", ");
    out.vocabulary = words.vocabulary(with(nests, line.choices));
    out.for_making = out.vocabulary;
    out.same_choices = true;
    const auto rimes = split(line.decides, ", ");
    const auto one = soundsOf(rimes.front()), other = soundsOf(rimes.back());
    if (one && other && speech::wordDistance(*one, *other) <= 2)
        out.left_out = "rimes as near as these are left for later";
    std::size_t sorted = 0;
    const auto filled = split(line.right, "; ");
    for (std::size_t i = 0; i < filled.size(); ++i) {
        const auto sides = split(filled[i], ": ");
        for (const std::string& card : split(sides.at(1), ", ")) {
            ++sorted;
            expect(out, rimeOf(wordOf(out, card)) == rimes.at(i), card + " has another rime");
            out.items.push_back(itemOf(line, idOf(out, card), {}, idsOf(out.vocabulary, nests),
                                       idOf(out, sides[0]), {rimes.at(i), Position::rime}));
        }
    }
    expect(out, sorted == line.choices.size(), "not every card is sorted once");
}

void askRhymePick(const Line& line, const Words& words, Asked& out) {
    const bool is_odd = line.skill == "onset-rime.odd-one-out";
    out.vocabulary = words.vocabulary(is_odd ? line.choices : with({line.asked}, line.choices));
    out.for_making = out.vocabulary;
    out.same_choices = true;
    auto ids = idsOf(out.vocabulary, line.choices);
    const std::string right = idOf(out, line.right);
    std::string of = is_odd ? ids.front() : idOf(out, line.asked);
    if (is_odd && of == right) of = ids.back();
    const std::string rime = rimeOf(*out.vocabulary.word(of));
    expect(out, rime == line.decides, "the rime is /" + rime + "/");
    std::vector<Part> parts;
    std::sort(ids.begin(), ids.end());
    if (is_odd)
        for (const std::string& id : ids) parts.push_back(partOf(*out.vocabulary.word(id)));
    else
        parts = {partOf(*out.vocabulary.word(of))};
    out.items = {itemOf(line, is_odd ? right : of, parts, ids, right, {rime, Position::rime})};
}

// --- single sounds ---

std::optional<std::size_t> placeIn(const Pronunciation& sounds, const std::string& place) {
    if (place == "first") return 0;
    if (place == "last") return sounds.size() - 1;
    if (place == "second") return 1;
    for (std::size_t i = 0; i < sounds.size(); ++i)
        if (speech::isVowel(sounds[i].phoneme)) return i;
    return std::nullopt;
}

std::string soundAt(const Word& word, const std::string& place) {
    const auto at = placeIn(word.sounds, place);
    return at ? std::string(speech::ipa(word.sounds[*at].phoneme)) : "";
}

Position positionIn(const Pronunciation& sounds, const std::string& place) {
    const std::size_t at = placeIn(sounds, place).value_or(0);
    return at == 0 ? Position::first : at + 1 == sounds.size() ? Position::last : Position::middle;
}

bool isNamedByStandard(const Word& word) {
    const Pronunciation& sounds = word.sounds;
    return speech::shape(sounds) == "CVC" && soundAt(word, "last") != "l" &&
           soundAt(word, "last") != "ɹ" && soundAt(word, "middle") != "ɝ";
}

void askIsolation(const Line& line, const Words& words, Asked& out) {
    out.vocabulary = words.vocabulary(with({line.asked}, line.choices));
    out.for_making = words.vocabulary(line.choices);
    out.same_choices = true;
    const Word& asked = wordOf(out, line.asked);
    expect(out, soundAt(asked, line.place) == line.decides,
           "its sound there is /" + soundAt(asked, line.place) + "/");
    for (const std::string& choice : line.choices)
        expect(out,
               (soundAt(wordOf(out, choice), line.place) == line.decides) == (choice == line.right),
               choice + " has /" + soundAt(wordOf(out, choice), line.place) + "/ there");
    const Position position =
        positionIn({{}, {}, {}}, line.place == "middle" ? "second" : line.place);
    const auto sound = soundsOf(line.decides);
    if (!sound) return;
    // Heard and picked; and sorted, the card asked about, to the right word or to each other one.
    const std::string right = idOf(out, line.right);
    out.items = {itemOf(line, partOf(*sound).clip, {partOf(*sound)},
                        idsOf(out.vocabulary, line.choices), right, {line.decides, position})};
    bool named = true;
    for (const std::string& choice : line.choices) named &= isNamedByStandard(wordOf(out, choice));
    if (!named || !isNamedByStandard(asked)) {
        // To the ear it is the same question.
        out.refused = {"is not a consonant, a vowel and a consonant", "ends in /l/ or /ɹ/"};
        if (!named) out.left_out = "RF.K.2.d names CVC words not ending in /l/ or /r/";
    }
    if (!out.left_out.empty()) return;
    for (const std::string& choice : line.choices)
        if (choice != line.right && isNamedByStandard(asked))
            out.sorts.push_back(itemOf(line, asked.id, {}, {right, idOf(out, choice)}, right,
                                       {line.decides, position}));
}

void askSoundsOf(const Line& line, const Words& words, Asked& out) {
    const bool blends = line.skill == "phoneme.blend";
    const std::string subject = blends ? line.right : line.asked;
    out.vocabulary = words.vocabulary(with({subject}, line.choices));
    out.for_making = words.amongOthers(with({subject}, line.choices));
    const Word& word = wordOf(out, subject);
    const auto parts = soundParts(out, blends ? line.asked : line.right);
    if (!blends) {
        const std::string count = std::to_string(parts.size());
        out.items = {itemOf(line, word.id, parts, numbers(), count, {count, Position::count})};
        return;
    }
    out.items = {itemOf(line, word.id, parts, idsOf(out.vocabulary, line.choices), word.id,
                        {parts.front().label, Position::first})};
    if (parts.size() < 3) out.left_out = "fewer than three sounds are not joined";
    if (line.asked.size() > 8 && line.asked.substr(line.asked.size() - 5) == "k + s")
        out.left_out = "RF.K.2.d leaves out words ending in /ks/";
}

void askChange(const Line& line, const Words& words, Asked& out) {
    std::vector<std::string> sides, sounds;
    for (const char* mark : {" + ", " - ", ": "})
        if (sides = split(line.asked, mark); sides.size() == 2) break;
    if (sides.size() != 2) return;
    sounds = split(sides[1], " > ");
    out.vocabulary = words.vocabulary(with({sides[0]}, line.choices));
    out.for_making = words.amongOthers(with({sides[0]}, line.choices));
    const Word& from = wordOf(out, sides[0]);
    std::vector<Part> parts{partOf(from)};
    for (const std::string& sound : sounds)
        if (const auto heard = soundsOf(sound)) parts.push_back(partOf(*heard));
    expect(out, parts.size() == sounds.size() + 1, "a sound is unknown");
    expect(out, sounds.back() == line.decides, "another sound decides");
    if (line.isNone()) {
        for (const Word& word : out.for_making.words)
            if (word.id != from.id)
                out.items.push_back(itemOf(line, from.id, parts, {word.id, from.id}, word.id,
                                           {line.decides, Position::middle}));
        return;
    }
    const Word& to = wordOf(out, line.right);
    const bool adds = line.skill == "phoneme.add";
    const Position position = positionIn((adds ? to : from).sounds, line.place);
    out.items = {itemOf(line, from.id, parts, idsOf(out.vocabulary, line.choices), to.id,
                        {line.decides, position})};
    const auto next = placeIn(from.sounds, line.place).value_or(0) + 1;
    if (line.place == "middle" && next < from.sounds.size() &&
        from.sounds[next].phoneme == speech::Phoneme::l)
        out.left_out = "a vowel before /l/ is coloured by it";
}

void askLength(const Line& line, const Words& words, Asked& out) {
    out.vocabulary = words.vocabulary({line.asked});
    out.for_making = out.vocabulary;
    out.same_choices = true;
    const Word& word = wordOf(out, line.asked);
    expect(out, soundAt(word, "middle") == line.decides, "its vowel is another one");
    for (const std::string& answer : line.choices)
        if (line.isNone() || answer == line.right)
            out.items.push_back(itemOf(line, word.id, {}, line.choices, answer,
                                       {line.decides, positionIn(word.sounds, "middle")}));
}

}  // namespace

void askOnsetRime(const Line& line, const Words& words, Asked& out) {
    const Task task = skillFromId(line.skill)->task;
    if (task == Task::blend || task == Task::segment) askOnsetSplit(line, words, out);
    if (task == Task::rhyme_judge) askJudge(line, words, out);
    if (task == Task::rhyme_sort) askRhymeSort(line, words, out);
    if (task == Task::odd_one_out || task == Task::rhyme_pick) askRhymePick(line, words, out);
}

void askPhoneme(const Line& line, const Words& words, Asked& out) {
    const Task task = skillFromId(line.skill)->task;
    if (task == Task::first || task == Task::last || task == Task::middle)
        askIsolation(line, words, out);
    if (task == Task::blend || task == Task::segment) askSoundsOf(line, words, out);
    if (task == Task::add || task == Task::remove || task == Task::substitute)
        askChange(line, words, out);
    if (task == Task::long_short) askLength(line, words, out);
}

}  // namespace wrenlet::handchecked
