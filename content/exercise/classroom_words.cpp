#include "content/exercise/classroom_words.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "content/exercise/list_lines.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;
using speech::Stress;

enum Column { kId, kText, kSense, kParts, kPicture, kTopics, kSaid, kColumns };

constexpr std::string_view kPartTopic = "part";
constexpr std::string_view kSaidAsParts = "parts";

bool isPlain(std::string_view text) {
    return !text.empty() && text.size() <= 40 && std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || c == '-';
    });
}

std::vector<std::string> byBlanks(std::string_view text) {
    std::vector<std::string> out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) out.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

std::string lowered(std::string_view text) {
    std::string out(text);
    for (char& letter : out)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return out;
}

std::optional<speech::Sound> soundOf(std::string_view text) {
    struct Mark {
        std::string_view sign;
        Stress stress;
    };
    static constexpr Mark kMarks[] = {{"ˈ", Stress::primary}, {"ˌ", Stress::secondary}};
    Stress stress = Stress::none;
    for (const Mark& mark : kMarks) {
        if (text.substr(0, mark.sign.size()) != mark.sign) continue;
        stress = mark.stress;
        text.remove_prefix(mark.sign.size());
        break;
    }
    const auto phoneme = speech::fromIpa(text);
    if (!phoneme || (stress != Stress::none && !speech::isVowel(*phoneme))) return std::nullopt;
    return speech::Sound{*phoneme, stress};
}

/// Nothing if a sign is no sound of English, or there is no vowel to say it by.
std::optional<Pronunciation> soundsOf(std::string_view text) {
    Pronunciation sounds;
    for (const std::string& sign : byBlanks(text)) {
        const auto sound = soundOf(sign);
        if (!sound) return std::nullopt;
        sounds.push_back(*sound);
    }
    const auto isStressed = [](const speech::Sound& s) { return s.stress == Stress::primary; };
    const auto isVowel = [](const speech::Sound& s) { return speech::isVowel(s.phoneme); };
    const auto vowel = std::find_if(sounds.begin(), sounds.end(), isVowel);
    if (vowel == sounds.end()) return std::nullopt;
    if (std::none_of(sounds.begin(), sounds.end(), isStressed)) vowel->stress = Stress::primary;
    return sounds;
}

class Reader {
  public:
    explicit Reader(std::string_view where) : notes_(where) {}

    Result<std::vector<ClassroomWord>> read(std::string_view text) {
        for (const ListLine& line : listLines(text, notes_)) {
            if (words_.size() == kMostListedWords) {
                notes_.add(line.number, "The list has more than 5000 words; the rest is not read.",
                           "Make two lists of it.");
                break;
            }
            readLine(line);
        }
        leaveOutBroken();
        return {std::move(words_), notes_.take()};
    }

  private:
    void readLine(const ListLine& line) {
        if (line.columns.size() > kColumns)
            return notes_.add(line.number, "This line has more columns than the list.",
                              "Take the last tabs away.");
        ClassroomWord word;
        word.line = line.number;
        word.id = lowered(line.column(kId));
        const std::size_t tilde = word.id.find('~');
        const std::string spelled = word.id.substr(0, tilde);
        word.text = line.column(kText).empty() ? spelled : line.column(kText);
        for (const std::string_view part : {std::string_view(spelled), std::string_view(word.text)})
            if (const std::string why = whyNotListed(part); !why.empty())
                return notes_.add(line.number, shown(part) + " " + why + ".",
                                  "Write one English word with the letters a to z.");
        if (tilde != std::string::npos && !isPlain(std::string_view(word.id).substr(tilde + 1)))
            return notes_.add(line.number, shown(word.id) + " has no plain word after its \"~\".",
                              "Name the sense with small letters, like bow~rain.");
        if (!ids_.insert(word.id).second)
            return notes_.add(line.number, shown(word.id) + " stands in the list already.",
                              "Leave one out, or name the sense, like bow~rain.");
        word.sense = line.column(kSense);
        word.parts = byBlanks(line.column(kParts));
        readTopics(line, word);
        readPicture(line, word);
        if (readSaid(line, word)) words_.push_back(std::move(word));
    }

    void readTopics(const ListLine& line, ClassroomWord& word) {
        for (const std::string& topic : byBlanks(line.column(kTopics))) {
            if (topic == kPartTopic)
                word.part_only = true;
            else if (isPlain(topic))
                word.topics.push_back(topic);
            else
                notes_.add(line.number, shown(topic) + " is no plain topic.",
                           "Use small letters, like \"animals\".");
        }
    }

    void readPicture(const ListLine& line, ClassroomWord& word) {
        const std::string_view picture = line.column(kPicture);
        if (picture.empty()) return;
        if (!isPlain(picture))
            notes_.add(line.number, shown(picture) + " is no picture's name.",
                       "Use a name from pictures.tsv.");
        else if (!pictures_.insert(std::string(picture)).second)
            notes_.add(line.number, "The picture " + shown(picture) + " shows another word.",
                       "Give each word a picture of its own, or none.");
        else
            word.picture = picture;
    }

    /// False, with a note, if what is written cannot be said.
    bool readSaid(const ListLine& line, ClassroomWord& word) {
        const std::string_view said = line.column(kSaid);
        if (said.empty()) return true;
        if (said == kSaidAsParts) {
            word.said_as_parts = !word.parts.empty();
            if (!word.said_as_parts)
                notes_.add(line.number, shown(word.id) + " is said as its parts but has none.",
                           "Write its parts, or its sounds in IPA.");
            return word.said_as_parts;
        }
        auto sounds = soundsOf(said);
        if (!sounds) {
            notes_.add(line.number, "\"" + word.id + "\" has sounds that are not English in IPA.",
                       "Write each sound by itself, like \"k æ t\".");
            return false;
        }
        word.said = std::move(*sounds);
        return true;
    }

    /// Takes out compounds with a part that the list lacks, until no more fall.
    void leaveOutBroken() {
        for (bool again = true; again;) {
            std::set<std::string, std::less<>> kept;
            for (const ClassroomWord& word : words_) kept.insert(word.id);
            const auto isBroken = [&](const ClassroomWord& word) {
                for (const std::string& part : word.parts) {
                    if (part != word.id && kept.count(part) > 0) continue;
                    notes_.add(word.line, "Its part " + shown(part) + " is not in the list.",
                               "Write that word too; mark it \"part\" if it is only a part.");
                    return true;
                }
                return false;
            };
            const auto end = std::remove_if(words_.begin(), words_.end(), isBroken);
            again = end != words_.end();
            words_.erase(end, words_.end());
        }
    }

    ListNotes notes_;
    std::vector<ClassroomWord> words_;
    std::set<std::string, std::less<>> ids_;
    std::set<std::string, std::less<>> pictures_;
};

}  // namespace

Result<std::vector<ClassroomWord>> readClassroomWords(std::string_view text,
                                                      std::string_view where) {
    return Reader(where).read(text);
}

}  // namespace wrenlet::exercise
