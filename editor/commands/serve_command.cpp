// serve: hands the game to tablets on the classroom's network, until it is stopped. Each line typed
// opens a new code; "remove NAME" takes a tablet off the list.
#include <cstdlib>
#include <iterator>
#include <optional>

#include <nlohmann/json.hpp>

#include "editor/commands/command.hpp"
#include "editor/commands/typed_lines.hpp"
#include "editor/look/wording.hpp"
#include "editor/serve/own_addresses.hpp"
#include "editor/serve/qr_code.hpp"
#include "editor/serve/serving.hpp"
#include "editor/serve/tablet_names.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse =
    "wrenlet-desk serve CLASSROOM [--port N] [--cert FILE --key FILE] [--page FOLDER] [--json]\n";

struct ServeCall {
    pack::Classroom classroom;
    ServingOptions options;
    bool json = false;
};

std::optional<ServeCall> callOf(std::span<const std::string> args, Console console) {
    ServeCall call;
    call.options.page = pageFolder(console.assets);
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& arg = args[i];
        const bool has_value = i + 1 < args.size();
        const auto file = [&] { return std::filesystem::u8path(args[++i]); };
        if (arg == "--json") {
            call.json = true;
        } else if (arg == "--port" && has_value) {
            const long port = std::strtol(args[++i].c_str(), nullptr, 10);
            if (port < 0 || port > 65'535) {
                console.err << "A port is a number from 0 to 65535.\nUse: " << kUse;
                return std::nullopt;
            }
            call.options.server.port = static_cast<std::uint16_t>(port);
        } else if (arg == "--cert" && has_value) {
            call.options.certificate = file();
        } else if (arg == "--key" && has_value) {
            call.options.key = file();
        } else if (arg == "--page" && has_value) {
            call.options.page = file();
        } else if (call.classroom.folder.empty() && arg.substr(0, 1) != "-") {
            call.classroom.folder = std::filesystem::u8path(arg);
        } else {
            console.err << "Not understood: " << arg << "\nUse: " << kUse;
            return std::nullopt;
        }
    }
    if (call.classroom.folder.empty()) {
        console.err << "Name the classroom folder.\nUse: " << kUse;
        return std::nullopt;
    }
    return call;
}

/// Tells of what happens, in words or one JSON line each.
class Teller {
  public:
    Teller(const Serving& serving, bool json, std::ostream& out)
        : serving_(serving), json_(json), out_(out) {}

    void begin() {
        if (json_) return line({{"event", "address"}, {"address", serving_.address()}});
        out_ << "Tablets on this network open " << serving_.address() << "\n";
        if (!serving_.isOnANetwork())
            out_ << "This computer is on no network: only a browser on it can open that.\n";
        out_ << "A line opens a new code; \"remove NAME\" takes a tablet off; Ctrl C stops.\n"
             << std::flush;
    }
    void code(const ShownCode& shown) {
        const std::string address = serving_.addressWith(shown.code);
        if (json_) return line({{"event", "code"}, {"code", shown.code}, {"address", address}});
        if (const auto qr = qrCodeOf(address)) out_ << asText(*qr);
        out_ << "Code for one tablet, good for 5 minutes: " << shown.code << "\n" << std::flush;
    }
    void tablets() {
        for (const SeenTablet& tablet : serving_.reception().tablets()) {
            SeenTablet::State& before = known_.try_emplace(tablet.tablet).first->second.state;
            std::int64_t& kept = known_[tablet.tablet].kept;
            const bool is_new = known_.size() > told_;
            told_ = known_.size();
            if (!is_new && before == tablet.state && kept == tablet.kept) continue;
            before = tablet.state;
            kept = tablet.kept;
            tell(tablet);
        }
    }
    void problem(const std::vector<Problem>& problems) {
        for (const Problem& problem : problems)
            json_ ? line({{"event", "problem"}, {"says", sentence(problem)}})
                  : void(out_ << sentence(problem) << "\n"
                              << std::flush);
    }
    void refusals() {
        const auto count = serving_.reception().refusals().count();
        if (count == refused_) return;
        const auto newest = serving_.reception().refusals().newest();
        const std::size_t more = std::min<std::size_t>(newest.size(), count - refused_);
        refused_ = count;
        for (std::size_t i = more; i-- > 0;)
            json_ ? line({{"event", "refused"}, {"from", newest[i].from}, {"what", newest[i].what}})
                  : void(out_ << "Refused: " << newest[i].from << ", " << newest[i].what << "\n"
                              << std::flush);
    }

  private:
    struct Known {
        SeenTablet::State state = SeenTablet::State::away;
        std::int64_t kept = -1;
    };
    void tell(const SeenTablet& tablet) {
        constexpr const char* kWords[] = {"playing", "waiting", "not here"};
        const char* const word = kWords[static_cast<std::size_t>(tablet.state)];
        if (json_)
            return line({{"event", "tablet"},
                         {"tablet", tablet.tablet},
                         {"state", word},
                         {"kept", tablet.kept},
                         {"unsent", tablet.unsent}});
        out_ << shownTablet(tablet.tablet) << ": " << word << ", "
             << wording::counted(tablet.kept, "answer") << "\n"
             << std::flush;
    }
    void line(const nlohmann::ordered_json& json) {
        out_ << json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace) << "\n"
             << std::flush;
    }

    const Serving& serving_;
    bool json_;
    std::ostream& out_;
    std::map<std::string, Known> known_;
    std::size_t told_ = 0;
    std::uint64_t refused_ = 0;
};

void doAsTyped(const std::string& line, Serving& serving, Teller& teller) {
    constexpr std::string_view kRemove = "remove ";
    if (line.rfind(kRemove, 0) == 0) {
        const std::string name = line.substr(kRemove.size());
        for (const SeenTablet& tablet : serving.reception().tablets())
            if (tablet.tablet == name || shownTablet(tablet.tablet) == name)
                teller.problem(serving.reception().remove(tablet.tablet).problems());
        return;
    }
    const auto code = serving.reception().openCode();
    code.ok() ? teller.code(code.value()) : teller.problem(code.problems());
}

}  // namespace

int serveCommand(std::span<const std::string> args, Console console) {
    const auto call = callOf(args, console);
    if (!call) return 2;
    TypedLines typed;
    const SystemClock clock;
    link::SystemEntropy entropy;
    auto serving =
        Serving::start(call->classroom, call->options, {clock, entropy, {}, ownAddresses()});
    for (const Problem& problem : serving.problems()) console.err << sentence(problem) << "\n";
    if (!serving.ok()) return 1;
    Teller teller(*serving.value(), call->json, console.out);
    teller.begin();
    doAsTyped("", *serving.value(), teller);
    std::optional<std::string> line;
    std::vector<Problem> told;
    constexpr int kStepMs = 300;
    while (typed.wait(kStepMs, line)) {
        if (line) doAsTyped(*line, *serving.value(), teller);
        line.reset();
        teller.tablets();
        teller.refusals();
        const auto problems = serving.value()->reception().problems();
        if (problems.size() != told.size()) teller.problem(problems);
        told = problems;
    }
    return 0;
}

}  // namespace wrenlet::desk
