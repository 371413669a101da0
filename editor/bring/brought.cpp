#include "editor/bring/brought.hpp"

#include <algorithm>
#include <map>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/media_check.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_file.hpp"
#include "content/pack/pack_json.hpp"
#include "editor/handout/pack_build.hpp"
#include "editor/unit/unit_folder.hpp"
#include "editor/voice/unit_media.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostShownPacks = 40;

pack::UnitWord unitWord(const exercise::Word& word) {
    pack::UnitWord made;
    made.text = word.text;
    const std::size_t tilde = word.id.find('~');
    if (tilde != std::string::npos) made.sense = word.id.substr(tilde + 1);
    for (const speech::Sound& sound : word.sounds) made.sounds.push_back(pack::soundText(sound));
    made.compound = word.compound;
    made.picture = word.picture;
    return made;
}

Result<Brought> fromPack(const std::filesystem::path& path) {
    Result<pack::Pack> read = pack::readPackFile(path);
    if (!read.ok()) return read.problems();
    pack::Pack& pack = read.value();
    Brought brought;
    brought.title = pack.title;
    brought.from = path.filename().string();
    brought.problems = read.problems();
    for (const exercise::Word& word : pack.vocabulary.words)
        brought.words.push_back(unitWord(word));
    for (const exercise::Sentence& sentence : pack.vocabulary.sentences)
        brought.sentences.push_back({sentence.id, sentence.text, 0});
    std::map<std::string, std::string> said;
    for (const pack::VoiceNeed& need : pack::voiceNeeds(pack.vocabulary, pack.items))
        said[need.id] = saidFor(need);
    for (pack::Clip& clip : pack.clips) {
        const auto need = said.find(clip.id);
        if (clip.demo_voice || need == said.end()) continue;
        brought.recordings.push_back({clip.id,
                                      need->second,
                                      clip.text,
                                      clip.voice,
                                      0,
                                      static_cast<std::int64_t>(clip.seconds * 1'000'000),
                                      std::move(clip.bytes),
                                      {}});
    }
    for (pack::Picture& picture : pack.pictures)
        brought.pictures.push_back({picture.id, std::move(picture.bytes)});
    brought.vocabulary = std::move(pack.vocabulary);
    return brought;
}

void takePictures(const UnitFolder& folder, Brought& brought) {
    std::vector<std::string> names;
    for (const pack::UnitWord& word : brought.words)
        if (!word.picture.empty()) names.push_back(word.picture);
    std::sort(names.begin(), names.end());
    names.erase(std::unique(names.begin(), names.end()), names.end());
    for (const std::string& name : names) {
        BroughtPicture picture{name, ""};
        for (const char* ending : {".svg", ".png"}) {
            std::error_code error;
            const auto own = folder.pictures() / (name + ending);
            if (!std::filesystem::is_regular_file(own, error)) continue;
            auto bytes = readWhole(own, pack::kMostPictureBytes);
            const std::string why =
                bytes.ok() ? pack::whyNoPicture(bytes.value()) : "cannot be read";
            if (why.empty())
                picture.bytes = std::move(bytes.value());
            else
                brought.problems.push_back({own.filename().string(), "This picture " + why + ".",
                                            "Its word comes without it.",
                                            Problem::Weight::warning});
        }
        brought.pictures.push_back(std::move(picture));
    }
}

Result<Brought> fromFolder(const std::filesystem::path& path, const speech::Lexicon& lexicon) {
    const UnitFolder folder{path};
    Result<OpenedUnitFile> opened = openUnitFile(folder, {});
    if (!opened.ok()) return opened.problems();
    const pack::Unit& unit = opened.value().unit;
    Brought brought;
    brought.title = unit.title;
    brought.from = path.filename().string();
    brought.problems = opened.value().problems;
    brought.words = unit.words;
    brought.sentences = unit.sentences;
    brought.vocabulary = pack::readKnownWords(unit, lexicon).vocabulary;
    for (const pack::UnitRecording& one : unit.recordings) {
        std::error_code error;
        const auto take = folder.takes() / one.take;
        if (std::filesystem::is_regular_file(take, error))
            brought.recordings.push_back({one.clip, one.said,
                                          one.clip.substr(one.clip.find(':') + 1), one.voice,
                                          one.from_us, one.to_us, "", take});
        else
            brought.problems.push_back({one.take, "This recording is not beside the unit.",
                                        "What it says comes without a voice.",
                                        Problem::Weight::warning});
    }
    takePictures(folder, brought);
    return brought;
}

}  // namespace

Result<Brought> openBrought(const std::filesystem::path& path, const speech::Lexicon& lexicon) {
    std::error_code error;
    const std::string name = path.filename().string();
    if (std::filesystem::is_regular_file(path / "unit.json", error))
        return fromFolder(path, lexicon);
    if (std::filesystem::is_directory(path, error))
        return Problem{name, "There is no unit in this folder.",
                       "Choose a pack (a .zip), or the folder of a unit with its unit.json."};
    if (!std::filesystem::is_regular_file(path, error))
        return Problem{name, "This is not there.", "Look at the name, or plug the stick in."};
    return fromPack(path);
}

std::vector<std::filesystem::path> broughtIn(const std::filesystem::path& classroom,
                                             const std::string& unit_id) {
    std::vector<std::filesystem::path> found;
    for (const UnitFolder& unit : unitsIn(classroom))
        if (unit.folder.filename() != unit_id) found.push_back(unit.folder);
    const pack::Classroom room{classroom};
    std::vector<std::string> own;
    for (const PackFile& pack : packsOf(room, unit_id)) own.push_back(pack.name);
    for (const auto& file : listFiles(room.packs(), ".zip"))
        if (std::find(own.begin(), own.end(), file.filename().string()) == own.end())
            found.push_back(file);
    if (found.size() > kMostShownPacks) found.resize(kMostShownPacks);
    return found;
}

}  // namespace wrenlet::desk
