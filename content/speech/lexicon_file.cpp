#include "content/speech/lexicon_file.hpp"

#include <algorithm>

namespace wrenlet::speech {

namespace {

void putNumber(std::string& bytes, std::size_t number) {
    for (int shift = 0; shift < 32; shift += 8)
        bytes += static_cast<char>((number >> shift) & 0xFF);
}

void putByte(std::string& bytes, std::size_t number) {
    bytes += static_cast<char>(number);
}

std::string packPronunciations(const std::vector<Pronunciation>& said) {
    std::string bytes;
    for (const Pronunciation& sounds : said) {
        putByte(bytes, sounds.size());
        for (const Sound& sound : sounds) putByte(bytes, packSound(sound));
    }
    return bytes;
}

std::size_t sharedLetters(std::string_view a, std::string_view b) {
    const auto ends = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
    return static_cast<std::size_t>(ends.first - a.begin());
}

Problem refused(const std::string& word, std::string what) {
    return {"the dictionary", "\"" + word + "\" " + std::move(what), "Leave it out."};
}

}  // namespace

std::uint8_t packSound(const Sound& sound) {
    return static_cast<std::uint8_t>(static_cast<unsigned>(sound.phoneme) |
                                     static_cast<unsigned>(sound.stress) << 6);
}

std::uint32_t lexiconCheck(std::string_view header, std::string_view index) {
    std::uint32_t hash = 2166136261u;
    for (const std::string_view bytes : {header, index})
        for (const char byte : bytes) hash = (hash ^ static_cast<unsigned char>(byte)) * 16777619u;
    return hash;
}

Result<std::string> writeLexicon(std::vector<LexiconEntry> entries) {
    std::sort(entries.begin(), entries.end(),
              [](const LexiconEntry& a, const LexiconEntry& b) { return a.word < b.word; });
    if (entries.empty()) return Problem{"the dictionary", "It has no word.", ""};

    const std::size_t block_count = (entries.size() + kLexiconBlockWords - 1) / kLexiconBlockWords;
    const std::size_t blocks_begin = kLexiconHeaderSize + 4 * block_count;
    std::string index, blocks;
    std::string_view before;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto& [word, said] = entries[i];
        const std::string packed = packPronunciations(said);
        if (word.empty() || word.size() > kMostWordLetters)
            return refused(word, "is empty or too long.");
        if (i > 0 && entries[i - 1].word == word) return refused(word, "is there twice.");
        if (packed.size() > 255) return refused(word, "has too many pronunciations.");

        const bool begins_block = i % kLexiconBlockWords == 0;
        if (begins_block) putNumber(index, blocks_begin + blocks.size());
        const std::size_t shared = begins_block ? 0 : sharedLetters(before, word);
        putByte(blocks, shared);
        putByte(blocks, word.size() - shared);
        blocks += word.substr(shared);
        putByte(blocks, packed.size());
        blocks += packed;
        before = word;
    }

    std::string header(kLexiconMagic);
    putNumber(header, kLexiconVersion);
    putNumber(header, entries.size());
    putNumber(header, block_count);
    putNumber(header, blocks_begin + blocks.size());
    putNumber(header, lexiconCheck(header, index));
    return header + index + blocks;
}

}  // namespace wrenlet::speech
