#include <charconv>
#include <optional>
#include <string>
#include <thread>

#include "content/common/files.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/commands/command.hpp"
#include "editor/voice/unit_media.hpp"

namespace wrenlet::desk {
namespace {

struct Call {
    std::string unit, out;
    std::uint32_t version = 1;
};

std::optional<Call> callOf(std::span<const std::string> args) {
    Call call;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const bool has_value = i + 1 < args.size();
        if (args[i] == "--out" && has_value) {
            call.out = args[++i];
        } else if (args[i] == "--version" && has_value) {
            const std::string& text = args[++i];
            const auto read = std::from_chars(text.data(), text.data() + text.size(), call.version);
            if (read.ec != std::errc() || read.ptr != text.data() + text.size()) return {};
        } else if (!args[i].empty() && args[i][0] != '-' && call.unit.empty()) {
            call.unit = args[i];
        } else {
            return {};
        }
    }
    if (call.unit.empty() || call.out.empty() || call.version == 0) return {};
    return call;
}

bool say(const std::vector<Problem>& problems, std::ostream& err) {
    for (const Problem& problem : problems) err << sentence(problem) << "\n";
    return !anyError(problems);
}

/// One line for each tenth of the way.
pack::Progress progressOn(std::ostream& err) {
    return [&err, shown = std::size_t{0}](std::size_t done, std::size_t all) mutable {
        const std::size_t tenth = all == 0 ? 10 : done * 10 / all;
        if (tenth != shown) err << "Voice: " << done << " of " << all << " clips\n";
        shown = tenth;
        return true;
    };
}

}  // namespace

int buildCommand(std::span<const std::string> args, Console console) {
    const std::optional<Call> call = callOf(args);
    if (!call) {
        console.err << "Say which: wrenlet-desk build UNIT.json --out PACK.zip [--version N]\n";
        return 2;
    }
    const std::filesystem::path unit_path = std::filesystem::u8path(call->unit);
    const Result<std::string> json = readWhole(unit_path, pack::kMostUnitBytes);
    if (!say(json.problems(), console.err)) return 1;
    const Result<pack::Unit> unit = pack::readUnit(json.value(), unit_path.filename().string());
    if (!say(unit.problems(), console.err)) return 1;
    const Result<speech::Lexicon> lexicon = speech::Lexicon::open(console.assets / "lexicon.bin");
    if (!say(lexicon.problems(), console.err)) return 1;
    const Result<speech::BlockList> blocked =
        speech::BlockList::open(console.assets / "blocked.bin");
    if (!say(blocked.problems(), console.err)) return 1;

    const DemoVoice voice(lexicon.value());
    const ClipShelf shelf = ClipShelf::ofTheBuild(console.assets / "clips");
    UnitMedia media(unit.value(), UnitPlaces::beside(unit_path, console.assets / "pictures"),
                    {voice, std::thread::hardware_concurrency(), &shelf});
    const Result<pack::Pack> pack =
        pack::buildPack(unit.value(), call->version, lexicon.value(), blocked.value(), media,
                        progressOn(console.err));
    if (!say(pack.problems(), console.err)) return 1;
    const Result<std::string> bytes = pack::writePack(pack.value());
    if (!say(bytes.problems(), console.err)) return 1;
    if (!say(writeWhole(std::filesystem::u8path(call->out), bytes.value()).problems(), console.err))
        return 1;
    console.out << call->out << ": " << pack.value().name() << ", " << pack.value().items.size()
                << " items, " << pack.value().clips.size() << " clips, "
                << pack.value().pictures.size() << " pictures, " << bytes.value().size() / 1024
                << " KB\n";
    return 0;
}

}  // namespace wrenlet::desk
