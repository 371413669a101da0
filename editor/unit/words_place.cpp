#include "editor/unit/words_place.hpp"

#include <algorithm>

namespace wrenlet::desk {

namespace {

bool hasSomething(const UnitLook& look, const std::string& id) {
    const WordLook* word = look.word(id);
    return word != nullptr && !word->to_look_at.empty();
}

}  // namespace

std::vector<WordsRow> WordsPlace::rows(const OpenUnit& unit) const {
    std::vector<WordsRow> rows;
    for (const pack::UnitWord& word : unit.unit().words) {
        WordsRow row{pack::wordId(word), false};
        // the one in hand stays where it is when its last warning is answered
        if (filter == Filter::all || row == in_hand || hasSomething(unit.look(), row.id))
            rows.push_back(std::move(row));
    }
    if (filter == Filter::all)
        for (const pack::UnitSentence& sentence : unit.unit().sentences)
            rows.push_back({sentence.id, true});
    return rows;
}

void WordsPlace::move(int by, const OpenUnit& unit) {
    const std::vector<WordsRow> all = rows(unit);
    if (all.empty()) return;
    const auto at = std::find(all.begin(), all.end(), in_hand);
    if (at == all.end()) {
        in_hand = all.front();
        return;
    }
    const auto last = static_cast<std::ptrdiff_t>(all.size()) - 1;
    const auto to = std::clamp<std::ptrdiff_t>(at - all.begin() + by, 0, last);
    in_hand = all[static_cast<std::size_t>(to)];
}

void WordsPlace::choosePicture(const OpenUnit& unit) {
    if (isChoosingPicture())
        choosing.reset();
    else if (!in_hand.is_sentence && !in_hand.id.empty() && unit.canChange())
        choosing = PictureChoice::of(in_hand.id, unit);
}

void WordsPlace::add(OpenUnit& unit, std::string_view where) {
    if (!unit.canChange() || typed.empty()) return;
    std::string first;
    const std::size_t sentences = unit.unit().sentences.size();
    unit.change(
        [&](UnitAtWork& work) { not_taken = work.add(typed, where, unit.bench().known, &first); });
    if (!first.empty())
        in_hand = {first, false};
    else if (unit.unit().sentences.size() > sentences)
        in_hand = {unit.unit().sentences[sentences].id, true};
    const bool took_some = !first.empty() || unit.unit().sentences.size() > sentences;
    if (took_some || not_taken.empty()) typed.clear();
}

void WordsPlace::take(const WayOut& way, const ToLookAt& todo, OpenUnit& unit) {
    const std::string id = in_hand.id;
    const KnownWords& known = unit.bench().known;
    unit.change([&](UnitAtWork& work) {
        using Kind = WayOut::Kind;
        switch (way.kind) {
            case Kind::keep:
                return work.keepWarning(id, todo.code);
            case Kind::leave_out_of:
                return work.leaveOutOf(id, skillsOf(way.group), groupName(way.group), todo.code);
            case Kind::remove:
                return removeInHand(unit);
            case Kind::respell:
                if (work.respell(id, way.value, known)) in_hand.id = way.value;
                return;
            case Kind::say:
                return work.chooseSounds(id, way.sounds);
            case Kind::sense:
                if (work.chooseSense(id, way.value, known)) in_hand.id = way.value;
                return;
            case Kind::parts:
                return work.chooseParts(id, way.values);
            case Kind::no_picture:
                return work.choosePicture(id, "");
        }
    });
}

void WordsPlace::removeInHand(OpenUnit& unit) {
    const std::vector<WordsRow> all = rows(unit);
    const auto at = std::find(all.begin(), all.end(), in_hand);
    if (at == all.end() || !unit.canChange()) return;
    const WordsRow gone = in_hand;
    if (at + 1 != all.end())
        in_hand = *(at + 1);
    else
        in_hand = at == all.begin() ? WordsRow{} : *(at - 1);
    unit.change([&](UnitAtWork& work) {
        if (gone.is_sentence)
            work.removeSentence(gone.id);
        else
            work.removeWord(gone.id);
    });
}

std::optional<std::string> WordsPlace::nextToLookAt(const OpenUnit& unit) const {
    const auto& words = unit.unit().words;
    if (words.empty()) return std::nullopt;
    const auto at = std::find_if(words.begin(), words.end(), [&](const pack::UnitWord& word) {
        return !in_hand.is_sentence && pack::wordId(word) == in_hand.id;
    });
    const auto from = static_cast<std::size_t>((at == words.end() ? at - 1 : at) - words.begin());
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string id = pack::wordId(words[(from + 1 + i) % words.size()]);
        if (id != in_hand.id && hasSomething(unit.look(), id)) return id;
    }
    return std::nullopt;
}

}  // namespace wrenlet::desk
