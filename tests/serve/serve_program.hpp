// The command `serve` as a program of its own, its standard input a pipe and its output files.
#pragma once

#include <sys/types.h>

#include <cstddef>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace wrenlet::desk::samples {

class ServeProgram {
  public:
    /// Its output goes into `folder`; `args` stand behind "serve".
    ServeProgram(const std::filesystem::path& folder, std::vector<std::string> args);
    /// Kills it, as a power cut would.
    ~ServeProgram();
    ServeProgram(const ServeProgram&) = delete;
    ServeProgram& operator=(const ServeProgram&) = delete;

    void type(const std::string& line);
    /// The newest line with that event, once there are so many; null after nine seconds.
    nlohmann::json event(const std::string& name, std::size_t count = 1) const;
    std::string said() const;  // on its error output
    /// Where it listens, as it says.
    std::uint16_t port() const;
    /// In good order; its exit code.
    int stop();
    int wait();

  private:
    std::filesystem::path out_, err_;
    pid_t process_ = 0;
    int typed_ = -1;
};

}  // namespace wrenlet::desk::samples
