#include <algorithm>
#include <nlohmann/json.hpp>

#include "content/exercise/lint.hpp"
#include "editor/commands/unit_call.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Lint;

constexpr const char* kUse = "wrenlet-desk lint UNIT.json [--skill SKILL]... [--json]\n";

/// What the guess for an unknown word is, so that she need not write sounds from nothing.
std::string guessOf(const exercise::Word& word, const KnownWords& known) {
    const Result<KnownWord> guess = known.find(word.text);
    if (!guess.ok()) return "";
    return " A guess, to be confirmed by ear: /" + speech::ipa(guess.value().sounds) + "/.";
}

std::vector<Lint> lintOf(const UnitAtHand& unit, const std::vector<exercise::Skill>& skills) {
    const OpenedUnit& opened = unit.opened;
    const exercise::LintRules rules = exercise::rulesWith(unit.blocked);
    std::vector<Lint> found;
    for (const exercise::Word& word : opened.asked) {
        for (Lint& lint : exercise::lintWord(word, opened.vocabulary, rules)) {
            if (word.sounds.empty()) lint.way_out += guessOf(word, unit.known);
            found.push_back(std::move(lint));
        }
        if (!word.compound.empty() || word.sounds.empty()) continue;
        if (auto lint = unit.known.looksCompound(word.id)) found.push_back(std::move(*lint));
    }
    for (Lint& lint : exercise::lintTogether({opened.asked, {}}, rules))
        found.push_back(std::move(lint));
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const bool asked =
            skills.empty() || std::find(skills.begin(), skills.end(), row.skill) != skills.end();
        if (!asked) continue;
        if (auto lint =
                exercise::lintSkill(opened.vocabulary, row.skill, unit.known.classroom(), rules))
            found.push_back(std::move(*lint));
    }
    return found;
}

void printJson(const OpenedUnit& opened, const std::vector<Lint>& found, std::ostream& out) {
    nlohmann::ordered_json root;
    root["unit"] = opened.unit.where;
    root["words"] = opened.asked.size();
    root["warnings"] = nlohmann::ordered_json::array();
    for (const Lint& lint : found) {
        nlohmann::ordered_json json = {{"code", lint.code},
                                       {"words", lint.words},
                                       {"why", lint.why},
                                       {"way_out", lint.way_out}};
        if (lint.code == exercise::kTooFewWords) {
            json["skill"] = exercise::rowOf(*lint.skill).id;
            json["suggestions"] = lint.suggestions;
        }
        root["warnings"].push_back(std::move(json));
    }
    out << root.dump(2) << "\n";
}

}  // namespace

int lintCommand(std::span<const std::string> args, Console console) {
    const std::optional<UnitCall> call = unitCallOf(args, kUse, console.err);
    if (!call) return 2;
    const std::optional<UnitAtHand> unit = unitAtHand(*call, console);
    if (!unit) return 1;
    const std::vector<Lint> found = lintOf(*unit, call->skills);
    if (call->json) {
        printJson(unit->opened, found, console.out);
    } else {
        for (const Lint& lint : found)
            console.out << lint.code << ": " << lint.why << " " << lint.way_out << "\n";
        console.out << unit->opened.unit.where << ": "
                    << wording::counted(std::int64_t(unit->opened.asked.size()), "word") << ", "
                    << wording::counted(std::int64_t(found.size()), "warning") << "\n";
    }
    return anyError(unit->opened.problems) ? 1 : 0;
}

}  // namespace wrenlet::desk
