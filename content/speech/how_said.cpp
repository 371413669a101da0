#include "content/speech/how_said.hpp"

#include <algorithm>

#include "content/speech/compound.hpp"
#include "content/speech/repairs.hpp"
#include "content/speech/typed_word.hpp"

namespace wrenlet::speech {

namespace {

bool isRepaired(std::string_view word) {
    const auto table = repairTable();
    return std::any_of(table.begin(), table.end(),
                       [word](const Repair& repair) { return repair.word == word; });
}

}  // namespace

std::string_view saidByName(SaidBy source) {
    switch (source) {
        case SaidBy::dictionary:
            return "dictionary";
        case SaidBy::repaired:
            return "repaired";
        case SaidBy::parts:
            return "parts";
        default:
            return "rules";
    }
}

HowSaid howSaid(std::string_view word, const Lexicon& lexicon, const LetterToSound* rules) {
    HowSaid said;
    const Result<std::string> typed = typedWord(word);
    if (!typed.ok()) return said;
    said.pronunciations = lexicon.lookUp(typed.value());
    if (!said.pronunciations.empty()) {
        said.source = isRepaired(typed.value()) ? SaidBy::repaired : SaidBy::dictionary;
        said.confirm_by_ear = false;
        return said;
    }
    const auto splits = compoundParts(
        typed.value(), [&lexicon](std::string_view part) { return lexicon.lookUp(part); });
    if (!splits.empty()) {
        said.source = SaidBy::parts;
        said.pronunciations.push_back(splits.front().said);
        said.parts = splits.front().parts;
        return said;
    }
    Pronunciation guess = rules != nullptr ? rules->guess(typed.value()) : Pronunciation{};
    if (!guess.empty()) said.pronunciations.push_back(std::move(guess));
    return said;
}

}  // namespace wrenlet::speech
