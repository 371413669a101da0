#include "editor/bring/bring_place.hpp"

#include <algorithm>

#include "content/pack/pack_builder.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/bring/bring_in.hpp"

namespace wrenlet::desk {

void BringPlace::begin(const std::filesystem::path& classroom, const OpenUnit& unit) {
    close();
    open = true;
    to_choose = broughtIn(classroom, unit.unit().id);
}

void BringPlace::openFile(const std::filesystem::path& path, const OpenUnit& unit) {
    open = true;
    brought.reset();
    lines.clear();
    said.clear();
    at = 0;
    const speech::Lexicon& lexicon = unit.bench().known.lexicon();
    Result<Brought> opened = openBrought(path, lexicon);
    problems = opened.problems();
    if (!opened.ok()) return;
    brought = std::move(opened.value());
    problems.insert(problems.end(), brought->problems.begin(), brought->problems.end());
    lines =
        broughtLines(*brought, unit.unit(), pack::readKnownWords(unit.unit(), lexicon).vocabulary);
}

void BringPlace::move(int by) {
    if (lines.empty()) return;
    const auto last = static_cast<std::ptrdiff_t>(lines.size()) - 1;
    at = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(at) + by, 0, last));
}

void BringPlace::turn(std::size_t line) {
    if (line >= lines.size()) return;
    at = line;
    lines[line].is_taken = !lines[line].is_taken;
}

void BringPlace::chooseAll() {
    for (BroughtLine& line : lines) line.is_taken = true;
}
void BringPlace::chooseNew() {
    for (BroughtLine& line : lines) line.is_taken = line.is_new;
}
void BringPlace::chooseNone() {
    for (BroughtLine& line : lines) line.is_taken = false;
}

std::size_t BringPlace::chosen() const {
    return static_cast<std::size_t>(
        std::count_if(lines.begin(), lines.end(), [](const auto& line) { return line.is_taken; }));
}

void BringPlace::take(OpenUnit& unit) {
    if (!brought || chosen() == 0 || !unit.canChange()) return;
    std::string voice = pack::tidied(whose);
    if (voice.empty() || !pack::isLine(voice, 60)) voice = "from " + brought->title;
    const Result<Action> action = bringIn(*brought, lines, voice.substr(0, 60), unit.unit(),
                                          unit.folder().folder, unit.bench().pictures);
    problems = action.problems();
    if (!action.ok()) return;
    unit.change([&](UnitAtWork& work) { work.bringIn(action.value()); });
    const std::string done = action.value().said;
    close();
    said = done;
}

}  // namespace wrenlet::desk
