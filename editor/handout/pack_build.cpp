#include "editor/handout/pack_build.hpp"

#include <algorithm>
#include <charconv>
#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/classlist/class_file.hpp"

namespace wrenlet::desk {

namespace {

std::optional<std::uint32_t> versionIn(const std::string& file, const std::string& unit_id) {
    const std::string lead = unit_id + "-", ending = ".zip";
    if (file.size() <= lead.size() + ending.size() || file.compare(0, lead.size(), lead) != 0)
        return {};
    const char* begin = file.data() + lead.size();
    const char* end = file.data() + file.size() - ending.size();
    std::uint32_t version = 0;
    const auto read = std::from_chars(begin, end, version);
    if (read.ec != std::errc() || read.ptr != end || version == 0) return {};
    return version;
}

std::set<std::string> wordsIn(const pack::Pack& pack) {
    std::set<std::string> words;
    for (const exercise::Word& word : pack.vocabulary.words) words.insert(word.text);
    return words;
}

std::set<std::string> hersIn(const pack::Pack& pack) {
    std::set<std::string> clips;
    for (const pack::Clip& clip : pack.clips)
        if (!clip.demo_voice) clips.insert(clip.id);
    return clips;
}

void count(BuiltPack& built, const pack::Pack& pack) {
    built.words = pack.vocabulary.words.size();
    built.sentences = pack.vocabulary.sentences.size();
    built.items = pack.items.size();
    built.clips = pack.clips.size();
    std::set<exercise::Skill> skills;
    for (const exercise::Item& item : pack.items) skills.insert(item.skill);
    built.skills = skills.size();
    built.clips_demo = built.clips - hersIn(pack).size();
}

Result<Done> choose(const std::string& file, const pack::Classroom& classroom) {
    return changeClassFile(classroom, [&](pack::ClassList& list) { list.pack = file; });
}

}  // namespace

std::string packFileName(const std::string& unit_id, std::uint32_t version) {
    return unit_id + "-" + std::to_string(version) + ".zip";
}

std::vector<PackFile> packsOf(const pack::Classroom& classroom, const std::string& unit_id) {
    std::vector<PackFile> packs;
    for (const auto& path : listFiles(classroom.packs(), ".zip")) {
        const std::string name = path.filename().string();
        if (const auto version = versionIn(name, unit_id)) packs.push_back({name, *version});
    }
    std::sort(packs.begin(), packs.end(),
              [](const PackFile& a, const PackFile& b) { return a.version > b.version; });
    return packs;
}

PackChanges changesSince(const pack::Pack& before, const pack::Pack& now) {
    PackChanges changes;
    const auto old_words = wordsIn(before), new_words = wordsIn(now);
    std::set_difference(new_words.begin(), new_words.end(), old_words.begin(), old_words.end(),
                        std::back_inserter(changes.words_new));
    std::set_difference(old_words.begin(), old_words.end(), new_words.begin(), new_words.end(),
                        std::back_inserter(changes.words_gone));
    const auto old_hers = hersIn(before);
    for (const std::string& clip : hersIn(now)) changes.clips_hers_new += old_hers.count(clip) == 0;
    changes.items_more = std::int64_t(now.items.size()) - std::int64_t(before.items.size());
    return changes;
}

std::optional<BuiltPack> buildNext(const BuildCall& call, const speech::Lexicon& lexicon,
                                   const speech::BlockList& blocked, const ClipMaking& making,
                                   BuildProgress& progress) {
    BuiltPack built;
    const std::vector<PackFile> earlier = packsOf(call.classroom, call.unit.id);
    built.version = earlier.empty() ? 1 : earlier.front().version + 1;
    built.file = packFileName(call.unit.id, built.version);
    UnitMedia media(call.unit, call.places, making);
    const Result<pack::Pack> pack = pack::buildPack(call.unit, built.version, lexicon, blocked,
                                                    media, [&](std::size_t done, std::size_t all) {
                                                        progress.all = all;
                                                        progress.done = done;
                                                        return !progress.stop;
                                                    });
    if (progress.stop) return std::nullopt;
    built.problems = pack.problems();
    if (!pack.ok()) return built;
    count(built, pack.value());
    if (!earlier.empty()) {
        const auto last =
            readWhole(call.classroom.packFile(earlier.front().name), pack::kMostPackBytes);
        if (last.ok())
            if (const auto before = pack::readKnownPack(last.value(), earlier.front().name);
                before.ok())
                built.changes = changesSince(before.value(), pack.value());
    }
    Result<std::string> bytes = pack::writePack(pack.value());
    built.problems.insert(built.problems.end(), bytes.problems().begin(), bytes.problems().end());
    if (bytes.ok()) built.bytes = std::move(bytes.value());
    return built;
}

Result<Done> handOut(const BuiltPack& built, const pack::Classroom& classroom) {
    std::error_code error;
    if (!std::filesystem::is_directory(classroom.folder, error))
        return Problem{classroom.folder.string(), "The classroom folder is not there.",
                       "Plug the stick in again, or look whether the share can be reached."};
    std::filesystem::create_directories(classroom.packs(), error);
    const std::filesystem::path file = classroom.packFile(built.file);
    if (std::filesystem::exists(file, error))
        return Problem{built.file, "A pack of this name is in the folder already.",
                       "Somebody else has handed one out; look again."};
    const Result<Done> written = writeWhole(file, built.bytes);
    if (!written.ok()) return written.problems();
    return choose(built.file, classroom);
}

Result<Done> goBackTo(const std::string& file, const pack::Classroom& classroom) {
    const Result<pack::Pack> pack = pack::readPackFile(classroom.packFile(file));
    if (!pack.ok()) return pack.problems();
    return choose(file, classroom);
}

}  // namespace wrenlet::desk
