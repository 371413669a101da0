#include <nlohmann/json.hpp>

#include "content/pack/unit.hpp"

namespace wrenlet::pack {
namespace {

using Ordered = nlohmann::ordered_json;

void putSome(Ordered& json, const char* key, const std::string& text) {
    if (!text.empty()) json[key] = text;
}

void putSome(Ordered& json, const char* key, const std::vector<std::string>& texts) {
    if (!texts.empty()) json[key] = texts;
}

Ordered wordJson(const UnitWord& word) {
    Ordered json = {{"text", word.text}};
    putSome(json, "sense", word.sense);
    putSome(json, "sounds", word.sounds);
    putSome(json, "compound", word.compound);
    putSome(json, "picture", word.picture);
    putSome(json, "not_for", word.not_for);
    putSome(json, "kept", word.kept);
    return json;
}

Ordered recordingJson(const UnitRecording& recording) {
    Ordered json = {{"clip", recording.clip}, {"take", recording.take}};
    putSome(json, "said", recording.said);
    json["from_us"] = recording.from_us;
    json["to_us"] = recording.to_us;
    putSome(json, "kept", recording.kept);
    putSome(json, "voice", recording.voice);
    return json;
}

}  // namespace

std::string writeUnit(const Unit& unit) {
    Ordered root = {
        {"format", "wrenlet unit"}, {"format_version", 1},       {"id", unit.id},
        {"title", unit.title},      {"words", Ordered::array()}, {"sentences", Ordered::array()}};
    for (const UnitWord& word : unit.words) root["words"].push_back(wordJson(word));
    for (const UnitSentence& sentence : unit.sentences)
        root["sentences"].push_back({{"id", sentence.id}, {"text", sentence.text}});
    std::vector<std::string> accents;
    for (const speech::Accent accent : unit.accents)
        accents.emplace_back(speech::accentName(accent));
    putSome(root, "accents", accents);
    putSome(root, "skills_off", unit.skills_off);
    putSome(root, "items_off", unit.items_off);
    putSome(root, "focus_sounds", unit.focus_sounds);
    if (!unit.recordings.empty()) root["recordings"] = Ordered::array();
    for (const UnitRecording& recording : unit.recordings)
        root["recordings"].push_back(recordingJson(recording));
    return root.dump(1, ' ', false, Ordered::error_handler_t::replace) + "\n";
}

}  // namespace wrenlet::pack
