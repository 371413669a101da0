// A file that is held for as long as this lives, so that two programs, or two hands in one, are
// told apart. The system lets it go when the program ends, also when it is killed. On a network
// share that keeps no locks nobody is told apart.
#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

namespace wrenlet::desk {

class HeldFile {
  public:
    /// Makes the file if it is not there. None: somebody else holds it, or it cannot be made.
    static std::optional<HeldFile> take(const std::filesystem::path& path);
    /// Tries again for so long as somebody else holds it.
    static std::optional<HeldFile> wait(const std::filesystem::path& path, int most_ms);

    /// What the file says from now on, for whoever finds it held.
    void say(std::string_view text) const;

    HeldFile(HeldFile&& other) noexcept;
    HeldFile& operator=(HeldFile&&) = delete;
    ~HeldFile();

  private:
    explicit HeldFile(int handle) : handle_(handle) {}
    int handle_;
};

}  // namespace wrenlet::desk
