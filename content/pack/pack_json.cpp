#include "content/pack/pack_json.hpp"

#include <algorithm>
#include <set>

#include "content/pack/json_reader.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

using OrderedJson = nlohmann::ordered_json;

constexpr std::string_view kFormat = "wrenlet pack";
constexpr int kVersion = 2;  // since 2 clips that are alike share a file; reads 1 too
constexpr std::string_view kPrimary = "ˈ";
constexpr std::string_view kSecondary = "ˌ";
constexpr std::size_t kMostWords = 20'000;
constexpr std::size_t kMostItems = 100'000;
constexpr std::size_t kMostFiles = 20'000;
constexpr std::size_t kMostId = 400;
constexpr std::int64_t kMostVersion = 1'000'000'000;

/// `sounds` of a word, each a known symbol.
speech::Pronunciation readSounds(const Json& json, const std::string& place, JsonReader& reader) {
    speech::Pronunciation sounds;
    for (const std::string& text : reader.texts(json, "sounds", place, 80, 8)) {
        if (const auto sound = soundFromText(text))
            sounds.push_back(*sound);
        else
            reader.error(place + ", sounds", inQuotes(text) + " is no sound of English in IPA.",
                         "Hand the pack out again.");
    }
    return sounds;
}

void readWords(const Json& list, exercise::Vocabulary& vocabulary, JsonReader& reader) {
    std::set<std::string> ids;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = placeIn("words", i);
        if (!reader.isObject(list[i], place)) continue;
        exercise::Word word;
        word.id = reader.text(list[i], "id", place, kMostId, true);
        word.text = reader.text(list[i], "text", place, 200, true);
        word.sounds = readSounds(list[i], place, reader);
        word.compound = reader.texts(list[i], "compound", place, 8, kMostId);
        word.picture = reader.text(list[i], "picture", place, kMostId);
        if (!ids.insert(word.id).second)
            reader.error(place, inQuotes(word.id) + " stands there twice.", "Hand it out again.");
        vocabulary.words.push_back(std::move(word));
    }
    for (std::size_t i = 0; i < vocabulary.words.size(); ++i)
        for (const std::string& part : vocabulary.words[i].compound)
            if (ids.count(part) == 0)
                reader.error(placeIn("words", i), "Its part " + inQuotes(part) + " is missing.",
                             "Hand the pack out again.");
}

void readSentences(const Json& list, exercise::Vocabulary& vocabulary, JsonReader& reader) {
    std::set<std::string> ids;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = placeIn("sentences", i);
        if (!reader.isObject(list[i], place)) continue;
        exercise::Sentence sentence;
        sentence.id = reader.text(list[i], "id", place, kMostId, true);
        sentence.text = reader.text(list[i], "text", place, 400, true);
        for (std::string& word : reader.texts(list[i], "words", place, 100, 200))
            sentence.words.push_back({std::move(word)});
        if (!ids.insert(sentence.id).second)
            reader.error(place, inQuotes(sentence.id) + " stands there twice.",
                         "Hand it out again.");
        vocabulary.sentences.push_back(std::move(sentence));
    }
}

exercise::TurnsOn readTurnsOn(const Json& json, const std::string& place, JsonReader& reader) {
    exercise::TurnsOn turns_on;
    const auto it = json.find("turns_on");
    if (it == json.end() || !reader.isObject(*it, place + ", turns_on")) return turns_on;
    turns_on.sound = reader.text(*it, "sound", place, kMostId);
    const std::string name = reader.text(*it, "position", place, 40, true);
    turns_on.position = exercise::positionFromId(name);
    if (exercise::positionId(turns_on.position) != name)
        reader.error(place, inQuotes(name) + " is no place in a word.", "Hand it out again.");
    return turns_on;
}

/// The entries of an item's list `key`, each an object, at most `most`.
const Json& entriesOf(const Json& item, const char* key, std::size_t most, const std::string& place,
                      JsonReader& reader) {
    static const Json kNone = Json::array();
    const auto it = item.find(key);
    const bool fits =
        it != item.end() && it->is_array() && it->size() <= most &&
        std::all_of(it->begin(), it->end(), [](const Json& entry) { return entry.is_object(); });
    if (fits) return *it;
    reader.error(place + ", " + key, "Here should be a short list.", "Hand the pack out again.");
    return kNone;
}

exercise::Item readItem(const Json& json, const std::string& place, JsonReader& reader) {
    exercise::Item item;
    item.id = reader.text(json, "id", place, kMostId * 4, true);
    const std::string skill = reader.text(json, "skill", place, 60, true);
    if (const auto known = exercise::skillFromId(skill))
        item.skill = *known;
    else
        reader.error(place, inQuotes(skill) + " is no skill of this Wrenlet.", "Update Wrenlet.");
    item.subject = reader.text(json, "subject", place, kMostId, true);
    for (const Json& part : entriesOf(json, "parts", 64, place, reader))
        item.parts.push_back({reader.text(part, "clip", place, kMostId, true),
                              reader.text(part, "label", place, 200)});
    for (const Json& choice : entriesOf(json, "choices", 8, place, reader))
        item.choices.push_back({reader.text(choice, "id", place, kMostId, true),
                                reader.text(choice, "means", place, 400)});
    item.answer = static_cast<std::uint8_t>(reader.whole(json, "answer", place, 0, 7, 0));
    item.turns_on = readTurnsOn(json, place, reader);
    if (item.choices.size() < 2 || item.answer >= item.choices.size())
        reader.error(place, "It has no right answer among two choices or more.",
                     "Hand the pack out again.");
    return item;
}

void checkOnce(const std::string& name, const std::string& place, std::set<std::string>& seen,
               JsonReader& reader) {
    if (!seen.insert(name).second)
        reader.error(place, inQuotes(name) + " stands there twice.", "Hand it out again.");
}

void checkPath(const std::string& file, const std::string& place, JsonReader& reader) {
    if (!isPlainPath(file))
        reader.error(place, inQuotes(file) + " leads out of the pack.", "Do not use this pack.");
}

template <class T>
void sortById(std::vector<T>& list) {
    std::sort(list.begin(), list.end(), [](const T& a, const T& b) { return a.id < b.id; });
}

void readFiles(const Json& root, Pack& pack, JsonReader& reader) {
    std::set<std::string> clip_ids, picture_ids, picture_files;  // clips may share a file
    const Json& clips = reader.list(root, "clips", kMostFiles, true);
    for (std::size_t i = 0; i < clips.size(); ++i) {
        const std::string place = placeIn("clips", i);
        if (!reader.isObject(clips[i], place)) continue;
        Clip clip;
        clip.id = reader.text(clips[i], "id", place, kMostId, true);
        clip.text = reader.text(clips[i], "text", place, 400);
        clip.file = reader.text(clips[i], "file", place, 200, true);
        clip.seconds = reader.number(clips[i], "seconds", place);
        clip.demo_voice = reader.flag(clips[i], "demo_voice", place);
        clip.voice = reader.text(clips[i], "voice", place, kMostVoice);
        checkOnce(clip.id, place, clip_ids, reader);
        checkPath(clip.file, place, reader);
        pack.clips.push_back(std::move(clip));
    }
    const Json& pictures = reader.list(root, "pictures", kMostFiles, true);
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        const std::string place = placeIn("pictures", i);
        if (!reader.isObject(pictures[i], place)) continue;
        Picture picture;
        picture.id = reader.text(pictures[i], "id", place, kMostId, true);
        picture.file = reader.text(pictures[i], "file", place, 200, true);
        checkOnce(picture.id, place, picture_ids, reader);
        checkOnce(picture.file, place, picture_files, reader);
        checkPath(picture.file, place, reader);
        pack.pictures.push_back(std::move(picture));
    }
    sortById(pack.clips);
    sortById(pack.pictures);
}

OrderedJson itemJson(const exercise::Item& item) {
    OrderedJson json;
    json["id"] = item.id;
    json["skill"] = exercise::rowOf(item.skill).id;
    json["subject"] = item.subject;
    json["parts"] = OrderedJson::array();
    for (const exercise::Part& part : item.parts)
        json["parts"].push_back({{"clip", part.clip}, {"label", part.label}});
    json["choices"] = OrderedJson::array();
    for (const exercise::Choice& choice : item.choices)
        json["choices"].push_back({{"id", choice.id}, {"means", choice.means}});
    json["answer"] = item.answer;
    json["turns_on"] = {{"sound", item.turns_on.sound},
                        {"position", exercise::positionId(item.turns_on.position)}};
    return json;
}

OrderedJson wordJson(const exercise::Word& word) {
    OrderedJson json;
    json["id"] = word.id;
    json["text"] = word.text;
    json["sounds"] = OrderedJson::array();
    for (const speech::Sound& sound : word.sounds) json["sounds"].push_back(soundText(sound));
    if (!word.compound.empty()) json["compound"] = word.compound;
    if (!word.picture.empty()) json["picture"] = word.picture;
    return json;
}

}  // namespace

std::string soundText(const speech::Sound& sound) {
    const std::string_view mark = sound.stress == speech::Stress::primary     ? kPrimary
                                  : sound.stress == speech::Stress::secondary ? kSecondary
                                                                              : "";
    return std::string(mark) + std::string(speech::ipa(sound.phoneme));
}

std::optional<speech::Sound> soundFromText(std::string_view text) {
    speech::Stress stress = speech::Stress::none;
    if (text.substr(0, kPrimary.size()) == kPrimary) stress = speech::Stress::primary;
    if (text.substr(0, kSecondary.size()) == kSecondary) stress = speech::Stress::secondary;
    if (stress != speech::Stress::none) text.remove_prefix(kPrimary.size());
    const auto phoneme = speech::fromIpa(text);
    if (!phoneme || (stress != speech::Stress::none && !speech::isVowel(*phoneme)))
        return std::nullopt;
    return speech::Sound{*phoneme, stress};
}

Result<Pack> readPackJson(std::string_view json, std::string_view where) {
    const Result<Json> parsed = parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const Json& root = parsed.value();
    JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "a pack")) return reader.takeProblems();

    Pack pack;
    pack.unit_id = reader.text(root, "unit", "", 60, true);
    if (!isPlainId(pack.unit_id))
        reader.error("unit", "This is no unit's id.", "Hand it out again.");
    pack.title = reader.text(root, "title", "", 60, true);
    pack.version =
        static_cast<std::uint32_t>(reader.whole(root, "version", "", 1, kMostVersion, 1));
    readWords(reader.list(root, "words", kMostWords, true), pack.vocabulary, reader);
    readSentences(reader.list(root, "sentences", kMostWords, true), pack.vocabulary, reader);
    std::set<std::string> ids;
    const Json& items = reader.list(root, "items", kMostItems, true);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string place = placeIn("items", i);
        if (!reader.isObject(items[i], place)) continue;
        pack.items.push_back(readItem(items[i], place, reader));
        if (!ids.insert(pack.items.back().id).second)
            reader.error(place, "This item stands there twice.", "Hand the pack out again.");
    }
    readFiles(root, pack, reader);
    if (reader.failed()) return reader.takeProblems();
    return {std::move(pack), reader.takeProblems()};
}

std::string writePackJson(const Pack& pack) {
    OrderedJson root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["unit"] = pack.unit_id;
    root["title"] = pack.title;
    root["version"] = pack.version;
    for (const char* key : {"words", "sentences", "items", "clips", "pictures"})
        root[key] = OrderedJson::array();
    for (const exercise::Word& word : pack.vocabulary.words)
        root["words"].push_back(wordJson(word));
    for (const exercise::Sentence& sentence : pack.vocabulary.sentences) {
        OrderedJson json{{"id", sentence.id}, {"text", sentence.text}};
        json["words"] = OrderedJson::array();
        for (const exercise::SpokenWord& word : sentence.words) json["words"].push_back(word.text);
        root["sentences"].push_back(std::move(json));
    }
    for (const exercise::Item& item : pack.items) root["items"].push_back(itemJson(item));
    for (const Clip& clip : pack.clips) {
        OrderedJson json{{"id", clip.id},
                         {"text", clip.text},
                         {"file", clip.file},
                         {"seconds", clip.seconds},
                         {"demo_voice", clip.demo_voice}};
        if (!clip.voice.empty()) json["voice"] = clip.voice;
        root["clips"].push_back(std::move(json));
    }
    for (const Picture& picture : pack.pictures)
        root["pictures"].push_back({{"id", picture.id}, {"file", picture.file}});
    return root.dump(1) + "\n";
}

}  // namespace wrenlet::pack
