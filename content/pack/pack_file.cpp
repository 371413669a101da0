#include "content/pack/pack_file.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

#include "content/common/files.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/pack/archive.hpp"
#include "content/pack/media_check.hpp"
#include "content/pack/pack_json.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::size_t kMostProblems = 40;
constexpr ArchiveLimits kLimits{kMostPackBytes, kMostEntryBytes, kMostUnpackedBytes, kMostEntries};

void append(std::vector<Problem>& to, const std::vector<Problem>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

std::string inPack(std::string_view where, std::string_view file) {
    return std::string(where) + ", " + std::string(file);
}

/// Whether what lies in a pack is looked into.
enum class Media { checked_now, checked_before };

void inspect(Clip& clip, std::string_view where, std::vector<Problem>& problems) {
    const ClipCheck check = checkClip(clip.bytes);
    clip.seconds = check.seconds;
    if (!check.why_not.empty())
        problems.push_back({inPack(where, clip.file),
                            "This should say \"" + clip.text + "\" and " + check.why_not + ".",
                            "Record it again and hand the pack out again."});
}

void inspect(const Picture& picture, std::string_view where, std::vector<Problem>& problems) {
    const std::string why = whyNoPicture(picture.bytes);
    if (!why.empty())
        problems.push_back({inPack(where, picture.file),
                            "This should show \"" + picture.id + "\" and " + why + ".",
                            "Choose another picture and hand the pack out again."});
}

/// Unpacks every clip and picture that pack.json names and looks whether it is one.
std::vector<Problem> unpackMedia(const Archive& archive, std::string_view where, Media media,
                                 Pack& pack) {
    std::vector<Problem> problems;
    std::map<std::string_view, const Clip*> unpacked;
    std::uint64_t shared_bytes = 0;
    for (Clip& clip : pack.clips) {
        if (problems.size() >= kMostProblems) return problems;
        const auto [same, is_new] = unpacked.try_emplace(clip.file, &clip);
        if (!is_new) {
            shared_bytes += same->second->bytes.size();
            if (shared_bytes > kMostSharedBytes) {
                problems.push_back({inPack(where, clip.file),
                                    "More clips than in any pack are this one recording.",
                                    "Do not use this pack."});
                return problems;
            }
            clip.bytes = same->second->bytes;
            clip.seconds = same->second->seconds;
            continue;
        }
        Result<std::string> bytes = archive.read(clip.file);
        if (!bytes.ok()) {
            for (Problem problem : bytes.problems()) {
                problem.what += " It should say \"" + clip.text + "\".";
                problems.push_back(std::move(problem));
            }
            continue;
        }
        clip.bytes = std::move(bytes.value());
        if (media == Media::checked_now) inspect(clip, where, problems);
    }
    for (Picture& picture : pack.pictures) {
        if (problems.size() >= kMostProblems) return problems;
        Result<std::string> bytes = archive.read(picture.file);
        if (!bytes.ok()) {
            append(problems, bytes.problems());
            continue;
        }
        picture.bytes = std::move(bytes.value());
        if (media == Media::checked_now) inspect(picture, where, problems);
    }
    return problems;
}

/// What says an item's subject: a word, a sentence or a sound; empty for a letter, which is shown.
std::string clipOf(const std::string& subject, const Pack& pack) {
    if (pack.vocabulary.sentence(subject) != nullptr) return exercise::sentenceClip(subject);
    if (exercise::letterById(subject) != nullptr) return "";
    return exercise::isSoundClip(subject) ? subject : exercise::wordClip(subject);
}

/// What an item would lack when it is played: fairness, clips, pictures.
std::vector<std::string> whyNotPlayable(const exercise::Item& item, const Pack& pack) {
    std::vector<std::string> why = exercise::unfairness(item, pack.vocabulary);
    const auto need = [&](const std::string& clip) {
        if (!clip.empty() && !pack.clip(clip)) why.push_back("there is no clip " + clip);
    };
    for (const exercise::Part& part : item.parts) need(part.clip);
    need(clipOf(item.subject, pack));
    for (const exercise::Choice& choice : item.choices)
        if (const exercise::Word* word = pack.vocabulary.word(choice.id); word != nullptr) {
            if (!word->picture.empty() && !pack.picture(word->picture))
                why.push_back("there is no picture of " + choice.id);
        } else if (exercise::isSoundClip(choice.id)) {
            need(choice.id);
        }
    return why;
}

std::vector<Problem> checkItems(const Pack& pack, std::string_view where) {
    std::vector<Problem> problems;
    for (std::size_t i = 0; i < pack.items.size() && problems.size() < kMostProblems; ++i)
        for (const std::string& why : whyNotPlayable(pack.items[i], pack))
            problems.push_back(
                {inPack(where, kPackJson) + ", items, " + std::to_string(i + 1),
                 "The item " + inQuotes(pack.items[i].id) + " cannot be played: " + why + ".",
                 "Hand the pack out again from the desk."});
    return problems;
}

std::vector<Problem> warnOfStrangers(const Archive& archive, std::string_view where,
                                     const Pack& pack) {
    std::set<std::string> known{std::string(kPackJson)};
    for (const Clip& clip : pack.clips) known.insert(clip.file);
    for (const Picture& picture : pack.pictures) known.insert(picture.file);
    std::vector<Problem> problems;
    for (const std::string& name : archive.names())
        if (known.count(name) == 0 && problems.size() < kMostProblems)
            problems.push_back({inPack(where, name), "This file is not used by the pack.",
                                "Nothing needs to be done.", Problem::Weight::warning});
    return problems;
}

Result<Pack> readPack(std::string_view bytes, std::string_view where, Media media) {
    const Result<Archive> archive = Archive::open(bytes, where, kLimits);
    if (!archive.ok()) return archive.problems();
    const Result<std::string> json = archive.value().read(kPackJson);
    if (!json.ok()) return json.problems();
    Result<Pack> read = readPackJson(json.value(), inPack(where, kPackJson));
    if (!read.ok()) return read.problems();

    Pack pack = std::move(read.value());
    std::vector<Problem> problems = read.problems();
    append(problems, unpackMedia(archive.value(), where, media, pack));
    if (media == Media::checked_now) append(problems, checkItems(pack, where));
    if (anyError(problems)) return problems;
    append(problems, warnOfStrangers(archive.value(), where, pack));
    return {std::move(pack), std::move(problems)};
}

}  // namespace

Result<Pack> readPack(std::string_view bytes, std::string_view where) {
    return readPack(bytes, where, Media::checked_now);
}

Result<Pack> readKnownPack(std::string_view bytes, std::string_view where) {
    return readPack(bytes, where, Media::checked_before);
}

Result<Pack> readPackFile(const std::filesystem::path& path) {
    const Result<std::string> bytes = readWhole(path, kMostPackBytes);
    if (!bytes.ok()) return bytes.problems();
    return readPack(bytes.value(), path.filename().string());
}

Result<std::string> writePack(const Pack& pack) {
    const std::string json = writePackJson(pack);
    std::vector<ArchiveEntry> entries{{std::string(kPackJson), json, true}};
    std::map<std::string_view, std::string_view> voices;
    for (const Clip& clip : pack.clips) {
        const auto [same, is_new] = voices.try_emplace(clip.file, clip.bytes);
        if (is_new) entries.push_back({clip.file, clip.bytes, false});
        if (same->second != clip.bytes)
            return Problem{pack.name(), inQuotes(clip.file) + " cannot be two clips in a pack.",
                           "Build the pack again."};
    }
    for (const Picture& picture : pack.pictures)
        entries.push_back({picture.file, picture.bytes, true});
    std::set<std::string> names;
    for (const ArchiveEntry& entry : entries)
        if (!isPlainPath(entry.name) || !names.insert(entry.name).second)
            return Problem{pack.name(), inQuotes(entry.name) + " cannot name a file in a pack.",
                           "Build the pack again."};
    return writeArchive(entries);
}

}  // namespace wrenlet::pack
