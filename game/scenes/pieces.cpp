#include "game/scenes/pieces.hpp"

#include <algorithm>

#include "content/exercise/compared.hpp"
#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::game {
namespace {

using exercise::Position;
using exercise::Task;
namespace say = exercise::phrase;

struct Sign {
    std::string_view id, art, phrase;
};
constexpr Sign kSigns[] = {
    {"yes", "sign-together", say::kJudgeYes},    {"no", "sign-apart", say::kJudgeNo},
    {"long", "sign-long", say::kSortLong},       {"short", "sign-short", say::kSortShort},
    {"asking", "sign-asking", say::kSortAsking}, {"telling", "sign-telling", say::kSortTelling},
};

const Sign* signOf(std::string_view id) {
    for (const Sign& sign : kSigns)
        if (sign.id == id) return &sign;
    return nullptr;
}

bool isLetter(std::string_view id) {
    return id.substr(0, 7) == "letter:";
}

/// Capital and small side by side.
std::string bothCases(std::string_view letter) {
    std::string text(letter);
    text.insert(text.begin(), static_cast<char>(letter.front() - 'a' + 'A'));
    return text;
}

}  // namespace

Piece Pieces::word(std::string_view id) const {
    if (const auto* sentence = pack_.vocabulary.sentence(id))
        return {Piece::Kind::picture, "", exercise::sentenceClip(sentence->id), "", Position::tune};
    const auto* word = pack_.vocabulary.word(id);
    if (word == nullptr) return {};
    std::string part = exercise::decidingClip(item_, *word);
    if (pack_.clip(part) == nullptr) part.clear();
    return {Piece::Kind::picture, word->picture, exercise::wordClip(word->id), std::move(part),
            exercise::decidingPlace(item_, *word)};
}

Piece Pieces::letter(std::string_view id) const {
    const auto* letter = exercise::letterById(id);
    if (letter == nullptr) return {};
    const auto said = exercise::saidBy(item_, *letter);
    const bool is_named = item_.skill.task == Task::name;
    return {Piece::Kind::letter, is_named ? bothCases(letter->text) : std::string(letter->text),
            said.size() == 1 ? said.front() : std::string(), ""};
}

Piece Pieces::sound(std::string_view clip, std::size_t mark) const {
    return {Piece::Kind::sound, std::to_string(mark % 4 + 1), std::string(clip), ""};
}

std::vector<Piece> Pieces::heard() const {
    std::vector<Piece> pieces;
    if (item_.skill.task == Task::odd_one_out) return {};
    if (exercise::mechanicOf(item_) == exercise::Mechanic::sort) return {word(item_.subject)};
    if (item_.skill.task == Task::sound) {
        Piece shown = letter(item_.subject);
        shown.clip.clear();  // that is the answer
        return {shown};
    }
    for (const exercise::Part& part : item_.parts) {
        if (part.clip.substr(0, 5) == "word:")
            pieces.push_back(word(part.clip.substr(5)));
        else
            pieces.push_back(sound(part.clip, pieces.size() + 1));
    }
    return pieces;
}

Piece Pieces::choice(std::size_t index) const {
    const std::string& id = item_.choices[index].id;
    if (const Sign* sign = signOf(id))
        return {Piece::Kind::sign, std::string(sign->art), exercise::phraseClip(sign->phrase), ""};
    if (isLetter(id)) return letter(id);
    if (exercise::isSoundClip(id)) return sound(id, index);
    return word(id);
}

std::vector<Piece> Pieces::mates() const {
    std::vector<Piece> all;
    for (std::size_t i = 0; i < item_.choices.size(); ++i)
        if (i != item_.answer) all.push_back(choice(i));
    return all;
}

std::vector<Piece> Pieces::letterAndSounds(std::size_t index) const {
    const std::string& id = item_.choices[index].id;
    const auto* letter = exercise::isSoundClip(id) ? index == item_.answer
                                                         ? exercise::letterById(item_.subject)
                                                         : exercise::letterSaying(id)
                                                   : exercise::letterById(id);
    std::vector<Piece> pieces;
    if (letter == nullptr) return pieces;
    pieces.push_back(this->letter(letter->id));
    pieces.front().clip.clear();
    // A sound keeps the mark it has in the question, and another one has another.
    const auto asked = heard();
    std::size_t mark = exercise::isSoundClip(id) ? index : 3;
    for (const std::string& clip : exercise::saidBy(item_, *letter)) {
        if (pack_.clip(clip) == nullptr) continue;
        const auto same = std::find_if(asked.begin(), asked.end(),
                                       [&](const Piece& piece) { return piece.clip == clip; });
        pieces.push_back(same != asked.end() ? *same : sound(clip, mark++));
    }
    return pieces;
}

/// A card that belongs to that home, and the home's sign.
Compared Pieces::ofSign(std::size_t index) const {
    Compared row;
    if (index == item_.answer) {
        row.pieces = {word(item_.subject), choice(index)};
        return row;
    }
    for (const exercise::Item& other : pack_.items) {
        if (other.skill != item_.skill || other.answer != index) continue;
        row.pieces = {Pieces(pack_, other).word(other.subject), choice(index)};
        break;
    }
    if (row.pieces.empty()) row.pieces = {choice(index)};
    return row;
}

std::array<Compared, 2> Pieces::compared(std::size_t chosen) const {
    const Piece took = choice(chosen), right = answer();
    if (item_.skill.task == Task::rhyme_judge)
        return {{{say::kListenBoth, heard()}, {{}, {right}}}};
    if (item_.skill.task == Task::odd_one_out) {
        std::vector<Piece> others = mates();
        const auto found = std::find_if(others.begin(), others.end(), [&](const Piece& piece) {
            return piece.clip != took.clip;
        });
        const Piece mate = found != others.end() ? *found : others.front();
        return {
            {{say::kListenBoth, {mate, took}, say::kJudgeYes}, {{}, {mate, right}, say::kJudgeNo}}};
    }
    if (signOf(item_.choices[chosen].id) != nullptr) {
        std::array<Compared, 2> both = {ofSign(chosen), ofSign(item_.answer)};
        both[0].lead = say::kListenBoth;
        return both;
    }
    std::array<Compared, 2> both;
    for (const bool is_right : {false, true}) {
        Compared& row = both[is_right ? 1 : 0];
        row.lead = is_right ? say::kWeAsked : say::kYouChose;
        const std::size_t index = is_right ? item_.answer : chosen;
        const Piece piece = is_right ? right : took;
        if (item_.skill.task == Task::name) {
            row.pieces = {piece};
        } else if (item_.skill.unit == exercise::Unit::letter) {
            row.pieces = letterAndSounds(index);
            if (is_right && item_.skill.task == Task::digraph)
                row.pieces.push_back(word(item_.subject));
        } else if (exercise::isSoundClip(item_.subject)) {
            row.pieces = is_right ? std::vector{heard().front(), piece} : std::vector{piece};
        } else {
            row.lead = is_right ? std::string_view() : say::kListenBoth;
            row.pieces = {word(item_.subject), piece};
        }
    }
    return both;
}

void paint(Painter& painter, const Piece& piece, const Box& box, Stand stand) {
    switch (piece.kind) {
        case Piece::Kind::picture:
            painter.pictureCard(piece.shown, box, stand);
            break;
        case Piece::Kind::letter:
            painter.letterTile(piece.shown, box, stand);
            break;
        case Piece::Kind::sound:
            painter.tile(static_cast<std::size_t>(piece.shown.front() - '0'), box, stand);
            break;
        case Piece::Kind::sign:
            painter.signCard(piece.shown, box, stand);
            break;
    }
}

Box partOf(const Piece& piece, const Box& box) {
    switch (piece.at) {
        case Position::first:
            return {box.x, box.y, box.w * 0.36f, box.h};
        case Position::middle:
            return {box.x + box.w * 0.32f, box.y, box.w * 0.36f, box.h};
        case Position::last:
            return {box.x + box.w * 0.64f, box.y, box.w * 0.36f, box.h};
        case Position::rime:
            return {box.x + box.w * 0.4f, box.y, box.w * 0.6f, box.h};
        default:
            return box;
    }
}

std::array<Box, 2> paintCompared(Painter& painter, const Layout& layout,
                                 const std::array<Compared, 2>& both,
                                 const std::array<Box, 2>& rows, const Telling& telling,
                                 Millis now) {
    const Show show = telling.show(now);
    const bool over = telling.isOver(now), speaks = telling.isSounding(now);
    std::array<Box, 2> last{};
    for (int pair = 0; pair < 2; ++pair) {
        const auto which = static_cast<std::size_t>(pair);
        const auto& pieces = both[which].pieces;
        const bool reached = show.kind == Show::Kind::pair ? show.pair >= pair : pair == 0;
        if (pieces.empty() || !(reached || over)) continue;
        const Box& row = rows[which];
        const float side = std::min(row.h - layout.px(52), layout.px(190));
        const auto boxes = rowIn({row.x, row.y, row.w, row.h - layout.px(36)}, pieces.size(), side,
                                 side, layout.px(pieces.size() > 2 ? 32 : 56));
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const bool sounds = speaks && show.kind == Show::Kind::pair && show.pair == pair &&
                                show.side == static_cast<int>(i);
            paint(painter, pieces[i], boxes[i], sounds ? Stand::lifted : Stand::resting);
            if (!sounds) continue;
            painter.speaking(boxes[i]);
            painter.bracket(show.part ? partOf(pieces[i], boxes[i]) : boxes[i]);
        }
        if (pair == 1) painter.leafMark(boxes.back());
        last[which] = boxes.back();
    }
    return last;
}

}  // namespace wrenlet::game
