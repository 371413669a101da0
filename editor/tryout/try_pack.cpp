#include "editor/tryout/try_pack.hpp"

#include <algorithm>
#include <set>

#include "content/pack/pack_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::string_view kWordClip = "word:";

std::set<std::string> madeOf(const exercise::Item& item) {
    std::set<std::string> ids{item.subject};
    for (const exercise::Choice& choice : item.choices) ids.insert(choice.id);
    for (const exercise::Part& part : item.parts)
        if (part.clip.compare(0, kWordClip.size(), kWordClip) == 0)
            ids.insert(part.clip.substr(kWordClip.size()));
    return ids;
}

void addPictures(pack::Pack& pack, UnitMedia& media) {
    std::set<std::string> ids;
    for (exercise::Word& word : pack.vocabulary.words) {
        if (word.picture.empty() || !ids.insert(word.picture).second) continue;
        Result<pack::Picture> picture = media.picture(word.picture);
        if (!picture.ok()) continue;
        const bool png = picture.value().bytes.compare(0, 4, "\x89PNG") == 0;
        picture.value().file =
            "pictures/" + std::to_string(pack.pictures.size() + 1) + (png ? ".png" : ".svg");
        pack.pictures.push_back(std::move(picture.value()));
    }
    std::sort(pack.pictures.begin(), pack.pictures.end(),
              [](const auto& a, const auto& b) { return a.id < b.id; });
}

/// Where nothing is to be heard, a clip is its name alone: the game tells then what it would say.
Result<pack::Clip> silent() {
    pack::Clip clip;
    clip.seconds = 1;
    return clip;
}

void addClips(pack::Pack& pack, const OneQuestion& question, UnitMedia& media, bool with_sound) {
    const std::vector<pack::VoiceNeed> needs = heardIn(question);
    std::vector<Result<pack::Clip>> clips;
    if (with_sound)
        clips = media.clips(needs, {});
    else
        clips.assign(needs.size(), silent());
    for (std::size_t i = 0; i < clips.size(); ++i) {
        if (!clips[i].ok()) continue;
        pack::Clip& clip = clips[i].value();
        clip.id = needs[i].id;
        clip.text = needs[i].text;
        clip.file = "voice/" + std::to_string(pack.clips.size() + 1) + ".ogg";
        pack.clips.push_back(std::move(clip));
    }
    std::sort(pack.clips.begin(), pack.clips.end(),
              [](const auto& a, const auto& b) { return a.id < b.id; });
}

}  // namespace

OneQuestion onlyThis(const exercise::Item& item, const exercise::Vocabulary& vocabulary) {
    OneQuestion question{item, {}};
    std::set<std::string> ids = madeOf(item);
    for (const exercise::Word& word : vocabulary.words)
        if (ids.count(word.id) != 0) ids.insert(word.compound.begin(), word.compound.end());
    for (const exercise::Word& word : vocabulary.words)
        if (ids.count(word.id) != 0) question.vocabulary.words.push_back(word);
    for (const exercise::Sentence& sentence : vocabulary.sentences)
        if (ids.count(sentence.id) != 0) question.vocabulary.sentences.push_back(sentence);
    return question;
}

std::vector<pack::VoiceNeed> heardIn(const OneQuestion& question) {
    return pack::voiceNeeds(question.vocabulary, {&question.item, 1});
}

Result<std::string> packOf(const OneQuestion& question, const pack::Unit& unit,
                           const UnitPlaces& places, const ClipMaking& making, bool with_sound) {
    UnitMedia media(unit, places, making);
    pack::Pack pack;
    pack.unit_id = unit.id.empty() ? "tried" : unit.id;
    pack.title = unit.title;
    pack.vocabulary = question.vocabulary;
    pack.items = {question.item};
    addPictures(pack, media);
    addClips(pack, question, media, with_sound);
    return pack::writePack(pack);
}

}  // namespace wrenlet::desk
