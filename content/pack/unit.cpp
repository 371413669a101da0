#include "content/pack/unit.hpp"

#include <algorithm>
#include <set>

#include "content/pack/json_reader.hpp"
#include "content/pack/pack.hpp"
#include "content/pack/text_rules.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::string_view kFormat = "wrenlet unit";
constexpr int kVersion = 1;
constexpr std::size_t kMostSounds = 40;
constexpr std::size_t kMostKept = 100;

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
    word.not_for = reader.texts(json, "not_for", place, exercise::skillTable().size(), 60);
    word.kept = reader.texts(json, "kept", place, kMostKept, 60);
    return word;
}

/// Why a word is left out, or empty.
std::string leftOut(const UnitWord& word, std::set<std::string>& seen) {
    const std::string why = whyNoWord(word.text);
    if (!why.empty()) return inQuotes(word.text) + " " + why + ".";
    if (word.sounds.empty() && !isEnglish(word.text))
        return inQuotes(word.text) + " has letters that are not English, and no sounds given.";
    if (!word.sense.empty() && !isPlainId(word.sense, 40))
        return "Its sense " + inQuotes(word.sense) + " has more than a to z, digits and hyphens.";
    if (!word.picture.empty() && !isPlainId(word.picture))
        return inQuotes(word.picture) + " is not the name of a picture.";
    if (!seen.insert(wordId(word)).second)
        return inQuotes(word.text) + " stands in the list twice.";
    return "";
}

/// JSON in which what must not stand between quotes (control characters, broken UTF-8) is written
/// as JSON writes it, so that one word is refused and not the file. Line ends are left as they
/// are: there a quote is missing.
std::string mended(std::string_view json) {
    std::string out;
    out.reserve(json.size());
    bool in_text = false;
    for (std::size_t i = 0; i < json.size();) {
        const std::size_t size = letterSize(json.substr(i));
        const auto c = static_cast<unsigned char>(json[i]);
        if (!in_text || (size > 0 && c >= 0x20) || c == '\n' || c == '\r') {
            out += json.substr(i, std::max<std::size_t>(size, 1));
            if (c == '"') in_text = !in_text;
            if (in_text && c == '\\' && i + 1 < json.size() && json[i + 1] >= 0x20)
                out += json[++i];
        } else {
            out += size > 0 ? "\\u0001" : "\\ufffd";
        }
        i += std::max<std::size_t>(size, 1);
    }
    return out;
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

std::string knownAccents() {
    std::string names;
    for (const speech::Accent accent : speech::allAccents()) {
        if (!names.empty()) names += ", ";
        names += speech::accentName(accent);
    }
    return names;
}

void readAccents(const Json& root, Unit& unit, JsonReader& reader) {
    constexpr std::size_t kMostAccents = 40, kMostLetters = 40;
    const auto names = reader.texts(root, "accents", "", kMostAccents, kMostLetters);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto accent = speech::accentNamed(names[i]);
        if (!accent)
            reader.warn(placeIn("accents", i), "No accent is called " + inQuotes(names[i]) + ".",
                        "Known are " + knownAccents() + ".");
        else if (std::find(unit.accents.begin(), unit.accents.end(), *accent) == unit.accents.end())
            unit.accents.push_back(*accent);
    }
}

void readLeftOut(const Json& root, Unit& unit, JsonReader& reader) {
    for (std::string& id :
         reader.texts(root, "skills_off", "", exercise::skillTable().size() * 2, 60)) {
        if (exercise::skillFromId(id))
            unit.skills_off.push_back(std::move(id));
        else
            reader.warn("skills_off", "No skill is called " + inQuotes(id) + ".",
                        "It stays as if it were not there.");
    }
    unit.items_off = reader.texts(root, "items_off", "", kMostItemsOff, 400);
    constexpr std::size_t kMostFocusSounds = 100;
    for (std::string& sound : reader.texts(root, "focus_sounds", "", kMostFocusSounds, 12)) {
        if (speech::fromIpa(sound))
            unit.focus_sounds.push_back(std::move(sound));
        else
            reader.warn("focus_sounds", "No sound is written " + inQuotes(sound) + ".",
                        "It stays as if it were not there.");
    }
}

/// Why a recording is left out, or empty.
std::string whyNoRecording(const UnitRecording& recording, std::set<std::string>& clips) {
    if (!isPlainFileName(recording.take))
        return inQuotes(recording.take) + " is not the name of a file.";
    if (recording.clip.empty()) return "It does not say which clip it is.";
    if (recording.to_us <= recording.from_us) return "It ends before it begins.";
    if (!clips.insert(recording.clip).second)
        return "There is another one of " + inQuotes(recording.clip) + ".";
    return "";
}

void readRecordings(const Json& root, Unit& unit, JsonReader& reader) {
    std::set<std::string> clips;
    const Json& list = reader.list(root, "recordings", kMostRecordings, false);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = placeIn("recordings", i);
        if (!reader.isObject(list[i], place)) continue;
        UnitRecording recording;
        recording.clip = reader.text(list[i], "clip", place, 200);
        recording.take = reader.text(list[i], "take", place, 120);
        recording.said = reader.text(list[i], "said", place, 200);
        recording.from_us = reader.whole(list[i], "from_us", place, 0, kLongestTakeUs, 0);
        recording.to_us = reader.whole(list[i], "to_us", place, 0, kLongestTakeUs, 0);
        recording.kept = reader.texts(list[i], "kept", place, kMostKept, 60);
        recording.voice = reader.text(list[i], "voice", place, kMostVoice);
        const std::string why = whyNoRecording(recording, clips);
        if (why.empty())
            unit.recordings.push_back(std::move(recording));
        else
            reader.warn(place, why, "The demo voice speaks instead; record it again.");
    }
}

}  // namespace

std::string wordId(const UnitWord& word) {
    std::string id = word.text;
    for (char& letter : id)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return word.sense.empty() ? id : id + "~" + word.sense;
}

Result<Unit> readUnit(std::string_view json, std::string_view where) {
    if (json.size() > kMostUnitBytes)
        return Problem{std::string(where),
                       "This is larger than " + std::to_string(kMostUnitBytes >> 20) +
                           " MB, more than a unit of words can be.",
                       "Choose another file, or split the unit."};
    const Result<Json> parsed = parseJson(mended(json), where);
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
    readWords(reader.list(root, "words", kMostUnitWords, true), unit, reader);
    readSentences(reader.list(root, "sentences", kMostUnitWords, false), unit, reader);
    readAccents(root, unit, reader);
    readLeftOut(root, unit, reader);
    readRecordings(root, unit, reader);
    if (reader.failed()) return reader.takeProblems();
    return {std::move(unit), reader.takeProblems()};
}

}  // namespace wrenlet::pack
