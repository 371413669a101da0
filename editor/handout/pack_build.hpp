// Making the next pack of a unit: what goes into it, what is new since the last one, and what
// speaks against handing it out. A long pure call, made aside, that says how far it is and can be
// stopped.
#pragma once

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "content/pack/classroom.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/speech/block_list.hpp"
#include "editor/voice/unit_media.hpp"

namespace wrenlet::desk {

/// A pack of a unit in the classroom folder.
struct PackFile {
    std::string name;           // "on-the-farm-7.zip"
    std::uint32_t version = 0;  // 7
};

/// The packs of one unit, the newest first.
std::vector<PackFile> packsOf(const pack::Classroom& classroom, const std::string& unit_id);
std::string packFileName(const std::string& unit_id, std::uint32_t version);

/// What one pack has that the other has not.
struct PackChanges {
    std::vector<std::string> words_new, words_gone;  // as written
    std::size_t clips_hers_new = 0;                  // in her voice now, and not before
    std::int64_t items_more = 0;                     // negative: fewer
};
PackChanges changesSince(const pack::Pack& before, const pack::Pack& now);

struct BuiltPack {
    std::string file;  // "on-the-farm-8.zip"
    std::uint32_t version = 1;
    std::string bytes;  // empty: it could not be made
    std::size_t words = 0, sentences = 0, skills = 0, items = 0;
    std::size_t clips = 0, clips_demo = 0;  // of all, and of those in the demo voice
    std::optional<PackChanges> changes;     // since the last one; none: it is the first
    std::vector<Problem> problems;          // errors: it is not handed out

    bool isGood() const { return !bytes.empty() && !anyError(problems); }
};

/// How far a build is; read from any thread.
struct BuildProgress {
    std::atomic<std::size_t> done{0}, all{0};
    std::atomic<bool> stop{false};
};

struct BuildCall {
    pack::Unit unit;
    UnitPlaces places;
    pack::Classroom classroom;  // where earlier packs are
};

/// Nothing when it was stopped.
std::optional<BuiltPack> buildNext(const BuildCall& call, const speech::Lexicon& lexicon,
                                   const speech::BlockList& blocked, const ClipMaking& making,
                                   BuildProgress& progress);

/// Puts the pack into the classroom folder and makes it the one that tablets take. class.json is
/// read anew before it is written, so that nothing in it is lost. Errors: the folder is gone, full
/// or not writable; what was there stays whole.
Result<Done> handOut(const BuiltPack& built, const pack::Classroom& classroom);

/// Makes an earlier pack the one that tablets take. Errors: it is not there or not good any more.
Result<Done> goBackTo(const std::string& file, const pack::Classroom& classroom);

}  // namespace wrenlet::desk
