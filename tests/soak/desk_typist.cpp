// A desk without a screen at which somebody types words, records them and keeps the class list by
// real keys, until it is killed: wrenlet-desk-typist CLASSROOM ASSETS SEED. Says on standard output
// what has been done and when, a line each: "word 1700000000123 duck".
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <iostream>
#include <set>
#include <thread>

#include "content/common/clock.hpp"
#include "content/common/random.hpp"
#include "editor/windows/bench.hpp"
#include "editor/windows/canvas.hpp"
#include "editor/windows/desk_window.hpp"
#include "editor/windows/input.hpp"
#include "tests/booth/prepared_microphone.hpp"

namespace {

using namespace wrenlet;
using namespace wrenlet::desk;

void announce(const std::string& what, std::int64_t at_ms, const std::string& which) {
    const std::string line = what + " " + std::to_string(at_ms) + " " + which + "\n";
    if (write(1, line.data(), line.size()) < 0) std::exit(1);
}

class Typist {
  public:
    Typist(const std::filesystem::path& classroom, Bench& bench, std::uint64_t seed)
        : bench_(bench),
          random_(seed),
          window_(openClass(classroom, clock_.unixMillis()),
                  {[&](const auto& folder) { return openClass(folder, clock_.unixMillis()); },
                   [&] { return clock_.unixMillis(); },
                   nullptr,
                   &bench.workbench,
                   {},
                   {&microphone_, nullptr, &bench.checking, nullptr},
                   {}}) {
        if (!atlas_.build({}, 1).ok()) std::exit(1);
        frame();
        const auto units = unitsIn(classroom);
        if (units.empty())
            window_.makeUnit("On the farm");
        else
            window_.openUnit(units.front().folder);
        if (window_.unit() == nullptr || !window_.unit()->canChange()) {
            std::cerr << "The unit cannot be opened for writing.\n";
            std::exit(1);
        }
        for (const auto& one : window_.unit()->unit().recordings) recorded_.insert(one.clip);
    }

    [[noreturn]] void work() {
        for (;;) {
            for (std::uint32_t words = 1 + random_.below(5); words > 0; --words) typeWord();
            record(1 + random_.below(2));
            changeName();
        }
    }

  private:
    void frame() {
        ImGuiIO& io = ImGui::GetIO();
        io.DisplaySize = {1280, 720};
        io.DeltaTime = 1.f / 60;
        ImGui::NewFrame();
        window_.frame(1280, 720, 1, atlas_);
        ImGui::Render();
    }
    void key(Key key) {
        input::key(key, true);
        frame();
        input::key(key, false);
        frame();
        frame();
    }
    void with(bool ctrl, bool alt, Key key) {
        input::modifiers(ctrl, false, alt);
        this->key(key);
        input::modifiers(false, false, false);
    }
    bool click(const std::string& label) {
        const auto at = window_.stage().items.find(label);
        if (at == window_.stage().items.end()) return false;
        input::pointTo(at->second.middleX(), at->second.middleY());
        frame();
        input::press(true);
        frame();
        input::press(false);
        frame();
        frame();
        return true;
    }
    void type(const std::string& text) {
        input::text(text);
        frame();
        key(Key::enter);
    }
    void rest() {
        std::this_thread::sleep_for(std::chrono::milliseconds(random_.below(120)));
        frame();
    }

    void typeWord() {
        with(false, true, Key::one);
        const auto& listed = bench_.known.classroom().words;
        std::string word;
        while (word.empty()) {
            const auto& any = listed[random_.below(static_cast<std::uint32_t>(listed.size()))];
            if (any.text == any.id && window_.unit()->work().word(any.id) == nullptr)
                word = any.text;
        }
        if (!click("words box")) return;
        type(word);
        if (window_.unit()->work().word(word) != nullptr)
            announce("word", clock_.unixMillis(), word);
        rest();
    }

    void record(std::uint32_t takes) {
        with(false, true, Key::two);
        Booth& booth = *window_.booth();
        key(Key::space);
        for (int i = 0; i < 200 && !booth.isReady(); ++i) frame();
        for (; takes > 0 && booth.current() != nullptr; --takes) {
            const pack::VoiceNeed need = booth.current()->need;
            microphone_.say(bench_.voice.say(need));
            for (int i = 0; i < 400 && !isTaken(need.id); ++i) {
                frame();
                if (booth.lastTake() != nullptr && !booth.findings().empty()) key(Key::k);
                if (booth.phase() == Booth::Phase::checking)
                    std::this_thread::sleep_for(std::chrono::milliseconds(2));
            }
            if (isTaken(need.id) && recorded_.insert(need.id).second)
                announce("take", clock_.unixMillis(), need.id);
        }
        booth.pause();
        rest();
    }
    bool isTaken(const std::string& clip) {
        for (const auto& one : window_.unit()->unit().recordings)
            if (one.clip == clip) return true;
        return false;
    }

    void changeName() {
        with(false, true, Key::five);
        click("page:List");
        OpenClassList& list = *window_.classList();
        if (list.list().children.empty()) {
            if (click("names box")) type("Maya");
        }
        if (list.list().children.empty()) return;
        click("child:" + list.list().children.front().id);
        if (!click("child name")) return;
        with(true, false, Key::a);
        const std::string name = "Maya " + std::to_string(clock_.unixMillis());
        type(name);
        if (list.list().children.front().name == name)
            announce("name", clock_.unixMillis(), name.substr(5));
        rest();
    }

    SystemClock clock_;
    Bench& bench_;
    Random random_;
    std::set<std::string> recorded_;
    PreparedMicrophone microphone_;
    ImGuiHome home_;
    TypeAtlas atlas_;
    DeskWindow window_;
};

}  // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    const std::filesystem::path classroom = argv[1];
    const auto bench = openBench(argv[2], classroom / "own", SystemClock().unixMillis(), [] {});
    if (!bench) {
        std::cerr << "The word lists are not where they should be.\n";
        return 1;
    }
    Typist(classroom, *bench, std::strtoull(argv[3], nullptr, 10)).work();
}
