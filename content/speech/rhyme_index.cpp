#include "content/speech/rhyme_index.hpp"

#include <algorithm>

#include "content/speech/rhyme.hpp"

namespace wrenlet::speech {

namespace {

/// A byte a sound; stress does not matter to a rhyme.
std::string packed(const Pronunciation& sounds) {
    std::string bytes;
    for (const Sound& sound : sounds) bytes += static_cast<char>(sound.phoneme);
    return bytes;
}

struct Row {
    std::string rime, onset;
    std::uint32_t word;
    std::uint8_t size;
    bool likeliest;
};

}  // namespace

RhymeIndex::RhymeIndex(const Lexicon& lexicon) {
    std::vector<Row> rows;
    rows.reserve(lexicon.wordCount() + lexicon.wordCount() / 8);
    lexicon.forEach([&](std::string_view word, const std::vector<Pronunciation>& said) {
        const auto at = static_cast<std::uint32_t>(words_.size());
        words_ += word;
        for (const Pronunciation& sounds : said) {
            std::string rime = packed(rhymingKey(sounds));
            if (rime.empty()) continue;
            rows.push_back({std::move(rime), packed(rhymingOnset(sounds)), at,
                            static_cast<std::uint8_t>(word.size()), &sounds == &said.front()});
        }
    });
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        const int rimes = a.rime.compare(b.rime);
        return rimes != 0 ? rimes < 0 : a.onset < b.onset;
    });

    entries_.reserve(rows.size());
    for (const Row& row : rows) {
        const bool begins_group = groups_.empty() || rimeOf(groups_.back()) != row.rime ||
                                  onsetOf(groups_.back()) != row.onset;
        if (begins_group) {
            groups_.push_back({static_cast<std::uint32_t>(keys_.size()),
                               static_cast<std::uint8_t>(row.rime.size()),
                               static_cast<std::uint8_t>(row.onset.size()),
                               static_cast<std::uint32_t>(entries_.size())});
            keys_ += row.rime;
            keys_ += row.onset;
        }
        entries_.push_back({row.word, row.size, row.likeliest});
    }
    for (auto* text : {&words_, &keys_}) text->shrink_to_fit();
    groups_.shrink_to_fit();
}

std::string_view RhymeIndex::rimeOf(const Group& group) const {
    return std::string_view(keys_).substr(group.key, group.rime_size);
}

std::string_view RhymeIndex::onsetOf(const Group& group) const {
    return std::string_view(keys_).substr(group.key + group.rime_size, group.onset_size);
}

std::vector<RhymingWord> RhymeIndex::rhymesOf(const Pronunciation& said) const {
    const std::string rime = packed(rhymingKey(said)), onset = packed(rhymingOnset(said));
    std::vector<RhymingWord> found;
    if (rime.empty()) return found;
    auto group =
        std::lower_bound(groups_.begin(), groups_.end(), rime,
                         [this](const Group& a, std::string_view key) { return rimeOf(a) < key; });
    for (; group != groups_.end() && rimeOf(*group) == rime; ++group) {
        if (onsetOf(*group) == onset) continue;  // the same is heard twice
        const std::size_t end = group + 1 == groups_.end() ? entries_.size() : (group + 1)->first;
        for (std::size_t i = group->first; i < end; ++i)
            found.push_back({std::string_view(words_).substr(entries_[i].word, entries_[i].size),
                             entries_[i].likeliest});
    }
    std::sort(found.begin(), found.end(), [](const RhymingWord& a, const RhymingWord& b) {
        return a.word != b.word ? a.word < b.word : a.likeliest > b.likeliest;
    });
    const auto same = [](const RhymingWord& a, const RhymingWord& b) { return a.word == b.word; };
    found.erase(std::unique(found.begin(), found.end(), same), found.end());
    return found;
}

std::size_t RhymeIndex::bytes() const {
    return sizeof *this + words_.capacity() + keys_.capacity() +
           groups_.capacity() * sizeof(Group) + entries_.capacity() * sizeof(Entry);
}

}  // namespace wrenlet::speech
