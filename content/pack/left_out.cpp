#include <algorithm>
#include <map>
#include <set>

#include "content/pack/unit.hpp"

namespace wrenlet::pack {
namespace {

/// Whether the item asks, shows or says the word as a whole.
bool isAbout(const exercise::Item& item, const std::set<std::string>& words) {
    if (words.count(item.subject) != 0) return true;
    for (const exercise::Choice& choice : item.choices)
        if (words.count(choice.id) != 0) return true;
    for (const exercise::Part& part : item.parts) {
        constexpr std::string_view kWordClip = "word:";
        if (part.clip.compare(0, kWordClip.size(), kWordClip) == 0 &&
            words.count(part.clip.substr(kWordClip.size())) != 0)
            return true;
    }
    return false;
}

/// Asks which word has a sound at its beginning, at its end or inside.
bool asksForASound(const exercise::Item& item) {
    using exercise::Task;
    const Task task = item.skill.task;
    return item.skill.unit == exercise::Unit::phoneme &&
           (task == Task::first || task == Task::last || task == Task::middle);
}

}  // namespace

std::vector<exercise::Item> withoutLeftOut(std::vector<exercise::Item> items, const Unit& unit) {
    const std::set<std::string> items_off(unit.items_off.begin(), unit.items_off.end());
    const std::set<std::string> skills_off(unit.skills_off.begin(), unit.skills_off.end());
    std::map<std::string, std::set<std::string>> words_off;  // by skill
    for (const UnitWord& word : unit.words)
        for (const std::string& skill : word.not_for) words_off[skill].insert(wordId(word));

    const std::set<std::string> focus(unit.focus_sounds.begin(), unit.focus_sounds.end());
    std::set<exercise::Skill> in_focus;  // that have items on those sounds
    for (const exercise::Item& item : items)
        if (asksForASound(item) && focus.count(item.turns_on.sound) != 0)
            in_focus.insert(item.skill);

    const auto is_left_out = [&](const exercise::Item& item) {
        const std::string skill(exercise::rowOf(item.skill).id);
        if (skills_off.count(skill) != 0 || items_off.count(item.id) != 0) return true;
        if (in_focus.count(item.skill) != 0 && focus.count(item.turns_on.sound) == 0) return true;
        const auto words = words_off.find(skill);
        return words != words_off.end() && isAbout(item, words->second);
    };
    items.erase(std::remove_if(items.begin(), items.end(), is_left_out), items.end());
    return items;
}

}  // namespace wrenlet::pack
