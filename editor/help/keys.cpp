#include "editor/help/keys.hpp"

namespace wrenlet::desk {
namespace {

using enum Does;
using enum Hold;

constexpr const char* kUpDown = "\u2191 \u2193";
constexpr const char* kLeftRight = "\u2190 \u2192";
constexpr const char* kPages = "Page \u2191 \u2193";
constexpr const char* kEnds = "Home End";

constexpr KeyRow kRows[] = {
    {Spot::everywhere, help, Key::f1, nothing, "F1", "Help for where you are"},
    {Spot::everywhere, go_words, Key::one, alt, "Alt 1 to 5", "The five places"},
    {Spot::everywhere, go_booth, Key::two, alt, "Alt 2", ""},
    {Spot::everywhere, go_try_out, Key::three, alt, "Alt 3", ""},
    {Spot::everywhere, go_hand_out, Key::four, alt, "Alt 4", ""},
    {Spot::everywhere, go_class, Key::five, alt, "Alt 5", ""},
    {Spot::everywhere, next_step, Key::enter, ctrl, "Ctrl Enter", "The next step, below right"},
    {Spot::everywhere, undo, Key::z, ctrl, "Ctrl Z", "Take the last change back"},
    {Spot::everywhere, redo, Key::y, ctrl, "Ctrl Y", "Make it again"},
    {Spot::everywhere, next_stop, Key::tab, nothing, "Tab", "On to what can be pressed"},
    {Spot::everywhere, text_larger, Key::plus, ctrl, "Ctrl + \u2212", "Larger or smaller text"},
    {Spot::everywhere, text_smaller, Key::minus, ctrl, "Ctrl \u2212", ""},
    {Spot::everywhere, gather, Key::f5, nothing, "F5", "Look into the classroom folder again"},

    {Spot::words, up, Key::up, nothing, kUpDown, "Another word"},
    {Spot::words, down, Key::down, nothing, "\u2193", ""},
    {Spot::words, page_up, Key::page_up, nothing, kPages, "Ten words on or back"},
    {Spot::words, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::words, first, Key::home, nothing, kEnds, "The first and the last"},
    {Spot::words, last, Key::end, nothing, "End", ""},
    {Spot::words, hear, Key::space, nothing, "Space", "Hear the word"},
    {Spot::words, open, Key::enter, nothing, "Enter", "Open it, where its pane is closed"},
    {Spot::words, leave_out, Key::erase, nothing, "Delete", "Take it out of the unit"},
    {Spot::words, back, Key::escape, nothing, "Esc", "Back to the list"},

    {Spot::picture, back, Key::escape, nothing, "Esc", "Leave the picture as it is"},

    {Spot::bring, up, Key::up, nothing, kUpDown, "Another line"},
    {Spot::bring, down, Key::down, nothing, "\u2193", ""},
    {Spot::bring, page_up, Key::page_up, nothing, kPages, "Ten lines on or back"},
    {Spot::bring, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::bring, first, Key::home, nothing, kEnds, "The first and the last"},
    {Spot::bring, last, Key::end, nothing, "End", ""},
    {Spot::bring, turn, Key::space, nothing, "Space", "Take this one, or leave it"},
    {Spot::bring, back, Key::escape, nothing, "Esc", "Back to the words"},

    {Spot::booth, listen, Key::space, nothing, "Space", "Listen, or pause"},
    {Spot::booth, up, Key::up, nothing, kUpDown, "Another thing to say"},
    {Spot::booth, down, Key::down, nothing, "\u2193", ""},
    {Spot::booth, hear, Key::h, nothing, "H", "Hear the last take"},
    {Spot::booth, hear_demo, Key::d, nothing, "D", "Hear how it should be"},
    {Spot::booth, skip, Key::s, nothing, "S", "Skip it for now"},
    {Spot::booth, cut, Key::x, nothing, "X", "Cut off the \"uh\""},
    {Spot::booth, keep, Key::k, nothing, "K", "Keep the take as it is"},
    {Spot::booth, back, Key::escape, nothing, "Esc", "Stop listening"},

    {Spot::try_out, another, Key::enter, nothing, "Enter", "Another question"},
    {Spot::try_out, play, Key::space, nothing, "Space", "Play it as a child does"},
    {Spot::try_out, left, Key::left, nothing, kLeftRight, "The question before, the next"},
    {Spot::try_out, right, Key::right, nothing, "\u2192", ""},
    {Spot::try_out, up, Key::up, nothing, kUpDown, "Another skill"},
    {Spot::try_out, down, Key::down, nothing, "\u2193", ""},
    {Spot::try_out, page_up, Key::page_up, nothing, kPages, "Eight skills on or back"},
    {Spot::try_out, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::try_out, hear, Key::h, nothing, "H", "Hear what is said"},
    {Spot::try_out, leave_out, Key::l, nothing, "L", "Leave the question out, or ask it again"},
    {Spot::try_out, find, Key::f, nothing, "F", "Find words that give more"},

    {Spot::finder, up, Key::up, nothing, kUpDown, "Another word"},
    {Spot::finder, down, Key::down, nothing, "\u2193", ""},
    {Spot::finder, page_up, Key::page_up, nothing, kPages, "Eight skills on or back"},
    {Spot::finder, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::finder, add, Key::enter, nothing, "Enter", "Take the word into the unit"},
    {Spot::finder, add_all, Key::a, nothing, "A", "Take all that are shown"},
    {Spot::finder, back, Key::escape, nothing, "Esc", "Back to the questions"},

    {Spot::map, left, Key::left, nothing, "\u2190 \u2192 \u2191 \u2193",
     "Another place on the map"},
    {Spot::map, right, Key::right, nothing, "\u2192", ""},
    {Spot::map, up, Key::up, nothing, "\u2191", ""},
    {Spot::map, down, Key::down, nothing, "\u2193", ""},
    {Spot::map, page_up, Key::page_up, nothing, kPages, "Five children on or back"},
    {Spot::map, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::map, first, Key::home, nothing, kEnds, "The first and the last sound"},
    {Spot::map, last, Key::end, nothing, "End", ""},
    {Spot::map, open, Key::enter, nothing, "Enter", "Open the child pointed at"},

    {Spot::child, left, Key::left, nothing, kLeftRight, "The child before, the next"},
    {Spot::child, right, Key::right, nothing, "\u2192", ""},
    {Spot::child, up, Key::up, nothing, kUpDown, "Another task"},
    {Spot::child, down, Key::down, nothing, "\u2193", ""},
    {Spot::child, back, Key::escape, nothing, "Esc", "Back to the map"},

    {Spot::tomorrow, up, Key::up, nothing, kUpDown, "Another table, or line of the sheet"},
    {Spot::tomorrow, down, Key::down, nothing, "\u2193", ""},
    {Spot::tomorrow, page_up, Key::page_up, nothing, kPages, "Five on or back"},
    {Spot::tomorrow, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::tomorrow, first, Key::home, nothing, kEnds, "The first and the last"},
    {Spot::tomorrow, last, Key::end, nothing, "End", ""},
    {Spot::tomorrow, left, Key::left, nothing, kLeftRight, "To the tables, to the sheet"},
    {Spot::tomorrow, right, Key::right, nothing, "\u2192", ""},
    {Spot::tomorrow, open, Key::enter, nothing, "Enter", "See what else can be asked; put it in"},
    {Spot::tomorrow, leave_out, Key::erase, nothing, "Delete", "Take the line out"},
    {Spot::tomorrow, print, Key::p, ctrl, "Ctrl P", "Print the lesson, or the tables"},
    {Spot::tomorrow, back, Key::escape, nothing, "Esc", "One step back, then the map"},

    {Spot::papers, up, Key::up, nothing, kUpDown, "Another paper"},
    {Spot::papers, down, Key::down, nothing, "\u2193", ""},
    {Spot::papers, left, Key::left, nothing, kLeftRight, "The child before, the next"},
    {Spot::papers, right, Key::right, nothing, "\u2192", ""},
    {Spot::papers, open, Key::enter, nothing, "Enter", "Write it; open what is written"},
    {Spot::papers, print, Key::p, ctrl, "Ctrl P", "The same"},
    {Spot::papers, back, Key::escape, nothing, "Esc", "Back to the map"},

    {Spot::why, left, Key::left, nothing, kLeftRight, "The child before, the next"},
    {Spot::why, right, Key::right, nothing, "\u2192", ""},
    {Spot::why, back, Key::escape, nothing, "Esc", "Back to the page"},

    {Spot::aloud, mark_right, Key::one, nothing, "1", "Right"},
    {Spot::aloud, mark_almost, Key::two, nothing, "2", "Almost"},
    {Spot::aloud, mark_wrong, Key::three, nothing, "3", "Wrong"},
    {Spot::aloud, up, Key::up, nothing, kUpDown, "Another question"},
    {Spot::aloud, down, Key::down, nothing, "\u2193", ""},
    {Spot::aloud, back, Key::escape, nothing, "Esc", "Done: back to the page"},

    {Spot::list, up, Key::up, nothing, kUpDown, "Another child"},
    {Spot::list, down, Key::down, nothing, "\u2193", ""},
    {Spot::list, page_up, Key::page_up, nothing, kPages, "Ten children on or back"},
    {Spot::list, page_down, Key::page_down, nothing, "Page \u2193", ""},
    {Spot::list, first, Key::home, nothing, kEnds, "The first and the last"},
    {Spot::list, last, Key::end, nothing, "End", ""},
    {Spot::list, open, Key::enter, nothing, "Enter", "Open the child, where its pane is closed"},
    {Spot::list, back, Key::escape, nothing, "Esc", "Back to the list"},

    {Spot::settings, up, Key::up, nothing, kUpDown, "Up and down the page"},
    {Spot::settings, down, Key::down, nothing, "\u2193", ""},
    {Spot::settings, back, Key::escape, nothing, "Esc", "Back to your work"},
};

}  // namespace

std::span<const KeyRow> keyRows() {
    return kRows;
}

const KeyRow* keyFor(Spot spot, Does does) {
    const KeyRow* everywhere = nullptr;
    for (const KeyRow& row : kRows) {
        if (row.does != does) continue;
        if (row.spot == spot) return &row;
        if (row.spot == Spot::everywhere) everywhere = &row;
    }
    return everywhere;
}

std::vector<KeyRow> keysAt(Spot spot) {
    std::vector<KeyRow> rows;
    for (const KeyRow& row : kRows)
        if (row.spot == spot && *row.says != '\0') rows.push_back(row);
    return rows;
}

}  // namespace wrenlet::desk
