#include "content/pack/unit.hpp"

#include <set>

#include "content/pack/json_reader.hpp"
#include "content/pack/text_rules.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::string_view kFormat = "wrenlet unit";
constexpr int kVersion = 1;
constexpr std::size_t kMostWords = 2'000;
constexpr std::size_t kMostSounds = 40;

/// Text that whyNoWord or whyNoSentence judges, so that the problem says what is wrong with it.
std::string freeText(const Json& json, const std::string& place, JsonReader& reader) {
    const auto it = json.find("text");
    if (it == json.end() || !it->is_string()) return reader.text(json, "text", place, 200, true);
    return tidied(it->get_ref<const std::string&>());
}

UnitWord readWord(const Json& json, const std::string& place, JsonReader& reader) {
    UnitWord word;
    word.text = freeText(json, place, reader);
    word.sense = reader.text(json, "sense", place, 40);
    word.sounds = reader.texts(json, "sounds", place, kMostSounds, 8);
    word.compound = reader.texts(json, "compound", place, 6, 81);
    word.picture = reader.text(json, "picture", place, 60);
    return word;
}

/// Why a word is left out, or empty.
std::string leftOut(const UnitWord& word, std::set<std::string>& seen) {
    const std::string why = whyNoWord(word.text);
    if (!why.empty()) return inQuotes(word.text) + " " + why + ".";
    if (!word.sense.empty() && !isPlainId(word.sense, 40))
        return "Its sense " + inQuotes(word.sense) + " has more than a to z, digits and hyphens.";
    if (!word.picture.empty() && !isPlainId(word.picture))
        return inQuotes(word.picture) + " is not the name of a picture.";
    if (!seen.insert(word.text + "~" + word.sense).second)
        return inQuotes(word.text) + " stands in the list twice.";
    return "";
}

void readWords(const Json& list, Unit& unit, JsonReader& reader) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = placeIn("words", i);
        UnitWord word;
        if (list[i].is_string())
            word.text = tidied(list[i].get_ref<const std::string&>());
        else if (reader.isObject(list[i], place))
            word = readWord(list[i], place, reader);
        else
            continue;
        word.place = i + 1;
        const std::string why = leftOut(word, seen);
        if (why.empty())
            unit.words.push_back(std::move(word));
        else
            reader.warn(place, why, "This word is left out; change it to have it back.");
    }
}

void readSentences(const Json& list, Unit& unit, JsonReader& reader) {
    std::set<std::string> ids;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = placeIn("sentences", i);
        UnitSentence sentence;
        if (list[i].is_string()) {
            sentence.text = tidied(list[i].get_ref<const std::string&>());
        } else if (reader.isObject(list[i], place)) {
            sentence.id = reader.text(list[i], "id", place, 60);
            sentence.text = freeText(list[i], place, reader);
        } else {
            continue;
        }
        if (sentence.id.empty()) sentence.id = "s-" + std::to_string(i + 1);
        sentence.place = i + 1;
        std::string why = whyNoSentence(sentence.text);
        if (!why.empty())
            why = inQuotes(sentence.text) + " " + why + ".";
        else if (!isPlainId(sentence.id))
            why = inQuotes(sentence.id) + " is not an id.";
        else if (!ids.insert(sentence.id).second)
            why = "Another has the id " + sentence.id + ".";
        if (why.empty())
            unit.sentences.push_back(std::move(sentence));
        else
            reader.warn(place, why, "This sentence is left out; change it to have it back.");
    }
}

}  // namespace

Result<Unit> readUnit(std::string_view json, std::string_view where) {
    if (json.size() > kMostUnitBytes)
        return Problem{std::string(where),
                       "This is larger than " + std::to_string(kMostUnitBytes >> 20) +
                           " MB, more than a unit of words can be.",
                       "Choose another file, or split the unit."};
    const Result<Json> parsed = parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const Json& root = parsed.value();
    JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "a unit of words")) return reader.takeProblems();

    Unit unit;
    unit.where = where;
    unit.id = reader.text(root, "id", "", 60, true);
    if (!unit.id.empty() && !isPlainId(unit.id))
        reader.error("id", inQuotes(unit.id) + " has more than letters a to z, digits and hyphens.",
                     "Change it, for example to \"by-the-pond\".");
    unit.title = reader.text(root, "title", "", 60, true);
    readWords(reader.list(root, "words", kMostWords, true), unit, reader);
    readSentences(reader.list(root, "sentences", kMostWords, false), unit, reader);
    if (reader.failed()) return reader.takeProblems();
    return {std::move(unit), reader.takeProblems()};
}

}  // namespace wrenlet::pack
