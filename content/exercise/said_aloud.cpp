#include <map>

#include "content/exercise/classroom_words.hpp"
#include "content/exercise/list_lines.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;
using speech::Stress;

/// The parts in a row: the first keeps its stress, as compounds are stressed.
Pronunciation inARow(const std::vector<Pronunciation>& parts) {
    Pronunciation whole;
    for (std::size_t i = 0; i < parts.size(); ++i)
        for (speech::Sound sound : parts[i]) {
            if (i > 0 && sound.stress == Stress::primary) sound.stress = Stress::secondary;
            whole.push_back(sound);
        }
    return whole;
}

}  // namespace

Result<std::vector<Word>> saidAloud(const std::vector<ClassroomWord>& words,
                                    const speech::Lexicon& lexicon, std::string_view where) {
    ListNotes notes(where);
    std::map<std::string, Pronunciation, std::less<>> sounds;
    for (const ClassroomWord& word : words) {
        if (word.said_as_parts) continue;
        Pronunciation said = word.said;
        if (said.empty())
            if (const auto listed = lexicon.lookUp(word.text); !listed.empty())
                said = listed.front();
        if (!said.empty()) sounds.emplace(word.id, std::move(said));
    }
    std::vector<Word> out;
    for (const ClassroomWord& word : words) {
        std::vector<Pronunciation> parts;
        for (const std::string& part : word.parts)
            if (const auto found = sounds.find(part); found != sounds.end())
                parts.push_back(found->second);
        const auto own = sounds.find(word.id);
        if (parts.size() != word.parts.size() || (own == sounds.end() && !word.said_as_parts)) {
            notes.add(word.line, shown(word.id) + " or a part of it is not in the dictionary.",
                      "Write its sounds in the list's last column.");
            continue;
        }
        out.push_back({word.id, word.text, word.said_as_parts ? inARow(parts) : own->second,
                       word.parts, word.picture});
    }
    return {std::move(out), notes.take()};
}

}  // namespace wrenlet::exercise
