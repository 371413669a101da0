// A probe: a few words that the class has not practised, so that it shows whether what a child
// learned carries over to words that are new to her. Asked aloud, about once a month.
#pragma once

#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/vocabulary.hpp"
#include "content/practice/heard.hpp"
#include "content/practice/response.hpp"
#include "content/speech/block_list.hpp"
#include "editor/look/asking.hpp"

namespace wrenlet::desk {

/// One thing to ask a child aloud.
struct AskedAloud {
    std::string skill;
    exercise::TurnsOn turns_on;
    std::string asked;  // the item's subject
    Aloud said;
    bool is_new_word = false;
};

/// Ids of words that were asked, answered or could be chosen in these answers.
std::set<std::string> practisedWords(std::span<const practice::Response> responses);

/// Up to `most` items of the skill that are about words of `vocabulary` not in `practised`: no two
/// of one word, sounds in turn, none that is rude or hangs on an accent. The same arguments give
/// the same items; `seed` chooses others.
std::vector<AskedAloud> probeFor(exercise::Skill skill, const exercise::Vocabulary& vocabulary,
                                 const std::set<std::string>& practised,
                                 const speech::BlockList& blocked, std::uint64_t seed,
                                 std::size_t most);

/// Words that were practised and words that were new, side by side, of one child and skill: her
/// answers at tablets and aloud, and those of probes.
struct Transfer {
    int practised_right = 0, practised = 0;
    practice::HeardCounts new_words;
};
Transfer transferOf(std::span<const practice::Response> responses,
                    std::span<const practice::Heard> heard, std::string_view child,
                    std::string_view skill);

}  // namespace wrenlet::desk
