#include "editor/bring/bring_in.hpp"

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/media_check.hpp"
#include "content/pack/pack_json.hpp"
#include "editor/look/wording.hpp"
#include "editor/unit/unit_folder.hpp"
#include "editor/voice/audio_file.hpp"

namespace wrenlet::desk {

namespace {

using Kind = BroughtLine::Kind;

/// FNV-1a of 64 bits, the same on every machine.
std::string nameOf(std::string_view lead, std::string_view bytes) {
    std::uint64_t hash = 0xcbf29ce484222325u;
    for (const char byte : bytes) hash = (hash ^ static_cast<unsigned char>(byte)) * 0x100000001b3u;
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return std::string(lead) + text;
}

class Bringing {
  public:
    Bringing(const Brought& brought, const std::string& whose, const pack::Unit& unit,
             const std::filesystem::path& folder, const std::filesystem::path& picture_set)
        : brought_(brought), whose_(whose), unit_(unit), folder_{folder}, set_(picture_set) {
        for (const pack::UnitWord& word : unit.words) words_.insert(pack::wordId(word));
        for (const pack::UnitSentence& sentence : unit.sentences) {
            sentence_ids_.insert(sentence.id);
            by_text_[sentence.text] = sentence.id;
        }
    }

    Result<Action> take(const std::vector<BroughtLine>& lines) {
        std::size_t count = 0;
        for (const BroughtLine& line : lines) {
            if (!line.is_taken) continue;
            ++count;
            if (auto done = takeLine(line); !done.ok()) {
                takeAway();
                return done.problems();
            }
        }
        // changes of one word, one edit
        for (auto& [id, word] : changed_) {
            const auto at = std::find_if(
                unit_.words.begin(), unit_.words.end(),
                [&, wanted = id](const auto& one) { return pack::wordId(one) == wanted; });
            edits_.push_back(
                PutWord{id, std::move(word), static_cast<std::size_t>(at - unit_.words.begin())});
        }
        return Action{wording::counted(std::int64_t(count), "thing") + " brought in from " +
                          brought_.title + ".",
                      std::move(edits_)};
    }

  private:
    Result<Done> takeLine(const BroughtLine& line) {
        if (line.kind == Kind::sentence) return takeSentence(line.id);
        if (line.kind == Kind::recording) return takeRecording(line.id);
        const pack::UnitWord* there = nullptr;
        for (const pack::UnitWord& word : brought_.words)
            if (pack::wordId(word) == line.id) there = &word;
        if (there == nullptr) return Done{};
        if (line.kind == Kind::word) return takeWord(*there);
        pack::UnitWord& word = inHand(line.id);
        if (line.kind == Kind::sounds) {
            word.sounds.clear();
            if (const exercise::Word* said = brought_.vocabulary.word(line.id))
                for (const speech::Sound& sound : said->sounds)
                    word.sounds.push_back(pack::soundText(sound));
            return Done{};
        }
        return takePicture(there->picture, word.picture);
    }
    Result<Done> takeWord(pack::UnitWord word) {
        if (unit_.words.size() + added_words_ >= pack::kMostUnitWords)
            return Problem{unit_.title, "A unit holds 2,000 words; these do not all go in.",
                           "Choose fewer, or make a second unit."};
        if (!words_.insert(pack::wordId(word)).second) return Done{};
        word.place = 0;
        const std::string picture = std::exchange(word.picture, {});
        if (auto done = takePicture(picture, word.picture); !done.ok()) return done;
        edits_.push_back(PutWord{"", std::move(word), unit_.words.size() + added_words_++});
        return Done{};
    }
    Result<Done> takeSentence(const std::string& id) {
        for (pack::UnitSentence sentence : brought_.sentences) {
            if (sentence.id != id) continue;
            for (std::size_t number = 1; !sentence_ids_.insert(sentence.id).second; ++number)
                sentence.id = "s-" + std::to_string(number);
            by_text_[sentence.text] = sentence.id;
            edits_.push_back(
                PutSentence{"", sentence, unit_.sentences.size() + added_sentences_++});
        }
        return Done{};
    }
    Result<Done> takeRecording(const std::string& clip) {
        for (const BroughtRecording& one : brought_.recordings) {
            if (one.clip != clip) continue;
            std::string bytes = one.bytes;
            std::string ending = ".ogg";
            if (!one.file.empty()) {
                auto read = readWhole(one.file, kMostRecordingBytes);
                if (!read.ok()) return read.problems();
                if (const auto sound = decodeTake(read.value(), one.file.filename().string());
                    !sound.ok())
                    return sound.problems();
                bytes = std::move(read.value());
                ending = one.file.extension().string();
            }
            const std::string name = nameOf("brought-", bytes) + ending;
            if (auto put = putFile(folder_.takes(), name, bytes); !put.ok()) return put;
            pack::UnitRecording recording{clipHere(one), name,      one.said,
                                          one.from_us,   one.to_us, {}};
            recording.voice = one.whose.empty() ? whose_ : one.whose;
            edits_.push_back(PutRecording{recording.clip, recording});
        }
        return Done{};
    }
    /// A sentence may have another id here.
    std::string clipHere(const BroughtRecording& one) const {
        for (const pack::UnitSentence& sentence : brought_.sentences)
            if (exercise::sentenceClip(sentence.id) == one.clip)
                if (const auto at = by_text_.find(sentence.text); at != by_text_.end())
                    return exercise::sentenceClip(at->second);
        return one.clip;
    }
    Result<Done> takePicture(const std::string& name, std::string& into) {
        into = name;
        for (const BroughtPicture& picture : brought_.pictures) {
            if (picture.name != name || picture.bytes.empty()) continue;
            const auto same = readWhole(set_ / (name + ".svg"), pack::kMostPictureBytes);
            if (same.ok() && same.value() == picture.bytes) continue;
            into = nameOf("own-", picture.bytes);
            const bool is_png = picture.bytes.compare(0, 4, "\x89PNG") == 0;
            if (auto put =
                    putFile(folder_.pictures(), into + (is_png ? ".png" : ".svg"), picture.bytes);
                !put.ok())
                return put;
        }
        return Done{};
    }
    Result<Done> putFile(const std::filesystem::path& folder, const std::string& name,
                         const std::string& bytes) {
        std::error_code error;
        // a classroom folder that is gone is not made anew: it may be a stick
        if (!std::filesystem::is_directory(folder_.folder, error))
            return Problem{folder_.folder.string(), "The unit's folder is not there.",
                           "Plug the stick in again, or look whether the share can be reached."};
        std::filesystem::create_directory(folder, error);
        const auto file = folder / name;
        if (std::filesystem::exists(file, error)) return Done{};
        Result<Done> written = writeWhole(file, bytes);
        if (written.ok()) made_.push_back(file);
        return written;
    }
    void takeAway() {
        std::error_code error;
        for (const auto& file : made_) std::filesystem::remove(file, error);
    }
    pack::UnitWord& inHand(const std::string& id) {
        for (auto& [known, word] : changed_)
            if (known == id) return word;
        for (const pack::UnitWord& word : unit_.words)
            if (pack::wordId(word) == id) changed_.emplace_back(id, word);
        return changed_.back().second;
    }

    const Brought& brought_;
    const std::string& whose_;
    const pack::Unit& unit_;
    UnitFolder folder_;
    std::filesystem::path set_;
    std::set<std::string> words_, sentence_ids_;
    std::map<std::string, std::string> by_text_;
    std::vector<std::pair<std::string, pack::UnitWord>> changed_;
    std::vector<Edit> edits_;
    std::vector<std::filesystem::path> made_;
    std::size_t added_words_ = 0, added_sentences_ = 0;
};

}  // namespace

Result<Action> bringIn(const Brought& brought, const std::vector<BroughtLine>& lines,
                       const std::string& whose, const pack::Unit& unit,
                       const std::filesystem::path& unit_folder,
                       const std::filesystem::path& picture_set) {
    return Bringing(brought, whose, unit, unit_folder, picture_set).take(lines);
}

}  // namespace wrenlet::desk
