#include "editor/document/opened_unit.hpp"

#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_json.hpp"
#include "content/pack/pasted_words.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::uint64_t kMostPastedBytes = 64ull << 20;  // of which the reader takes the first

/// What the classroom list says of a word that was only written.
void complete(pack::UnitWord& word, const KnownWords& known) {
    const Result<KnownWord> found = known.find(word.text);
    const exercise::Word* listed = found.ok() ? known.classroom().word(found.value().id) : nullptr;
    if (listed == nullptr) return;
    word.compound = listed->compound;
    word.picture = listed->picture;
    for (const speech::Sound& sound : listed->sounds) word.sounds.push_back(pack::soundText(sound));
}

Result<pack::Unit> listedUnit(const std::string& text, const std::string& where,
                              const KnownWords& known) {
    Result<std::vector<pack::UnitWord>> words = pack::readPastedWords(text, where);
    if (!words.ok()) return words.problems();
    pack::Unit unit;
    unit.where = where;
    unit.title = where;
    unit.words = std::move(words.value());
    for (pack::UnitWord& word : unit.words) complete(word, known);
    return {std::move(unit), words.problems()};
}

/// A picture that is not in the set is not shown, as when the pack is built.
void leaveOutPictures(OpenedUnit& opened, const std::filesystem::path& pictures) {
    for (exercise::Word& word : opened.vocabulary.words) {
        std::error_code error;
        if (word.picture.empty()) continue;
        if (std::filesystem::exists(pictures / (word.picture + ".svg"), error)) continue;
        opened.problems.push_back(
            {opened.unit.where, "There is no picture " + pack::inQuotes(word.picture) + ".",
             "Choose another name, or leave it out.", Problem::Weight::warning});
        word.picture.clear();
    }
}

}  // namespace

Result<OpenedUnit> openUnit(const std::filesystem::path& path, const KnownWords& known,
                            const std::filesystem::path& pictures) {
    const bool is_list = path.extension() == ".txt";
    const std::string where = path.filename().string();
    const Result<std::string> bytes =
        readWhole(path, is_list ? kMostPastedBytes : pack::kMostUnitBytes);
    if (!bytes.ok()) return bytes.problems();
    Result<pack::Unit> unit =
        is_list ? listedUnit(bytes.value(), where, known) : pack::readUnit(bytes.value(), where);
    if (!unit.ok()) return unit.problems();
    OpenedUnit opened;
    opened.unit = std::move(unit.value());
    opened.problems = unit.problems();
    pack::KnownVocabulary words = pack::readKnownWords(opened.unit, known.lexicon());
    opened.vocabulary = std::move(words.vocabulary);
    opened.problems.insert(opened.problems.end(), words.problems.begin(), words.problems.end());
    leaveOutPictures(opened, pictures);
    for (const pack::UnitWord& word : opened.unit.words) {
        const std::string id = pack::wordId(word);
        const exercise::Word* found = opened.vocabulary.word(id);
        opened.asked.push_back(found != nullptr ? *found
                                                : exercise::Word{id, word.text, {}, {}, ""});
    }
    return opened;
}

}  // namespace wrenlet::desk
