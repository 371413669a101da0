#include "content/speech/lexicon.hpp"

#include <array>
#include <optional>
#include <string>

#include "content/speech/lexicon_file.hpp"
#include "content/common/mapped_file.hpp"

namespace wrenlet::speech {

namespace {

constexpr std::size_t kMostLexiconBytes = 64u << 20;

std::uint32_t numberAt(std::string_view bytes, std::size_t at) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i)
        number |= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[at + i])) << (8 * i);
    return number;
}

/// Reads on through bytes that may be damaged: past the end it yields nothing and says so.
class Reader {
  public:
    explicit Reader(std::string_view bytes) : rest_(bytes) {}

    std::uint8_t byte() {
        const std::string_view one = take(1);
        return one.empty() ? 0 : static_cast<std::uint8_t>(one.front());
    }
    std::string_view take(std::size_t count) {
        if (count > rest_.size()) {
            failed_ = true;
            return {};
        }
        const std::string_view taken = rest_.substr(0, count);
        rest_.remove_prefix(count);
        return taken;
    }
    bool atEnd() const { return failed_ || rest_.empty(); }
    bool failed() const { return failed_; }

  private:
    std::string_view rest_;
    bool failed_ = false;
};

/// A word as it stands in the dictionary, in a fixed place: a look-up allocates nothing for it.
struct Letters {
    std::array<char, kMostWordLetters> text{};
    std::size_t size = 0;
    std::string_view view() const { return {text.data(), size}; }
};

/// Lower case, with a plain apostrophe for a typographer's. Nothing for what no entry can be.
std::optional<Letters> asEntry(std::string_view word) {
    constexpr std::string_view kCurly = "\u2019";
    Letters letters;
    while (!word.empty()) {
        if (letters.size == kMostWordLetters) return std::nullopt;
        char letter = word.front();
        std::size_t width = 1;
        if (word.substr(0, kCurly.size()) == kCurly) {
            letter = '\'';
            width = kCurly.size();
        } else if (letter >= 'A' && letter <= 'Z') {
            letter = static_cast<char>(letter - 'A' + 'a');
        }
        letters.text[letters.size++] = letter;
        word.remove_prefix(width);
    }
    if (letters.size == 0) return std::nullopt;
    return letters;
}

/// The entries of a block, one after another.
class Entries {
  public:
    explicit Entries(std::string_view block) : reader_(block) {}

    /// False at the end, and where the block is damaged.
    bool next() {
        if (reader_.atEnd()) return false;
        const std::size_t shared = reader_.byte();
        const std::string_view further = reader_.take(reader_.byte());
        packed_ = reader_.take(reader_.byte());
        if (reader_.failed() || shared > letters_.size ||
            further.size() > kMostWordLetters - shared)
            return false;
        further.copy(letters_.text.data() + shared, further.size());
        letters_.size = shared + further.size();
        return true;
    }
    std::string_view word() const { return letters_.view(); }
    std::string_view packed() const { return packed_; }

  private:
    Reader reader_;
    Letters letters_;
    std::string_view packed_;
};

std::vector<Pronunciation> unpack(std::string_view packed) {
    std::vector<Pronunciation> said;
    Reader reader(packed);
    while (!reader.atEnd()) {
        const std::string_view codes = reader.take(reader.byte());
        Pronunciation sounds;
        sounds.reserve(codes.size());
        for (const char code : codes) {
            const auto phoneme = static_cast<unsigned char>(code) & 0x3Fu;
            const auto stress = static_cast<unsigned char>(code) >> 6;
            if (phoneme >= kPhonemeCount || stress > 2) return said;
            sounds.push_back({static_cast<Phoneme>(phoneme), static_cast<Stress>(stress)});
        }
        if (!sounds.empty()) said.push_back(std::move(sounds));
    }
    return said;
}

}  // namespace

struct Lexicon::Mapping {
    MappedFile file;
    std::size_t words = 0;
    std::size_t blocks = 0;

    /// A block's bytes; empty when the index is damaged.
    std::string_view block(std::size_t number) const {
        const std::string_view bytes = file.bytes();
        const std::size_t begin = begins(number);
        const std::size_t end = number + 1 < blocks ? begins(number + 1) : bytes.size();
        if (begin > end || end > bytes.size()) return {};
        return bytes.substr(begin, end - begin);
    }

    /// The last block whose first word is not after `word`.
    std::string_view blockOf(std::string_view word) const {
        std::size_t low = 0, high = blocks;
        while (high - low > 1) {
            const std::size_t middle = low + (high - low) / 2;
            Reader reader(block(middle));
            reader.byte();
            const std::string_view first = reader.take(reader.byte());
            (first <= word ? low : high) = middle;
        }
        return block(low);
    }

  private:
    std::size_t begins(std::size_t number) const {
        return numberAt(file.bytes(), kLexiconHeaderSize + 4 * number);
    }
};

Result<Lexicon> Lexicon::open(const std::filesystem::path& path) {
    auto file = MappedFile::open(path, kMostLexiconBytes);
    if (!file.ok()) return file.problems();
    const std::string_view bytes = file.value().bytes();
    const auto refused = [&path](std::string what) {
        return Problem{path.filename().string(), std::move(what), "Build or copy it again."};
    };

    if (bytes.size() < kLexiconHeaderSize || bytes.substr(0, kLexiconMagic.size()) != kLexiconMagic)
        return refused("The file is not a dictionary of ours.");
    if (numberAt(bytes, 8) != kLexiconVersion)
        return refused("The dictionary is of another version.");
    const std::size_t words = numberAt(bytes, 12);
    const std::size_t blocks = numberAt(bytes, 16);
    if (numberAt(bytes, 20) != bytes.size() || blocks == 0 || blocks > words ||
        blocks > (bytes.size() - kLexiconHeaderSize) / 4)
        return refused("The dictionary is cut short or damaged.");
    if (numberAt(bytes, 24) !=
        lexiconCheck(bytes.substr(0, 24), bytes.substr(kLexiconHeaderSize, 4 * blocks)))
        return refused("The dictionary is damaged.");

    return Lexicon(std::make_unique<Mapping>(Mapping{std::move(file.value()), words, blocks}));
}

std::vector<Pronunciation> Lexicon::lookUp(std::string_view word) const {
    const std::optional<Letters> wanted = asEntry(word);
    if (!wanted) return {};
    Entries entries(mapping_->blockOf(wanted->view()));
    while (entries.next() && entries.word() <= wanted->view())
        if (entries.word() == wanted->view()) return unpack(entries.packed());
    return {};
}

void Lexicon::forEach(
    const std::function<void(std::string_view, const std::vector<Pronunciation>&)>& visit) const {
    for (std::size_t number = 0; number < mapping_->blocks; ++number)
        for (Entries entries(mapping_->block(number)); entries.next();)
            visit(entries.word(), unpack(entries.packed()));
}

std::size_t Lexicon::wordCount() const {
    return mapping_->words;
}

Lexicon::Lexicon(std::unique_ptr<Mapping> mapping) : mapping_(std::move(mapping)) {}
Lexicon::Lexicon(Lexicon&&) noexcept = default;
Lexicon& Lexicon::operator=(Lexicon&&) noexcept = default;
Lexicon::~Lexicon() = default;

}  // namespace wrenlet::speech
