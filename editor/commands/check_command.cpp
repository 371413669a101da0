#include <nlohmann/json.hpp>

#include "content/pack/media_check.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/commands/command.hpp"

namespace wrenlet::desk {
namespace {

nlohmann::ordered_json problemJson(const Problem& problem) {
    const bool error = problem.weight == Problem::Weight::error;
    return {{"weight", error ? "error" : "warning"},
            {"where", problem.where},
            {"what", problem.what},
            {"way_out", problem.way_out}};
}

/// Clips that open and then break off: reading a pack does not decode them, for the game is
/// waiting; here there is time.
std::vector<Problem> damagedClips(const pack::Pack& pack, const std::string& where) {
    std::vector<Problem> problems;
    for (const pack::Clip& clip : pack.clips) {
        const std::string why = pack::checkClipWhole(clip.bytes).why_not;
        if (!why.empty())
            problems.push_back({where + ", " + clip.file,
                                "This should say \"" + clip.text + "\" and " + why + ".",
                                "Record it again and hand the pack out again."});
    }
    return problems;
}

std::size_t demoClips(const pack::Pack& pack) {
    std::size_t count = 0;
    for (const pack::Clip& clip : pack.clips) count += clip.demo_voice ? 1 : 0;
    return count;
}

void printJson(const std::string& file, const pack::Pack* pack,
               const std::vector<Problem>& problems, std::ostream& out) {
    nlohmann::ordered_json root;
    root["file"] = file;
    root["good"] = pack != nullptr;
    if (pack) {
        root["pack"] = pack->name();
        root["title"] = pack->title;
        root["words"] = pack->vocabulary.words.size();
        root["sentences"] = pack->vocabulary.sentences.size();
        root["clips"] = pack->clips.size();
        root["demo_voice_clips"] = demoClips(*pack);
        root["pictures"] = pack->pictures.size();
        root["items"] = nlohmann::ordered_json::object();
        for (const exercise::SkillRow& row : exercise::skillTable()) {
            std::size_t count = 0;
            for (const exercise::Item& item : pack->items) count += item.skill == row.skill;
            root["items"][std::string(row.id)] = count;
        }
    }
    root["problems"] = nlohmann::ordered_json::array();
    for (const Problem& problem : problems) root["problems"].push_back(problemJson(problem));
    out << root.dump(2) << "\n";
}

void printText(const std::string& file, const pack::Pack& pack, std::ostream& out) {
    out << file << " is good: " << pack.name() << ", " << pack.vocabulary.words.size() << " words, "
        << pack.vocabulary.sentences.size() << " sentences, " << pack.items.size() << " items, "
        << pack.clips.size() << " clips, " << pack.pictures.size() << " pictures.\n";
    if (const std::size_t demo = demoClips(pack))
        out << demo << " of the clips are synthesized; record them in your own voice.\n";
}

}  // namespace

int checkCommand(std::span<const std::string> args, Console console) {
    std::string file;
    bool json = false;
    for (const std::string& arg : args) {
        if (arg == "--json") {
            json = true;
        } else if (!arg.empty() && arg[0] != '-' && file.empty()) {
            file = arg;
        } else {
            file.clear();
            break;
        }
    }
    if (file.empty()) {
        console.err << "Say which pack: wrenlet-desk check PACK.zip [--json]\n";
        return 2;
    }
    const std::filesystem::path path = std::filesystem::u8path(file);
    const std::string name = path.filename().string();
    const Result<pack::Pack> read = pack::readPackFile(path);
    std::vector<Problem> problems = read.problems();
    if (read.ok())
        for (Problem& problem : damagedClips(read.value(), name))
            problems.push_back(std::move(problem));
    const bool good = !anyError(problems);
    for (const Problem& problem : problems) console.err << sentence(problem) << "\n";
    if (json)
        printJson(name, good ? &read.value() : nullptr, problems, console.out);
    else if (good)
        printText(name, read.value(), console.out);
    return good ? 0 : 1;
}

}  // namespace wrenlet::desk
