#include <nlohmann/json.hpp>

#include "content/exercise/in_accents.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/rude.hpp"
#include "editor/commands/unit_call.hpp"
#include "editor/look/asking.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Choice;
using exercise::Item;

constexpr const char* kUse = "wrenlet-desk items UNIT.json --skill SKILL [--json]\n";

nlohmann::ordered_json itemJson(const Item& item, const exercise::Vocabulary& vocabulary) {
    nlohmann::ordered_json json;
    json["skill"] = exercise::rowOf(item.skill).id;
    json["prompt"] = asking(item, vocabulary).read;
    json["choices"] = nlohmann::ordered_json::array();
    json["answer"] = item.choices[item.answer].id;
    json["turns_on"] = {{"phoneme", item.turns_on.sound},
                        {"position", exercise::positionId(item.turns_on.position)}};
    json["foils"] = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Choice& choice = item.choices[i];
        json["choices"].push_back(choice.id);
        if (i != item.answer)
            json["foils"].push_back({{"choice", choice.id}, {"means", choice.means}});
    }
    return json;
}

void printItem(const Item& item, const exercise::Vocabulary& vocabulary, std::ostream& out) {
    out << asking(item, vocabulary).read << "\n";
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        out << (i == item.answer ? "  * " : "    ") << item.choices[i].id
            << (i == item.answer ? "" : ": " + item.choices[i].means) << "\n";
}

}  // namespace

int itemsCommand(std::span<const std::string> args, Console console) {
    const std::optional<UnitCall> call = unitCallOf(args, kUse, console.err);
    if (!call) return 2;
    if (call->skills.size() != 1) {
        console.err << "Name one skill.\nUse: " << kUse;
        return 2;
    }
    const std::optional<UnitAtHand> unit = unitAtHand(*call, console);
    if (!unit) return 1;
    const exercise::Vocabulary& vocabulary = unit->opened.vocabulary;
    const exercise::SkillRow& row = exercise::rowOf(call->skills.front());
    std::vector<Item> items = exercise::withoutRude(exercise::makeItems(vocabulary, row.skill),
                                                    vocabulary, unit->blocked);
    const bool gives_some = !items.empty();
    items = exercise::holdingIn(std::move(items), vocabulary, unit->opened.unit.accents);
    if (items.empty())
        console.err << "These words give no items for \"" << row.name << "\""
                    << (gives_some ? " that hold in the unit's accents" : "")
                    << ". Ask lint which words would.\n";
    if (call->json) {
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        for (const Item& item : items) list.push_back(itemJson(item, vocabulary));
        console.out << list.dump(2) << "\n";
    } else {
        for (const Item& item : items) printItem(item, vocabulary, console.out);
    }
    return anyError(unit->opened.problems) ? 1 : 0;
}

}  // namespace wrenlet::desk
