#include "tests/practice/samples.hpp"

#include <doctest/doctest.h>
#include <sqlite3.h>

#include <atomic>
#include <fstream>
#include <iterator>
#include <system_error>

#ifndef _WIN32
#include <unistd.h>
#else
#include <process.h>
#define getpid _getpid
#endif

namespace wrenlet::practice::samples {

Folder::Folder() {
    static std::atomic<int> count{0};
    path_ = std::filesystem::temp_directory_path() /
            ("wrenlet-test-" + std::to_string(getpid()) + "-" + std::to_string(++count));
    std::filesystem::create_directories(path_);
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

Response response() {
    Response response;
    response.child = "c-01";
    response.session = 1;
    response.pack = "by-the-pond 1";
    response.item = "onset-rime.rhyme-sort:cat:hat,pen";
    response.skill = "onset-rime.rhyme-sort";
    response.asked = "cat";
    response.turns_on = {"æt", exercise::Position::rime};
    response.chosen = "hat";
    response.right = "hat";
    response.choices = {"pen", "hat"};
    response.took_ms = 2400;
    response.at_ms = 1'700'000'000'000;
    response.day = 19'675;
    return response;
}

std::string fileBytes(const std::filesystem::path& path) {
    if (!std::filesystem::is_regular_file(path)) return {};
    std::ifstream in(path, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
}

void writeBytes(const std::filesystem::path& path, std::string_view bytes) {
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

std::string runSql(const std::filesystem::path& path, const char* sql) {
    sqlite3* connection = nullptr;
    REQUIRE(sqlite3_open(path.string().c_str(), &connection) == SQLITE_OK);
    std::string value;
    const auto keep = [](void* out, int, char** columns, char**) {
        *static_cast<std::string*>(out) = columns[0] ? columns[0] : "";
        return 0;
    };
    char* message = nullptr;
    const int code = sqlite3_exec(connection, sql, keep, &value, &message);
    CHECK_MESSAGE(code == SQLITE_OK, std::string(message ? message : ""));
    sqlite3_free(message);
    sqlite3_close(connection);
    return value;
}

}  // namespace wrenlet::practice::samples
