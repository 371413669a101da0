// The tablets' page as pictures: not served, the first code, a classroom that plays, and something
// refused. A real server answers them; the tablets speak to it without a network between.
#include <filesystem>
#include <fstream>
#include <iostream>

#include "content/link/talk.hpp"
#include "editor/serve/link_folder.hpp"
#include "tests/desk/picture_room.hpp"

namespace wrenlet::desk {

namespace {

class StillClock final : public Clock {
  public:
    std::int64_t unixMillis() const override { return now_ms; }
    std::int64_t now_ms = demo::kNowMs;
};

class Counted final : public link::Entropy {
  public:
    void fill(std::span<std::uint8_t> bytes) override {
        for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random_.below(256));
    }

  private:
    Random random_{11};
};

constexpr const char* kNames[] = {"brook-x4k2", "cedar-92hd",  "comet-mm3v",  "dune-k2p8",
                                  "fern-7xcd",  "harbor-q4wz", "island-b3tt", "lagoon-55rk"};

std::vector<ListedTablet> tablets(Counted& entropy) {
    std::vector<ListedTablet> all;
    for (const char* name : kNames) {
        ListedTablet one{{name, {}}, 0, demo::kNowMs - 9'000'000, demo::kNowMs - 7'500'000, false};
        entropy.fill(one.identity.key);
        all.push_back(one);
    }
    return all;
}

/// What one says of itself, and some answers.
void speak(Reception& reception, const ListedTablet& tablet, const link::Hello& hello, int answers,
           Counted& entropy) {
    std::uint64_t number = 0;
    const auto say = [&](const link::Ask& ask) {
        reception.talk("192.168.1.31",
                       link::sealAsk(tablet.identity, ++number, link::writeAsk(ask), entropy));
    };
    say(hello);
    link::Responses sent;
    const auto demo_class = demo::demoClass();
    for (int i = 0; i < answers; ++i) {
        practice::Response response = demo_class.responses[std::size_t(i)];
        response.sequence = i + 1;
        response.session = 1 + static_cast<std::int64_t>(
                                   std::hash<std::string>{}(response.child.string()) % 1'000'000);
        sent.responses.push_back(response);
        if (sent.responses.size() == 150) say(std::exchange(sent, {}));
    }
    if (!sent.responses.empty()) say(sent);
}

void speakAll(ServePlace& place, const std::vector<ListedTablet>& all, StillClock& clock,
              Counted& entropy) {
    Reception& reception = place.serving()->reception();
    const std::string pack = link::hashOf("PK");
    for (std::size_t i = 0; i + 2 < all.size(); ++i) {
        link::Hello hello{clock.now_ms, i == 1 ? 3 : 0, i % 3 != 2, i == 4 ? std::string() : pack};
        if (i == 3) hello.clock_ms += 11 * 3'600'000;
        speak(reception, all[i], hello, int(40 + 37 * i), entropy);
    }
}

}  // namespace

bool tabletsPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                     std::string_view one) {
    const Workbench workbench = room.workbench();
    constexpr std::array<Size, 4> kTabletSizes{{{1280, 720, "1280x720"},
                                                {1920, 1080, "1920x1080"},
                                                {1024, 768, "1024x768"},
                                                {3840, 2160, "3840x2160"}}};
    for (const std::string name :
         {"tablets-off", "tablets-first", "tablets", "tablets-refused", "tablets-no-page"}) {
        for (const Size& size : kTabletSizes) {
            if (!one.empty() && (one != name || &size != &kTabletSizes.front())) continue;
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (name + "-" + size.name + ".png");
            OpenedClass opened = demo::demoClass();
            opened.classroom.folder = room.path;
            opened.list.pack = "by-the-pond-1.zip";
            std::ofstream(room.path / "class.json") << pack::writeClassList(opened.list);
            std::filesystem::create_directories(room.path / "packs");
            std::filesystem::create_directories(room.path / "page");
            std::ofstream(room.path / "packs/by-the-pond-1.zip") << "PK";
            std::ofstream(room.path / "page/index.html") << "<title>Wrenlet</title>";
            StillClock clock;
            Counted entropy;
            const auto all = tablets(entropy);
            const bool is_first = name == "tablets-first";
            if (!is_first && name != "tablets-off" && name != "tablets-no-page")
                (void)keepTabletList({opened.classroom}, all);
            ServerOptions server;
            server.port = 8080;
            const ServePlace::Parts parts{
                clock,
                entropy,
                room.at_once,
                {},
                room.path / (name == "tablets-no-page" ? "nowhere" : "page"),
                {},
                [] { return std::vector<std::string>{"192.168.1.20"}; },
                {},
                server};
            const auto prepare = [&](DeskWindow& window) {
                window.go(Place::hand_out);
                ServePlace& place = *window.serve();
                place.open = true;
                if (name == "tablets-off") return true;
                place.start();
                window.step();
                if (is_first || name == "tablets-no-page") return true;
                if (!place.isOn()) return false;
                speakAll(place, all, clock, entropy);
                if (name == "tablets-refused") {
                    place.remove(kNames[5]);
                    place.serving()->reception().closeCode();
                    place.serving()->reception().refused("192.168.1.77", "a wrong code");
                    place.serving()->reception().refused("192.168.1.77",
                                                         "a path that is not here: /../class.json");
                }
                clock.now_ms += 21'000;
                place.step(clock.now_ms + 5'000);
                return true;
            };
            const bool drawn =
                pictureWith(opened, options, demo::kNowMs + 21'000, &workbench, prepare, std::cerr,
                            {}, room.packing(), {}, {}, parts) == 0;
            room.remove();
            if (!drawn) return false;
            std::cout << options.picture.string() << "\n";
        }
    }
    return true;
}

}  // namespace wrenlet::desk
