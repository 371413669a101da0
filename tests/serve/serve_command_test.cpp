// The command `serve` as whoever starts it meets it: a program of its own, with its lines and its
// end.
#include <doctest/doctest.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <thread>

#include "editor/document/opened_class.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;

extern char** environ;

namespace {

/// The program, its standard input a pipe and its output files.
class Served {
  public:
    Served(const std::filesystem::path& folder, std::vector<std::string> args)
        : out_(folder / "out.txt"), err_(folder / "err.txt") {
        const std::string program = WRENLET_DESK_PROGRAM;
        args.insert(args.begin(), {program, "serve"});
        int typed[2];
        REQUIRE(pipe2(typed, O_CLOEXEC) == 0);
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_adddup2(&actions, typed[0], 0);
        for (const auto& [to, path] : {std::pair{1, &out_}, std::pair{2, &err_}})
            posix_spawn_file_actions_addopen(&actions, to, path->c_str(),
                                             O_WRONLY | O_CREAT | O_TRUNC, 0600);
        std::vector<char*> words;
        for (std::string& arg : args) words.push_back(arg.data());
        words.push_back(nullptr);
        REQUIRE(posix_spawn(&process_, program.c_str(), &actions, nullptr, words.data(), environ) ==
                0);
        posix_spawn_file_actions_destroy(&actions);
        ::close(typed[0]);
        typed_ = typed[1];
    }
    ~Served() {
        if (process_ > 0) {
            kill(process_, SIGKILL);
            waitpid(process_, nullptr, 0);
        }
        ::close(typed_);
    }

    void type(const std::string& line) { REQUIRE(::write(typed_, line.data(), line.size()) > 0); }
    /// The newest line with that event.
    nlohmann::json event(const std::string& name, std::size_t count = 1) const {
        for (int i = 0; i < 300; ++i) {
            std::ifstream in(out_);
            nlohmann::json newest;
            std::size_t found = 0;
            for (std::string line; std::getline(in, line);) {
                const auto json = nlohmann::json::parse(line, nullptr, false);
                if (json.is_object() && json["event"] == name) newest = json, ++found;
            }
            if (found >= count) return newest;
            std::this_thread::sleep_for(std::chrono::milliseconds(30));
        }
        return nullptr;
    }
    std::string said() const { return practice::samples::fileBytes(err_); }
    int stop() {
        kill(process_, SIGTERM);
        return wait();
    }
    int wait() {
        int status = 0;
        waitpid(process_, &status, 0);
        process_ = 0;
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }

  private:
    std::filesystem::path out_, err_;
    pid_t process_ = 0;
    int typed_ = -1;
};

}  // namespace

TEST_CASE(
    "Serving: the command tells address and code, takes answers in, and stops in good order") {
    samples::ServedRoom room;
    Served served(room.folder.path(), {room.classroom.folder.string(), "--port", "0", "--json",
                                       "--page", (room.folder / "page").string()});
    const std::string address = served.event("address").value("address", "");
    REQUIRE(address.rfind("http://", 0) == 0);
    const auto port = static_cast<std::uint16_t>(std::stoi(address.substr(address.rfind(':') + 1)));
    const auto code = served.event("code");
    CHECK(code.value("address", "") == address + "#" + code.value("code", "?"));
    samples::PageTablet tablet(port, "127.0.0.2", 1);
    REQUIRE(tablet.join(code.value("code", "")));
    REQUIRE(tablet.hello(true));
    tablet.answers(samples::responseBy("c-01"));
    REQUIRE(tablet.sendAll());
    CHECK(served.event("tablet").value("tablet", "") == tablet.identity().tablet);
    served.type("\n");
    const auto next = served.event("code", 2);
    CHECK(next.value("code", "") != code.value("code", ""));
    served.type("remove " + tablet.identity().tablet + "\n");
    CHECK(room.soon([&] {
        const auto answer = tablet.say(link::Hello{});
        return answer && std::holds_alternative<link::Removed>(*answer);
    }));
    CHECK(served.event("refused").value("from", "") == "127.0.0.2");
    CHECK(served.stop() == 0);
    CHECK(openClass(room.classroom.folder, 0).responses.size() == 1);
}

TEST_CASE("Serving: the command says what is missing") {
    samples::ServedRoom room;
    Served without_page(room.folder.path(), {room.classroom.folder.string(), "--page",
                                             (room.folder / "nowhere").string()});
    CHECK(without_page.wait() == 1);
    CHECK(without_page.said().find("./play --web") != std::string::npos);
    for (const std::vector<std::string>& args :
         {std::vector<std::string>{}, {"room", "--port", "70000"}, {"room", "--what"}}) {
        Served off(room.folder.path(), args);
        CHECK(off.wait() == 2);
        CHECK(off.said().find("wrenlet-desk serve CLASSROOM") != std::string::npos);
    }
}
