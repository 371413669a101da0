// Responses, items and folders to test with; the words are nobody's in particular.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "content/exercise/item.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice::samples {

/// A folder of its own, gone when the test ends.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    const std::filesystem::path& path() const { return path_; }
    std::filesystem::path operator/(std::string_view name) const { return path_ / name; }

  private:
    std::filesystem::path path_;
};

/// The child "c-01" hears "cat" and sends it home to "hat", rightly, in session 1.
Response response();

std::string fileBytes(const std::filesystem::path& path);
void writeBytes(const std::filesystem::path& path, std::string_view bytes);

/// Runs SQL on a file from outside, as some other program would; gives the first value.
std::string runSql(const std::filesystem::path& path, const char* sql);

}  // namespace wrenlet::practice::samples
