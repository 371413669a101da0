#include "content/pack/pack_builder.hpp"

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>

#include "content/exercise/in_accents.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/rude.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

std::string numbered(const char* folder, std::size_t number, std::string_view ending) {
    char name[64];
    std::snprintf(name, sizeof name, "%s/%04zu.%.*s", folder, number,
                  static_cast<int>(ending.size()), ending.data());
    return name;
}

void append(std::vector<Problem>& to, const std::vector<Problem>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

void warnOfRude(const exercise::Vocabulary& vocabulary, const speech::BlockList& blocked,
                const std::string& where, std::vector<Problem>& problems) {
    for (const exercise::Word& word : vocabulary.words)
        if (blocked.blocks(word.text) || blocked.blocks(word.sounds))
            problems.push_back(
                {where, inQuotes(word.text) + " may be heard as a rude word. It is not asked.",
                 "Choose another word.", Problem::Weight::warning});
}

void makeAllItems(Pack& pack, const speech::BlockList& blocked, const Unit& unit,
                  std::vector<Problem>& problems) {
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        if (std::find(unit.skills_off.begin(), unit.skills_off.end(), row.id) !=
            unit.skills_off.end())
            continue;
        std::vector<exercise::Item> items = exercise::withoutRude(
            exercise::makeItems(pack.vocabulary, row.skill), pack.vocabulary, blocked);
        const bool gives_some = !items.empty();
        items = exercise::holdingIn(std::move(items), pack.vocabulary, unit.accents);
        if (items.empty())
            problems.push_back({unit.where,
                                "These words give no items for \"" + std::string(row.name) + "\"" +
                                    (gives_some ? " that hold in the unit's accents." : "."),
                                "Add words, or leave that skill to another unit.",
                                Problem::Weight::warning});
        items = withoutLeftOut(std::move(items), unit);
        std::move(items.begin(), items.end(), std::back_inserter(pack.items));
    }
    if (pack.items.empty())
        problems.push_back({unit.where, "These words give nothing to play.",
                            "Add words with pictures that rhyme, or sentences of 2 to 8 words."});
}

void gatherPictures(Pack& pack, Media& media, std::vector<Problem>& problems) {
    std::set<std::string> ids;
    for (exercise::Word& word : pack.vocabulary.words) {
        if (word.picture.empty() || ids.count(word.picture) != 0) continue;
        Result<Picture> picture = media.picture(word.picture);
        if (!picture.ok()) {
            for (Problem problem : picture.problems()) {
                problem.weight = Problem::Weight::warning;
                problem.what += " The word is heard, and never shown.";
                problems.push_back(std::move(problem));
            }
            word.picture.clear();
            continue;
        }
        ids.insert(word.picture);
        pack.pictures.push_back(std::move(picture.value()));
        pack.pictures.back().id = word.picture;
    }
    std::sort(pack.pictures.begin(), pack.pictures.end(),
              [](const Picture& a, const Picture& b) { return a.id < b.id; });
    for (std::size_t i = 0; i < pack.pictures.size(); ++i) {
        Picture& picture = pack.pictures[i];
        const bool png = picture.bytes.compare(0, 4, "\x89PNG") == 0;
        picture.file = numbered("pictures", i + 1, png ? "png" : "svg");
    }
}

/// A word and the like part of another can be one recording, which then lies in the pack once.
void nameFiles(std::vector<Clip>& clips) {
    std::map<std::string_view, std::string> files;
    for (Clip& clip : clips) {
        const bool flac = clip.bytes.compare(0, 4, "fLaC") == 0;
        const auto [file, is_new] = files.try_emplace(clip.bytes);
        if (is_new) file->second = numbered("voice", files.size(), flac ? "flac" : "ogg");
        clip.file = file->second;
    }
}

void gatherClips(Pack& pack, Media& media, const Progress& progress,
                 std::vector<Problem>& problems) {
    const std::vector<VoiceNeed> needs = voiceNeeds(pack.vocabulary, pack.items);
    std::vector<Result<Clip>> clips = media.clips(needs, progress);
    if (clips.size() < needs.size()) return problems.push_back({pack.unit_id, "Stopped.", ""});
    for (std::size_t i = 0; i < needs.size(); ++i) {
        append(problems, clips[i].problems());
        if (!clips[i].ok()) continue;
        pack.clips.push_back(std::move(clips[i].value()));
        pack.clips.back().id = needs[i].id;
        pack.clips.back().text = needs[i].text;
    }
    std::sort(pack.clips.begin(), pack.clips.end(),
              [](const Clip& a, const Clip& b) { return a.id < b.id; });
    nameFiles(pack.clips);
}

}  // namespace

Result<Pack> buildPack(const Unit& unit, std::uint32_t version, const speech::Lexicon& lexicon,
                       const speech::BlockList& blocked, Media& media, const Progress& progress) {
    Result<exercise::Vocabulary> vocabulary = readVocabulary(unit, lexicon);
    if (!vocabulary.ok()) return vocabulary.problems();
    std::vector<Problem> problems = vocabulary.problems();
    Pack pack;
    pack.unit_id = unit.id;
    pack.title = unit.title;
    pack.version = version;
    pack.vocabulary = std::move(vocabulary.value());
    gatherPictures(pack, media, problems);
    warnOfRude(pack.vocabulary, blocked, unit.where, problems);
    makeAllItems(pack, blocked, unit, problems);
    if (anyError(problems)) return problems;
    gatherClips(pack, media, progress, problems);
    for (const exercise::Item& item : pack.items)
        for (const std::string& why : exercise::unfairness(item, pack.vocabulary))
            problems.push_back({unit.where, "The item " + inQuotes(item.id) + ": " + why + ".",
                                "Tell us: this should not happen."});
    if (anyError(problems)) return problems;
    return {std::move(pack), std::move(problems)};
}

}  // namespace wrenlet::pack
