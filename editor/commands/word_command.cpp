#include <nlohmann/json.hpp>
#include <optional>

#include "content/exercise/lint.hpp"
#include "content/speech/typed_word.hpp"
#include "content/speech/word_parts.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/known_words.hpp"

namespace wrenlet::desk {

namespace {

using Json = nlohmann::ordered_json;
using speech::Pronunciation;

constexpr const char* kUse = "wrenlet-desk word WORD... [--json]\n";

struct Warning {
    std::string code, why, way_out;
};

std::string inSlashes(const Pronunciation& sounds) {
    return "/" + speech::ipa(sounds) + "/";
}

std::string listed(const std::vector<std::string>& all, std::string_view between) {
    std::string text;
    for (const std::string& one : all) text += (text.empty() ? "" : std::string(between)) + one;
    return text;
}

struct Knowledge {
    KnownWords words;
    speech::BlockList blocked;
};

std::optional<Knowledge> knowledgeIn(const std::filesystem::path& assets, std::ostream& err) {
    Result<KnownWords> words = KnownWords::open(assets);
    Result<speech::BlockList> blocked = speech::BlockList::open(assets / "blocked.bin");
    for (const auto* problems : {&words.problems(), &blocked.problems()})
        for (const Problem& problem : *problems) err << sentence(problem) << "\n";
    if (!words.ok() || !blocked.ok()) return std::nullopt;
    return Knowledge{std::move(words.value()), std::move(blocked.value())};
}

/// What is to be said of the word itself; which picture it gets is a unit's matter.
void addLint(const KnownWord& word, const Knowledge& known, std::vector<Warning>& warnings) {
    const exercise::Vocabulary& classroom = known.words.classroom();
    const exercise::Word* listed = classroom.word(word.id);
    exercise::Word asked{word.text, word.text, word.sounds, {}, "any"};
    if (listed != nullptr) asked.compound = listed->compound;
    auto found = exercise::lintWord(asked, classroom, exercise::rulesWith(known.blocked));
    if (auto looks = known.words.looksCompound(word.text)) found.push_back(std::move(*looks));
    for (exercise::Lint& lint : found)
        warnings.push_back({std::move(lint.code), std::move(lint.why), std::move(lint.way_out)});
}

std::vector<Warning> warningsOf(const KnownWord& word, const Knowledge& known) {
    std::vector<Warning> warnings;
    if (word.confirm_by_ear)
        warnings.push_back({"confirm-by-ear",
                            word.source == speech::SaidBy::parts
                                ? "The dictionary lacks it; this is how its parts " +
                                      listed(word.compound, " and ") + " are said."
                                : "The dictionary lacks it; this is a guess from its letters.",
                            "Confirm by ear, or give its sounds in the unit (\"sounds\")."});
    if (!word.also.empty()) {
        std::vector<std::string> others;
        for (const Pronunciation& other : word.also) others.push_back(inSlashes(other));
        warnings.push_back({"said-in-several-ways", "It is also said " + listed(others, ", ") + ".",
                            "If you say it so, give its sounds in the unit (\"sounds\")."});
    }
    if (!word.other_senses.empty())
        warnings.push_back({"several-senses",
                            "The spelling also stands for " + listed(word.other_senses, ", ") + ".",
                            "Ask for the one you mean by that name, and let its picture tell."});
    addLint(word, known, warnings);
    return warnings;
}

/// The vowel of a one-syllable word that has sounds before and after it.
std::optional<speech::Sound> middleOf(const Pronunciation& sounds) {
    const auto parts = speech::onsetAndRime(sounds);
    if (!parts || parts->onset.empty() || parts->rime.size() < 2) return std::nullopt;
    return parts->rime.front();
}

Json phonemes(const Pronunciation& sounds) {
    Json list = Json::array();
    for (const speech::Sound& sound : sounds) list.push_back(speech::ipa(sound.phoneme));
    return list;
}

Json wordJson(const KnownWord& word, const Knowledge& known) {
    Json json;
    json["word"] = word.text;
    json["sense"] = word.sense.empty() ? Json() : Json(word.sense);
    json["ipa"] = phonemes(word.sounds);
    json["syllables"] = Json::array();
    for (const Pronunciation& syllable : word.syllables)
        json["syllables"].push_back(phonemes(syllable));
    const auto parts = speech::onsetAndRime(word.sounds);
    json["onset"] = parts ? phonemes(parts->onset) : Json();
    json["rime"] = parts ? phonemes(parts->rime) : Json();
    json["first"] = speech::ipa(word.sounds.front().phoneme);
    const auto middle = middleOf(word.sounds);
    json["middle"] = middle ? Json(speech::ipa(middle->phoneme)) : Json();
    json["last"] = speech::ipa(word.sounds.back().phoneme);
    json["compound"] = word.compound.empty() ? Json() : Json(word.compound);
    json["source"] = speech::saidByName(word.source);
    json["warnings"] = Json::array();
    for (const Warning& warning : warningsOf(word, known))
        json["warnings"].push_back(
            {{"code", warning.code}, {"why", warning.why}, {"way_out", warning.way_out}});
    return json;
}

void printWord(const KnownWord& word, const Knowledge& known, std::ostream& out) {
    out << word.text << (word.sense.empty() ? "" : " (" + word.sense + ")") << "  "
        << inSlashes(word.sounds) << "\n  syllables   ";
    for (std::size_t i = 0; i < word.syllables.size(); ++i)
        out << (i == 0 ? "" : " - ") << speech::ipa(word.syllables[i]);
    out << "\n";
    if (const auto parts = speech::onsetAndRime(word.sounds))
        out << "  onset       " << (parts->onset.empty() ? "none" : speech::ipa(parts->onset))
            << "\n  rime        " << speech::ipa(parts->rime) << "\n";
    out << "  sounds      first " << speech::ipa(word.sounds.front().phoneme);
    if (const auto middle = middleOf(word.sounds))
        out << ", middle " << speech::ipa(middle->phoneme);
    out << ", last " << speech::ipa(word.sounds.back().phoneme) << "\n";
    if (!word.compound.empty()) out << "  compound    " << listed(word.compound, " + ") << "\n";
    out << "  source      " << speech::saidByName(word.source) << "\n";
    for (const Warning& warning : warningsOf(word, known))
        out << "  " << warning.code << ": " << warning.why << " " << warning.way_out << "\n";
}

}  // namespace

int wordCommand(std::span<const std::string> args, Console console) {
    bool json = false;
    std::vector<std::string> asked;
    for (const std::string& arg : args) {
        if (arg == "--json") {
            json = true;
        } else if (arg.substr(0, 2) == "--") {
            console.err << "Not understood: " << speech::shownWord(arg) << "\nUse: " << kUse;
            return 2;
        } else {
            asked.push_back(arg);
        }
    }
    if (asked.empty()) {
        console.err << "Name a word.\nUse: " << kUse;
        return 2;
    }
    const std::optional<Knowledge> known = knowledgeIn(console.assets, console.err);
    if (!known) return 1;

    bool good = true;
    Json answers = Json::array();
    for (const std::string& one : asked) {
        const Result<KnownWord> word = known->words.find(one);
        for (const Problem& problem : word.problems()) console.err << sentence(problem) << "\n";
        good = good && word.ok();
        if (!word.ok()) continue;
        if (json)
            answers.push_back(wordJson(word.value(), *known));
        else
            printWord(word.value(), *known, console.out);
    }
    if (json && asked.size() > 1) console.out << answers.dump(2) << "\n";
    if (json && asked.size() == 1 && good) console.out << answers.front().dump(2) << "\n";
    return good ? 0 : 1;
}

}  // namespace wrenlet::desk
