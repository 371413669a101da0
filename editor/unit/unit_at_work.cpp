#include "editor/unit/unit_at_work.hpp"

#include <algorithm>
#include <set>

#include "content/pack/pack_json.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

std::vector<std::string> texts(const speech::Pronunciation& sounds) {
    std::vector<std::string> all;
    for (const speech::Sound& sound : sounds) all.push_back(pack::soundText(sound));
    return all;
}

std::size_t placeOf(const std::vector<pack::UnitWord>& words, const std::string& id) {
    const auto found = std::find_if(words.begin(), words.end(),
                                    [&](const auto& word) { return pack::wordId(word) == id; });
    return static_cast<std::size_t>(found - words.begin());
}

std::string newSentenceId(std::set<std::string>& taken) {
    for (std::size_t number = 1;; ++number) {
        std::string id = "s-" + std::to_string(number);
        if (taken.insert(id).second) return id;
    }
}

std::string added(std::size_t words, std::size_t sentences, const std::string& only) {
    if (words + sentences == 1) return only + " added.";
    std::string said;
    if (words > 0) said = wording::counted(std::int64_t(words), "word");
    if (sentences > 0)
        said += (words > 0 ? " and " : "") + wording::counted(std::int64_t(sentences), "sentence");
    return said + " added.";
}

}  // namespace

void complete(pack::UnitWord& word, const KnownWords& known) {
    const Result<KnownWord> found = known.find(pack::wordId(word));
    const exercise::Word* listed = found.ok() ? known.classroom().word(found.value().id) : nullptr;
    if (listed == nullptr) return;
    word.compound = listed->compound;
    word.picture = listed->picture;
    word.sounds = texts(listed->sounds);
}

const pack::UnitWord* UnitAtWork::word(std::string_view id) const {
    for (const pack::UnitWord& word : unit_.words)
        if (pack::wordId(word) == id) return &word;
    return nullptr;
}

void UnitAtWork::act(std::string said, std::vector<Edit> edits) {
    history_.act(unit_, {std::move(said), std::move(edits)});
}

template <class Change>
void UnitAtWork::changeWord(const std::string& id, std::string said, Change change) {
    const std::size_t at = placeOf(unit_.words, id);
    if (at == unit_.words.size()) return;
    pack::UnitWord word = unit_.words[at];
    change(word);
    if (word == unit_.words[at]) return;
    act(std::move(said), {PutWord{id, std::move(word), at}});
}

std::vector<Problem> UnitAtWork::add(std::string_view text, std::string_view where,
                                     const KnownWords& known, std::string* first) {
    Typed typed = readTyped(text, where);
    std::set<std::string> words, sentences, sentence_ids;
    for (const pack::UnitWord& word : unit_.words) words.insert(pack::wordId(word));
    for (const pack::UnitSentence& sentence : unit_.sentences) {
        sentences.insert(sentence.text);
        sentence_ids.insert(sentence.id);
    }
    std::vector<Edit> edits;
    std::string only;
    std::size_t added_words = 0, already = 0, too_many = 0;
    for (pack::UnitWord& word : typed.words) {
        if (unit_.words.size() + added_words >= pack::kMostUnitWords) {
            ++too_many;
            continue;
        }
        const std::string id = pack::wordId(word);
        if (!words.insert(id).second) {
            ++already;
            continue;
        }
        complete(word, known);
        if (added_words == 0 && first != nullptr) *first = id;
        only = word.text;
        edits.push_back(PutWord{"", std::move(word), unit_.words.size() + added_words++});
    }
    const std::size_t from = unit_.sentences.size();
    std::size_t added_sentences = 0;
    for (pack::UnitSentence& sentence : typed.sentences) {
        if (!sentences.insert(sentence.text).second) {
            ++already;
            continue;
        }
        only = "\u201c" + sentence.text + "\u201d";
        sentence.id = newSentenceId(sentence_ids);
        edits.push_back(PutSentence{"", std::move(sentence), from + added_sentences++});
    }
    if (too_many > 0)
        typed.problems.push_back({std::string(where),
                                  "A unit holds 2,000 words; " +
                                      wording::figure(std::int64_t(too_many)) +
                                      " more did not go in.",
                                  "Make a second unit of them.", Problem::Weight::warning});
    if (already > 0 && edits.empty())
        typed.problems.push_back({std::string(where),
                                  already == 1 ? "That is in the unit already."
                                               : "All of these are in the unit already.",
                                  "", Problem::Weight::warning});
    act(added(added_words, added_sentences, only), std::move(edits));
    return std::move(typed.problems);
}

void UnitAtWork::addListed(const std::vector<std::string>& ids, const KnownWords& known) {
    std::set<std::string> sentence_ids, sentences;
    for (const pack::UnitSentence& sentence : unit_.sentences) {
        sentence_ids.insert(sentence.id);
        sentences.insert(sentence.text);
    }
    std::vector<Edit> edits;
    std::string only;
    std::set<std::string> taken;
    std::size_t words = 0, new_sentences = 0;
    for (const std::string& id : ids) {
        if (const exercise::Sentence* sentence = known.classroom().sentence(id)) {
            if (!sentences.insert(sentence->text).second) continue;
            only = "\u201c" + sentence->text + "\u201d";
            const std::size_t at = unit_.sentences.size() + new_sentences++;
            edits.push_back(PutSentence{
                "", pack::UnitSentence{newSentenceId(sentence_ids), sentence->text, 0}, at});
            continue;
        }
        const exercise::Word* listed = known.classroom().word(id);
        const bool is_new = listed != nullptr && word(id) == nullptr && taken.insert(id).second;
        if (!is_new || unit_.words.size() + words >= pack::kMostUnitWords) continue;
        pack::UnitWord fresh;
        fresh.text = listed->text;
        const std::size_t tilde = id.find('~');
        if (tilde != std::string::npos) fresh.sense = id.substr(tilde + 1);
        complete(fresh, known);
        only = fresh.text;
        edits.push_back(PutWord{"", std::move(fresh), unit_.words.size() + words++});
    }
    act(added(words, new_sentences, only), std::move(edits));
}

void UnitAtWork::removeWord(const std::string& id) {
    if (word(id) != nullptr) act(wording::word(id) + " taken out.", {PutWord{id, {}, 0}});
}

void UnitAtWork::removeSentence(const std::string& id) {
    for (const pack::UnitSentence& sentence : unit_.sentences)
        if (sentence.id == id)
            return act("\u201c" + sentence.text + "\u201d taken out.", {PutSentence{id, {}, 0}});
}

bool UnitAtWork::respell(const std::string& id, std::string_view text, const KnownWords& known) {
    const Typed typed = readTyped(text, "");
    if (typed.words.size() != 1 || !typed.sentences.empty()) return false;
    pack::UnitWord fresh = typed.words.front();
    if (pack::wordId(fresh) != id && word(pack::wordId(fresh)) != nullptr) return false;
    complete(fresh, known);
    changeWord(id, wording::word(id) + " changed to " + fresh.text + ".",
               [&](pack::UnitWord& word) { word = fresh; });
    return true;
}

void UnitAtWork::chooseSounds(const std::string& id, const speech::Pronunciation& sounds) {
    changeWord(
        id, wording::word(id) + " is said /" + speech::ipa(sounds) + "/.",
        [&](pack::UnitWord& word) {
            word.sounds = texts(sounds);
            if (std::find(word.kept.begin(), word.kept.end(), kSaidSeveralWays) == word.kept.end())
                word.kept.emplace_back(kSaidSeveralWays);
        });
}

bool UnitAtWork::chooseSense(const std::string& id, const std::string& listed,
                             const KnownWords& known) {
    const exercise::Word* chosen = known.classroom().word(listed);
    const std::size_t tilde = listed.find('~');
    const std::string sense = tilde == std::string::npos ? "" : listed.substr(tilde + 1);
    if (chosen == nullptr || (listed != id && word(listed) != nullptr)) return false;
    changeWord(id, "The sense of " + wording::word(id) + " chosen.", [&](pack::UnitWord& word) {
        word.sense = sense;
        word.sounds = texts(chosen->sounds);
        word.picture = chosen->picture;
        word.compound = chosen->compound;
        if (std::find(word.kept.begin(), word.kept.end(), kSeveralSenses) == word.kept.end())
            word.kept.emplace_back(kSeveralSenses);
    });
    return true;
}

void UnitAtWork::choosePicture(const std::string& id, const std::string& picture) {
    changeWord(id,
               picture.empty() ? wording::word(id) + " goes without a picture."
                               : "Picture of " + wording::word(id) + " changed.",
               [&](pack::UnitWord& word) { word.picture = picture; });
}

void UnitAtWork::chooseParts(const std::string& id, const std::vector<std::string>& parts) {
    changeWord(id, "The parts of " + wording::word(id) + " given.",
               [&](pack::UnitWord& word) { word.compound = parts; });
}

void UnitAtWork::keepWarning(const std::string& id, const std::string& code) {
    changeWord(id, wording::capital(wording::word(id)) + " kept so.", [&](pack::UnitWord& word) {
        if (std::find(word.kept.begin(), word.kept.end(), code) == word.kept.end())
            word.kept.push_back(code);
    });
}

void UnitAtWork::leaveOutOf(const std::string& id, const std::vector<std::string>& skills,
                            std::string_view group, std::string_view code) {
    changeWord(id, wording::word(id) + " left out of " + std::string(group) + ".",
               [&](pack::UnitWord& word) {
                   for (const std::string& skill : skills)
                       if (std::find(word.not_for.begin(), word.not_for.end(), skill) ==
                           word.not_for.end())
                           word.not_for.push_back(skill);
                   if (!code.empty() &&
                       std::find(word.kept.begin(), word.kept.end(), code) == word.kept.end())
                       word.kept.emplace_back(code);
               });
}

void UnitAtWork::askAgain(const std::string& id, const std::vector<std::string>& skills,
                          std::string_view group) {
    changeWord(id, wording::word(id) + " asked again in " + std::string(group) + ".",
               [&](pack::UnitWord& word) {
                   for (const std::string& skill : skills)
                       word.not_for.erase(
                           std::remove(word.not_for.begin(), word.not_for.end(), skill),
                           word.not_for.end());
               });
}

void UnitAtWork::turnSkill(const std::string& skill, bool off) {
    act(wording::skill(skill) + (off ? " is off." : " is on."), {PutSkillOff{skill, off}});
}

void UnitAtWork::turnItem(const std::string& item, bool off) {
    act(off ? "One question left out." : "One question asked again.", {PutItemOff{item, off}});
}

void UnitAtWork::turnFocus(const std::string& sound, bool on) {
    act("/" + sound + "/" +
            (on ? " is one of the unit's sounds." : " is none of the unit's sounds."),
        {PutFocusSound{sound, on}});
}

void UnitAtWork::rename(const std::string& title) {
    const std::string tidy = pack::tidied(title);
    if (tidy.empty() || tidy == unit_.title || !pack::isLine(tidy, 60)) return;
    act("Unit named " + tidy + ".", {PutTitle{tidy}});
}

void UnitAtWork::keepRecording(const pack::UnitRecording& recording, std::string_view text) {
    act("\u201c" + std::string(text) + "\u201d recorded.",
        {PutRecording{recording.clip, recording}});
}

void UnitAtWork::dropRecording(const std::string& clip, std::string_view said) {
    act("The demo voice says \u201c" + std::string(said) + "\u201d again.",
        {PutRecording{clip, std::nullopt}});
}

}  // namespace wrenlet::desk
