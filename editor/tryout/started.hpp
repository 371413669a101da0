// A program that was started and is waited for, as each system has it: what it prints is read, its
// end is asked for or forced.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace wrenlet::desk {

class Started {
  public:
    /// It reads nothing; what it prints to its standard output comes back here. `words` are UTF-8.
    Started(const std::filesystem::path& program, const std::vector<std::string>& words);
    ~Started();
    Started(const Started&) = delete;
    Started& operator=(const Started&) = delete;

    /// Whether there was such a program to start.
    bool isThere() const;

    /// Reads to the end; false when it prints more than `most_bytes` or takes longer than it may.
    bool read(std::string& text, std::size_t most_bytes,
              std::optional<std::chrono::seconds> longest);

    /// Its exit code; -1 when it did not end by itself.
    int wait();

    // Both until wait() has returned, from any thread.
    void askToEnd();
    void kill();

  private:
    struct Process;
    std::unique_ptr<Process> process_;
};

}  // namespace wrenlet::desk
