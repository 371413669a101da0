// From a unit to a pack: looks words up, makes the items of every skill that the game plays, works
// out what has to be heard and seen, and gathers it from wherever clips and pictures come from.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/pack/pack.hpp"
#include "content/pack/unit.hpp"
#include "content/speech/block_list.hpp"
#include "content/speech/lexicon.hpp"

namespace wrenlet::pack {

/// A unit's words with sounds and parts. Errors: a word that the dictionary does not have and that
/// has no sounds given, by its place. Compounds' parts are added as words.
Result<exercise::Vocabulary> readVocabulary(const Unit& unit, const speech::Lexicon& lexicon);

/// The same without the words that it has errors on: for looking at a unit that is not done yet.
struct KnownVocabulary {
    exercise::Vocabulary vocabulary;
    std::vector<Problem> problems;
};
KnownVocabulary readKnownWords(const Unit& unit, const speech::Lexicon& lexicon);

/// Something that has to be heard: what a recording or the demo voice must say.
struct VoiceNeed {
    enum class Kind { word, sound, part, sentence, phrase };
    std::string id;                // the clip's id
    std::string text;              // "rainbow", "The duck sits on the pond.", "/k/"
    speech::Pronunciation sounds;  // of a word, sound or part; empty for sentences and phrases
    Kind kind = Kind::word;
    bool question = false;  // its tune rises
};

/// Everything that is heard in `items`: their parts, what is asked and chosen, what the game says.
/// Each clip once, in the order in which it is pleasant to record them.
std::vector<VoiceNeed> voiceNeeds(const exercise::Vocabulary& vocabulary,
                                  std::span<const exercise::Item> items);

/// Told how far the clips are; false ends the work.
using Progress = std::function<bool(std::size_t done, std::size_t all)>;

/// Where clips and pictures come from: recordings first, the demo voice after, the picture set.
class Media {
  public:
    virtual ~Media() = default;
    /// What is needed, in that order, made as many at once as it likes; a problem for each clip
    /// that it has not or that is no use. Fewer than asked for when `progress` ended it.
    virtual std::vector<Result<Clip>> clips(std::span<const VoiceNeed> needs,
                                            const Progress& progress) = 0;
    virtual Result<Picture> picture(std::string_view id) = 0;
};

/// The whole pack, checked. Nothing on `blocked` is heard or shown in it, and every item holds in
/// the unit's accents. Warnings name what was
/// left out and why. `progress` may be empty; when it ends the work, that is an error.
Result<Pack> buildPack(const Unit& unit, std::uint32_t version, const speech::Lexicon& lexicon,
                       const speech::BlockList& blocked, Media& media, const Progress& progress);

}  // namespace wrenlet::pack
