#include "tests/serve/serve_program.hpp"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <fstream>
#include <thread>

#include "tests/practice/samples.hpp"

extern char** environ;

namespace wrenlet::desk::samples {

ServeProgram::ServeProgram(const std::filesystem::path& folder, std::vector<std::string> args)
    : out_(folder / "out.txt"), err_(folder / "err.txt") {
    const std::string program = WRENLET_DESK_PROGRAM;
    args.insert(args.begin(), {program, "serve"});
    int typed[2];
    REQUIRE(pipe2(typed, O_CLOEXEC) == 0);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, typed[0], 0);
    for (const auto& [to, path] : {std::pair{1, &out_}, std::pair{2, &err_}})
        posix_spawn_file_actions_addopen(&actions, to, path->c_str(), O_WRONLY | O_CREAT | O_TRUNC,
                                         0600);
    std::vector<char*> words;
    for (std::string& arg : args) words.push_back(arg.data());
    words.push_back(nullptr);
    REQUIRE(posix_spawn(&process_, program.c_str(), &actions, nullptr, words.data(), environ) == 0);
    posix_spawn_file_actions_destroy(&actions);
    ::close(typed[0]);
    typed_ = typed[1];
}

ServeProgram::~ServeProgram() {
    if (process_ > 0) {
        kill(process_, SIGKILL);
        waitpid(process_, nullptr, 0);
    }
    ::close(typed_);
}

void ServeProgram::type(const std::string& line) {
    REQUIRE(::write(typed_, line.data(), line.size()) > 0);
}

nlohmann::json ServeProgram::event(const std::string& name, std::size_t count) const {
    for (int i = 0; i < 300; ++i) {
        std::ifstream in(out_);
        nlohmann::json newest;
        std::size_t found = 0;
        for (std::string line; std::getline(in, line);) {
            const auto json = nlohmann::json::parse(line, nullptr, false);
            if (!json.is_object() || json["event"] != name) continue;
            newest = json;
            ++found;
        }
        if (found >= count) return newest;
        std::this_thread::sleep_for(std::chrono::milliseconds(30));
    }
    return nullptr;
}

std::string ServeProgram::said() const {
    return practice::samples::fileBytes(err_);
}

std::uint16_t ServeProgram::port() const {
    const auto told = event("address");
    REQUIRE(told.is_object());
    const std::string address = told.value("address", "");
    REQUIRE(address.rfind("http://", 0) == 0);
    return static_cast<std::uint16_t>(std::stoi(address.substr(address.rfind(':') + 1)));
}

int ServeProgram::stop() {
    kill(process_, SIGTERM);
    return wait();
}

int ServeProgram::wait() {
    int status = 0;
    waitpid(process_, &status, 0);
    process_ = 0;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace wrenlet::desk::samples
