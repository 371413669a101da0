#include "editor/commands/unit_call.hpp"

#include "content/speech/typed_word.hpp"

namespace wrenlet::desk {

namespace {

bool say(const std::vector<Problem>& problems, std::ostream& err) {
    for (const Problem& problem : problems) err << sentence(problem) << "\n";
    return !anyError(problems);
}

void sayKnownSkills(std::ostream& err) {
    err << "Known are:\n";
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        std::string id(row.id);
        id.resize(26, ' ');
        err << "  " << id << row.name << "\n";
    }
}

}  // namespace

std::optional<UnitCall> unitCallOf(std::span<const std::string> args, const std::string& use,
                                   std::ostream& err) {
    UnitCall call;
    for (std::size_t i = 0; i < args.size(); ++i) {
        if (args[i] == "--json") {
            call.json = true;
        } else if (args[i] == "--skill") {
            const std::string name = i + 1 < args.size() ? args[++i] : std::string();
            const auto skill = exercise::skillFromId(name);
            if (!skill) {
                err << "No skill is called \"" << speech::shownWord(name) << "\". ";
                sayKnownSkills(err);
                return std::nullopt;
            }
            call.skills.push_back(*skill);
        } else if (call.unit.empty() && args[i].substr(0, 1) != "-") {
            call.unit = args[i];
        } else {
            err << "Not understood: " << speech::shownWord(args[i]) << "\nUse: " << use;
            return std::nullopt;
        }
    }
    if (!call.unit.empty()) return call;
    err << "Name the unit.\nUse: " << use;
    return std::nullopt;
}

std::optional<UnitAtHand> unitAtHand(const UnitCall& call, Console console) {
    Result<KnownWords> known = KnownWords::open(console.assets);
    if (!say(known.problems(), console.err)) return std::nullopt;
    Result<speech::BlockList> blocked = speech::BlockList::open(console.assets / "blocked.bin");
    if (!say(blocked.problems(), console.err)) return std::nullopt;
    Result<OpenedUnit> opened =
        openUnit(std::filesystem::u8path(call.unit), known.value(), console.assets / "pictures");
    if (!say(opened.problems(), console.err)) return std::nullopt;
    say(opened.value().problems, console.err);
    return UnitAtHand{std::move(known.value()), std::move(blocked.value()),
                      std::move(opened.value())};
}

}  // namespace wrenlet::desk
