#include "tests/bench/large_classroom.hpp"

#include <cstdio>
#include <map>
#include <span>
#include <string>
#include <vector>

#include "content/common/files.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/unit/unit_at_work.hpp"

namespace wrenlet::bench {

namespace {

constexpr std::uint64_t kMostListBytes = 8u << 20;

/// Lends the clips of another pack, in turn, each for something of its kind.
class Lent final : public pack::Media {
  public:
    Lent(const pack::Pack& from, std::filesystem::path pictures)
        : from_(from), pictures_(std::move(pictures)) {
        for (const pack::Clip& clip : from.clips) kinds_[kindOf(clip.id)].push_back(&clip);
    }

    std::vector<Result<pack::Clip>> clips(std::span<const pack::VoiceNeed> needs,
                                          const pack::Progress&) override {
        std::vector<Result<pack::Clip>> all;
        for (const pack::VoiceNeed& need : needs) all.push_back(clip(need));
        return all;
    }
    Result<pack::Picture> picture(std::string_view id) override {
        auto bytes = readWhole(pictures_ / (std::string(id) + ".svg"), kMostListBytes);
        if (!bytes.ok()) return bytes.problems();
        return pack::Picture{std::string(id), "", std::move(bytes.value())};
    }

  private:
    Result<pack::Clip> clip(const pack::VoiceNeed& need) {
        if (const pack::Clip* same = from_.clip(need.id)) return *same;
        const auto& kind = kinds_[kindOf(need.id)];
        if (kind.empty()) return Problem{need.id, "The starter has no clip of its kind.", ""};
        pack::Clip lent = *kind[lent_++ % kind.size()];
        lent.id = need.id;
        lent.text = need.text;
        return lent;
    }
    static std::string kindOf(std::string_view id) {
        return std::string(id.substr(0, id.find(':')));
    }

    const pack::Pack& from_;
    std::filesystem::path pictures_;
    std::map<std::string, std::vector<const pack::Clip*>> kinds_;
    std::size_t lent_ = 0;
};

std::string typed(const exercise::Vocabulary& list) {
    std::string words;
    std::size_t count = 0;
    for (const exercise::Word& word : list.words)
        if (!word.picture.empty() && word.id == word.text && count++ < kLargeWords)
            words += word.text + "\n";
    for (const exercise::Sentence& sentence : list.sentences) words += sentence.text + "\n";
    return words;
}

bool fails(const std::vector<Problem>& problems) {
    for (const Problem& problem : problems) std::fprintf(stderr, "%s\n", sentence(problem).c_str());
    return false;
}

}  // namespace

bool makeLargeClassroom(const std::filesystem::path& folder) {
    const std::filesystem::path share = WRENLET_TEST_SHARE;
    std::filesystem::copy(WRENLET_TEST_STARTER, folder, std::filesystem::copy_options::recursive);
    const pack::Classroom classroom{folder};
    auto list = pack::openClassList(classroom);
    if (!list.ok()) return fails(list.problems());
    const auto starter = pack::readPackFile(classroom.packFile(list.value().pack));
    if (!starter.ok()) return fails(starter.problems());
    const auto known = desk::KnownWords::open(share);
    if (!known.ok()) return fails(known.problems());

    desk::UnitAtWork work{pack::Unit{}};
    work.add(typed(known.value().classroom()), "words", known.value());
    pack::Unit unit = work.unit();
    unit.id = "five-hundred";
    unit.title = "Five hundred";
    Lent media(starter.value(), share / "pictures");
    const auto built =
        pack::buildPack(unit, 1, known.value().lexicon(), speech::BlockList(), media, {});
    if (!built.ok()) return fails(built.problems());
    const auto bytes = pack::writePack(built.value());
    if (!bytes.ok()) return fails(bytes.problems());
    std::fprintf(stderr, "a pack of %zu words, %zu sentences, %zu items, %zu clips, %.1f MB\n",
                 built.value().vocabulary.words.size(), built.value().vocabulary.sentences.size(),
                 built.value().items.size(), built.value().clips.size(),
                 static_cast<double>(bytes.value().size()) / 1e6);
    list.value().pack = "five-hundred-1.zip";
    const auto put = writeWhole(classroom.packFile(list.value().pack), bytes.value());
    if (!put.ok()) return fails(put.problems());
    const auto told = writeWhole(classroom.classFile(), pack::writeClassList(list.value()));
    return told.ok() || fails(told.problems());
}

}  // namespace wrenlet::bench
