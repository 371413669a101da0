#include "editor/ear/probe.hpp"

#include <algorithm>
#include <map>
#include <numeric>

#include "content/common/random.hpp"
#include "content/exercise/in_accents.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/rude.hpp"

namespace wrenlet::desk {

namespace {

/// The words that the item is about: what is asked and what is right.
std::set<std::string> wordsIn(const exercise::Item& item, const exercise::Vocabulary& vocabulary) {
    std::set<std::string> words;
    for (const std::string& id : {item.subject, item.choices[item.answer].id})
        if (vocabulary.word(id) != nullptr || vocabulary.sentence(id) != nullptr) words.insert(id);
    return words;
}

bool shares(const std::set<std::string>& a, const std::set<std::string>& b) {
    return std::any_of(a.begin(), a.end(), [&](const std::string& id) { return b.count(id) > 0; });
}

}  // namespace

std::set<std::string> practisedWords(std::span<const practice::Response> responses) {
    std::set<std::string> words;
    for (const practice::Response& response : responses) {
        words.insert(response.asked);
        words.insert(response.chosen);
        words.insert(response.choices.begin(), response.choices.end());
    }
    return words;
}

std::vector<AskedAloud> probeFor(exercise::Skill skill, const exercise::Vocabulary& vocabulary,
                                 const std::set<std::string>& practised,
                                 const speech::BlockList& blocked, std::uint64_t seed,
                                 std::size_t most) {
    std::vector<exercise::Item> items = exercise::makeItems(vocabulary, skill);
    std::erase_if(items, [&](const exercise::Item& item) {
        const auto words = wordsIn(item, vocabulary);
        return words.empty() || shares(words, practised);
    });
    Random random(seed);
    random.shuffle(items);
    std::vector<AskedAloud> probe;
    std::set<std::string> used;
    std::map<std::string, std::size_t> on_sound;
    for (std::size_t may = 1; may <= most && probe.size() < most; ++may)
        for (const exercise::Item& item : items) {
            if (probe.size() == most) break;
            if (on_sound[item.turns_on.sound] >= may) continue;
            const auto words = wordsIn(item, vocabulary);
            if (shares(words, used) || exercise::isRude(item, vocabulary, blocked) ||
                !exercise::holdsIn(speech::allAccents(), item, vocabulary))
                continue;
            used.insert(words.begin(), words.end());
            ++on_sound[item.turns_on.sound];
            probe.push_back({std::string(exercise::rowOf(skill).id), item.turns_on, item.subject,
                             asking(item, vocabulary).aloud, true});
        }
    return probe;
}

Transfer transferOf(std::span<const practice::Response> responses,
                    std::span<const practice::Heard> heard, std::string_view child,
                    std::string_view skill) {
    Transfer transfer;
    for (const practice::Response& response : responses) {
        if (!response.isEvidence() || response.child != child || response.skill != skill) continue;
        ++transfer.practised;
        transfer.practised_right += response.isRight();
    }
    for (const practice::Heard& one : heard) {
        if (one.child != child || one.skill != skill) continue;
        if (one.is_new_word) {
            transfer.new_words.add(one.mark);
        } else if (one.mark != practice::HeardAs::almost) {
            ++transfer.practised;
            transfer.practised_right += one.mark == practice::HeardAs::right;
        }
    }
    return transfer;
}

}  // namespace wrenlet::desk
