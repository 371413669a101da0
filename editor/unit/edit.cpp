#include "editor/unit/edit.hpp"

#include <algorithm>

#include "editor/edits/put_row.hpp"

namespace wrenlet::desk {

namespace {

const std::string& sentenceId(const pack::UnitSentence& sentence) {
    return sentence.id;
}

/// Returns whether it was in before.
bool putIn(std::vector<std::string>& sorted, const std::string& id, bool in) {
    const auto place = std::lower_bound(sorted.begin(), sorted.end(), id);
    const bool was_in = place != sorted.end() && *place == id;
    if (in && !was_in) sorted.insert(place, id);
    if (!in && was_in) sorted.erase(place);
    return was_in;
}

bool isBefore(const pack::UnitRecording& recording, const std::string& clip) {
    return recording.clip < clip;
}

struct Applied {
    pack::Unit& unit;

    Edit operator()(const PutWord& put) const {
        Was<pack::UnitWord> was = putRow(unit.words, put.id, put.word, put.at, pack::wordId);
        return PutWord{std::move(was.id), std::move(was.row), was.at};
    }
    Edit operator()(const PutSentence& put) const {
        Was<pack::UnitSentence> was =
            putRow(unit.sentences, put.id, put.sentence, put.at, sentenceId);
        return PutSentence{std::move(was.id), std::move(was.row), was.at};
    }
    Edit operator()(const PutTitle& put) const {
        return PutTitle{std::exchange(unit.title, put.title)};
    }
    Edit operator()(const PutAccents& put) const {
        return PutAccents{std::exchange(unit.accents, put.accents)};
    }
    Edit operator()(const PutSkillOff& put) const {
        return PutSkillOff{put.skill, putIn(unit.skills_off, put.skill, put.off)};
    }
    Edit operator()(const PutItemOff& put) const {
        return PutItemOff{put.item, putIn(unit.items_off, put.item, put.off)};
    }
    Edit operator()(const PutFocusSound& put) const {
        return PutFocusSound{put.sound, putIn(unit.focus_sounds, put.sound, put.on)};
    }
    Edit operator()(const PutRecording& put) const {
        auto& all = unit.recordings;
        const auto place = std::lower_bound(all.begin(), all.end(), put.clip, isBefore);
        PutRecording back{put.clip, {}};
        if (place != all.end() && place->clip == put.clip) {
            back.recording = std::move(*place);
            if (put.recording)
                *place = *put.recording;
            else
                all.erase(place);
        } else if (put.recording) {
            all.insert(place, *put.recording);
        }
        return back;
    }
};

void sortOnce(std::vector<std::string>& ids) {
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
}

}  // namespace

pack::Unit inOrder(pack::Unit unit) {
    sortOnce(unit.skills_off);
    sortOnce(unit.items_off);
    sortOnce(unit.focus_sounds);
    std::sort(unit.recordings.begin(), unit.recordings.end(),
              [](const auto& a, const auto& b) { return a.clip < b.clip; });
    for (pack::UnitWord& word : unit.words) word.place = 0;
    for (pack::UnitSentence& sentence : unit.sentences) sentence.place = 0;
    return unit;
}

Edit apply(pack::Unit& unit, const Edit& edit) {
    return std::visit(Applied{unit}, edit);
}

}  // namespace wrenlet::desk
