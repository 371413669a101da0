#include "tests/outside/hand_checked_asked.hpp"

#include <algorithm>

#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/sentence.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/spelling.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::handchecked {

using namespace exercise;
using speech::Pronunciation;

Item itemOf(const Line& line, std::string subject, std::vector<Part> parts,
            const std::vector<std::string>& choices, const std::string& right, TurnsOn turns_on) {
    Item item;
    item.skill = *skillFromId(line.skill);
    item.subject = std::move(subject);
    item.parts = std::move(parts);
    item.turns_on = std::move(turns_on);
    std::vector<Choice> given;
    for (const std::string& id : choices) given.push_back({id, id == right ? "" : "wrong"});
    if (item.skill.task == Task::rhyme_judge || rowOf(item.skill).mechanic == Mechanic::split ||
        rowOf(item.skill).mechanic == Mechanic::count) {
        item.choices = std::move(given);
        for (std::size_t i = 0; i < item.choices.size(); ++i)
            if (item.choices[i].id == right) item.answer = static_cast<std::uint8_t>(i);
        item.id = itemId(item);
    } else {
        setChoices(item, std::move(given), right);
    }
    return item;
}

std::vector<std::string> idsOf(const Vocabulary& vocabulary,
                               const std::vector<std::string>& texts) {
    std::vector<std::string> ids;
    for (const std::string& text : texts)
        for (const Word& word : vocabulary.words)
            if (word.text == text) {
                ids.push_back(word.id);
                break;
            }
    return ids;
}

void expect(Asked& out, bool same, std::string what) {
    if (!same) out.differing.push_back(std::move(what));
}

const Item* madeOn(const std::vector<Item>& made, std::string_view subject) {
    const auto found = std::find_if(
        made.begin(), made.end(), [subject](const Item& item) { return item.subject == subject; });
    return found == made.end() ? nullptr : &*found;
}

namespace {

std::vector<std::string> numbers(std::size_t first, std::size_t last) {
    std::vector<std::string> all;
    for (; first <= last; ++first) all.push_back(std::to_string(first));
    return all;
}

/// The line's words: those asked, then those to choose from.
std::vector<std::string> with(std::vector<std::string> asked, const Line& line) {
    asked.insert(asked.end(), line.choices.begin(), line.choices.end());
    return asked;
}

void use(Asked& out, const Words& words, const std::vector<std::string>& texts) {
    out.vocabulary = words.vocabulary(texts);
    out.for_making = words.amongOthers(texts);
}

Position partAt(const Line& line) {
    return line.place == "first" ? Position::first_part : Position::last_part;
}

std::vector<Part> wordParts(const Vocabulary& vocabulary, const std::vector<std::string>& texts) {
    std::vector<Part> parts;
    for (const std::string& id : idsOf(vocabulary, texts))
        parts.push_back(partOf(*vocabulary.word(id)));
    return parts;
}

/// Parts of a compound; of a spelling that is several words, the one that stands in it.
std::vector<Part> partsOf(const Asked& out, const std::string& whole,
                          const std::vector<std::string>& texts) {
    std::vector<Part> parts = wordParts(out.vocabulary, texts);
    const Word* word = out.vocabulary.word(whole);
    for (std::size_t i = 0; word != nullptr && i < parts.size(); ++i)
        for (const std::string& id : word->compound)
            if (const Word* part = out.vocabulary.word(id); part && part->text == texts[i])
                parts[i] = partOf(*part);
    return parts;
}

/// The word that the line starts from, and what is done to it: "cowboy - boy", "sun + set",
/// "snowman: man > ball".
struct ChangeLine {
    std::string from;
    std::vector<std::string> parts;
};

ChangeLine changeIn(const Line& line) {
    for (const char* mark : {" + ", " - ", ": "})
        if (auto sides = split(line.asked, mark); sides.size() == 2)
            return {sides[0], split(sides[1], " > ")};
    return {};
}

std::string right(const Asked& out, const Line& line) {
    const auto ids = idsOf(out.vocabulary, {line.right});
    return ids.empty() ? "" : ids.front();
}

}  // namespace

void askSentence(const Line& line, Asked& out) {
    const auto spoken = spokenWords(line.asked, "table");
    expect(out, spoken.ok(), "it is not a sentence to the program");
    if (!spoken.ok()) return;
    out.vocabulary.sentences = {{"s-1", line.asked, spoken.value()}};
    out.for_making = out.vocabulary;
    const Skill skill = *skillFromId(line.skill);
    if (skill.task == Task::count) {
        std::vector<Part> parts;
        for (const SpokenWord& word : spoken.value())
            parts.push_back({spokenClip(word.text), word.text});
        expect(out, std::to_string(parts.size()) == line.right,
               "the program hears " + std::to_string(parts.size()) + " words");
        // From 1 on, for a token is laid for each word: the line's numbers are among these.
        out.items = {itemOf(line, "s-1", parts, numbers(1, kMostCounted), line.right,
                            {line.right, Position::word_count})};
        out.same_choices = true;
        for (const std::string& choice : line.choices)
            expect(out, choice.size() == 1 && choice[0] >= '1' && choice[0] <= '8',
                   choice + " is not offered");
    }
    if (skill.task == Task::tune) {
        for (const std::string& answer : line.choices)
            if (line.isNone() || answer == line.right)
                out.items.push_back(
                    itemOf(line, "s-1", {}, line.choices, answer, {answer, Position::tune}));
        out.same_choices = true;
        const bool asks = line.asked.back() == '?';
        const SentenceKind kind = !asks           ? SentenceKind::telling
                                  : line.isNone() ? SentenceKind::wh
                                                  : SentenceKind::yes_no;
        expect(out, line.place == (rises(kind) ? "rises" : "falls"), "the voice goes elsewhere");
    }
}

void askCompound(const Line& line, const Words& words, Asked& out) {
    const Skill skill = *skillFromId(line.skill);
    if (skill.task == Task::blend) {
        const auto parts = split(line.asked, " + ");
        use(out, words, with(parts, line));
        out.items = {itemOf(line, right(out, line), partsOf(out, right(out, line), parts),
                            idsOf(out.vocabulary, line.choices), right(out, line),
                            {parts.front(), Position::whole})};
        return;
    }
    if (skill.task == Task::segment) {
        const auto parts = split(line.right, " + ");
        use(out, words, with({line.asked}, line));
        const auto subject = idsOf(out.vocabulary, {line.asked});
        if (!subject.empty())
            out.items = {itemOf(line, subject.front(), wordParts(out.vocabulary, parts),
                                numbers(2, 5), std::to_string(parts.size()),
                                {std::to_string(parts.size()), Position::count})};
        out.same_choices = true;
        return;
    }
    const ChangeLine change = changeIn(line);
    std::vector<std::string> heard = {change.from};
    heard.insert(heard.end(), change.parts.begin(), change.parts.end());
    use(out, words, with(heard, line));
    out.items = {itemOf(line, idsOf(out.vocabulary, heard).front(),
                        wordParts(out.vocabulary, heard), idsOf(out.vocabulary, line.choices),
                        right(out, line), {change.parts.back(), partAt(line)})};
}

namespace {

/// Says it when a syllable as spelled in the table cannot be said as the program parts it.
void expectSpelled(Asked& out, const std::string& spelled, const Pronunciation& sounds) {
    const auto letters = speech::alignSpelling(spelled, sounds);
    const bool is_said =
        letters && std::none_of(letters->begin(), letters->end(), [](const speech::Spelled& one) {
            return one.sounds.empty() && one.letters != "e";
        });
    expect(out, is_said, spelled + " is /" + speech::ipa(sounds) + "/ to the program");
}

/// What is left of `whole` beside `rest`, at its beginning or its end. A consonant that belongs to
/// both syllables ("puppet") is heard in both.
Pronunciation partBeside(const Pronunciation& whole, const Pronunciation& rest, bool first) {
    if (rest.size() >= whole.size()) return {};
    const auto size = static_cast<std::ptrdiff_t>(whole.size() - rest.size());
    if (first) return Pronunciation(whole.begin(), whole.begin() + size);
    const bool shared = speech::isAmbisyllabic(whole);
    return Pronunciation(whole.end() - size - (shared ? 1 : 0), whole.end());
}

void askSyllableChange(const Line& line, const Words& words, Asked& out) {
    const ChangeLine change = changeIn(line);
    use(out, words, with({change.from}, line));
    const Word& from = *out.vocabulary.word(idsOf(out.vocabulary, {change.from}).front());
    const Word* to = out.vocabulary.word(right(out, line));
    if (to == nullptr) return;
    const bool adds = skillFromId(line.skill)->task == Task::add;
    const Word &longer = adds ? *to : from, &shorter = adds ? from : *to;
    const Pronunciation part = partBeside(longer.sounds, shorter.sounds, line.place == "first");
    expectSpelled(out, change.parts.front(), part);
    out.items = {itemOf(line, from.id, {partOf(from), partOf(part)},
                        idsOf(out.vocabulary, line.choices), to->id,
                        {speech::ipa(part), partAt(line)})};
}

}  // namespace

void askSyllable(const Line& line, const Words& words, Asked& out) {
    const Skill skill = *skillFromId(line.skill);
    if (skill.task == Task::add || skill.task == Task::remove)
        return askSyllableChange(line, words, out);
    const std::string subject = skill.task == Task::blend ? line.right : line.asked;
    use(out, words,
        skill.task == Task::blend ? with({subject}, line) : std::vector<std::string>{subject});
    const Word& word = *out.vocabulary.word(idsOf(out.vocabulary, {subject}).front());
    std::vector<Part> parts;
    for (const Pronunciation& syllable : speech::syllables(word.sounds))
        parts.push_back(partOf(syllable));
    const std::string count = std::to_string(parts.size());
    expect(out, !speech::countVaries(word.sounds), "its count varies to the program");
    if (skill.task == Task::count) {
        expect(out, count == line.right, "the program counts " + count);
        out.items = {
            itemOf(line, word.id, {}, line.choices, line.right, {line.right, Position::count})};
        // A compound is counted part by part; how many there are is the same.
        const auto made = makeItems(out.for_making, skill);
        if (const Item* item = madeOn(made, word.id)) out.items.front().parts = item->parts;
        out.same_choices = true;
        return;
    }
    const auto spelled = split(skill.task == Task::blend ? line.asked : line.right, " + ");
    expect(out, spelled.size() == parts.size(), "the program counts " + count);
    if (skill.task == Task::segment) {
        out.same_choices = true;
        if (spelled.size() < 2) {
            out.left_out = "one syllable is nothing to part";
            out.refused = {"its choices are not 2", "its answer is not"};
        }
        out.items = {itemOf(line, word.id, parts, numbers(spelled.size() < 2 ? 1 : 2, 5), count,
                            {count, Position::count})};
        return;
    }
    for (std::size_t i = 0; i < std::min(spelled.size(), parts.size()); ++i)
        expectSpelled(out, spelled[i], speech::syllables(word.sounds)[i]);
    out.items = {itemOf(line, word.id, parts, idsOf(out.vocabulary, line.choices), word.id,
                        {parts.front().label, Position::whole})};
}

Asked asked(const Line& line, const Words& words) {
    Asked out;
    const auto skill = skillFromId(line.skill);
    if (!skill) {
        out.differing.push_back("no skill is called " + line.skill);
        return out;
    }
    switch (skill->unit) {
        case Unit::sentence:
            askSentence(line, out);
            break;
        case Unit::compound:
            askCompound(line, words, out);
            break;
        case Unit::syllable:
            askSyllable(line, words, out);
            break;
        case Unit::onset_rime:
            askOnsetRime(line, words, out);
            break;
        case Unit::phoneme:
            askPhoneme(line, words, out);
            break;
        case Unit::letter:
            askLetter(line, words, out);
            break;
    }
    expect(out, !out.items.empty(), "the line is not understood");
    return out;
}

}  // namespace wrenlet::handchecked
