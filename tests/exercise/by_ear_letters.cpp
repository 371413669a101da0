// Letters and sounds by a table of our own: what a beginner's letters say, from common practice.
#include <algorithm>
#include <map>
#include <set>

#include "tests/exercise/by_ear.hpp"

namespace wrenlet::byear {

using namespace exercise;

namespace {

/// As a class is taught them first; after the bar what a child of that class also reads them as
/// (is, cage, fly), so that it can be no wrong choice for it.
const std::map<std::string, std::set<std::string>>& sounds() {
    static const std::map<std::string, std::set<std::string>> kSounds = {
        {"a", {"æ", "eɪ"}}, {"b", {"b"}},  {"c", {"k", "s"}},  {"d", {"d"}},
        {"e", {"ɛ", "i"}},  {"f", {"f"}},  {"g", {"ɡ", "dʒ"}}, {"h", {"h"}},
        {"i", {"ɪ", "aɪ"}}, {"j", {"dʒ"}}, {"k", {"k"}},       {"l", {"l"}},
        {"m", {"m"}},       {"n", {"n"}},  {"o", {"ɑ", "oʊ"}}, {"p", {"p"}},
        {"q", {"kw"}},      {"r", {"ɹ"}},  {"s", {"s", "z"}},  {"t", {"t"}},
        {"u", {"ʌ", "ju"}}, {"v", {"v"}},  {"w", {"w"}},       {"x", {"ks", "z"}},
        {"y", {"j", "aɪ"}}, {"z", {"z"}},  {"sh", {"ʃ"}},      {"ch", {"tʃ"}},
        {"th", {"θ", "ð"}}, {"ph", {"f"}}, {"wh", {"w"}},      {"ng", {"ŋ"}},
        {"ck", {"k"}}};
    return kSounds;
}

std::string afterColon(const std::string& id) {
    return id.substr(id.find(':') + 1);
}

bool says(const std::string& letter, const std::string& sound) {
    const auto found = sounds().find(letter);
    return found != sounds().end() && found->second.count(sound) > 0;
}

std::string heardAs(Ear ear, const std::string& sound) {
    speech::Pronunciation said;
    for (const std::string& symbol : symbols(sound)) said.push_back({*speech::fromIpa(symbol)});
    std::string heard;
    for (const std::string& symbol : symbols(ear(said))) heard += symbol;
    return heard;
}

/// Whether one of the letter's sounds, said alone, is heard as that one is.
bool saysTo(Ear ear, const std::string& letter, const std::string& sound) {
    const auto found = sounds().find(letter);
    return found != sounds().end() &&
           std::any_of(found->second.begin(), found->second.end(), [&](const std::string& own) {
               return heardAs(ear, own) == heardAs(ear, sound);
           });
}

}  // namespace

bool isRightLetter(const Item& item, const Vocabulary& vocabulary, Ear ear, std::size_t i) {
    const std::string chosen = afterColon(item.choices[i].id);
    const auto heard = [&item](std::size_t part) { return afterColon(item.parts.at(part).clip); };
    switch (item.skill.task) {
        case Task::name:
            return heard(0) == chosen;
        case Task::sound:
            return saysTo(ear, afterColon(item.subject), chosen);
        case Task::for_sound:
            return saysTo(ear, chosen, heard(0));
        case Task::both_sounds:
            return saysTo(ear, chosen, heard(0)) && saysTo(ear, chosen, heard(1));
        case Task::digraph: {
            const Word* word = vocabulary.word(item.subject);
            if (word == nullptr || word->text.size() < chosen.size()) return false;
            const bool first = item.turns_on.position == Position::first;
            const auto said = symbols(ear(word->sounds));
            const std::string at = first ? word->text.substr(0, chosen.size())
                                         : word->text.substr(word->text.size() - chosen.size());
            return at == chosen && says(chosen, first ? said.front() : said.back()) &&
                   heard(1) == (first ? said.front() : said.back());
        }
        default:
            return false;
    }
}

}  // namespace wrenlet::byear
