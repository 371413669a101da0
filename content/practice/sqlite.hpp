// A thin layer over SQLite for the store and its snapshots: handles that close themselves, and
// its error codes as problems in a teacher's words. Nothing outside practice/ includes it.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "content/common/result.hpp"

struct sqlite3;
struct sqlite3_stmt;

namespace wrenlet::practice {

struct CloseConnection {
    void operator()(sqlite3* connection) const;
};
using Connection = std::unique_ptr<sqlite3, CloseConnection>;

/// A path as SQLite wants it: UTF-8 on every system.
std::string utf8(const std::filesystem::path& path);

/// What an SQLite result code means for the file called `where`.
Problem problemOf(int code, std::string_view where);

/// Runs statements that give no rows. The code is SQLite's; 0 when all went well.
int execute(sqlite3* connection, const char* sql);

/// A prepared statement. Parameters and columns are numbered from 0; a parameter keeps its value
/// until it is bound again.
class Statement {
  public:
    Statement() = default;
    Statement(sqlite3* connection, std::string_view sql);

    bool ok() const { return statement_ != nullptr; }
    int code() const { return code_; }  // of the last call

    void bind(int parameter, std::int64_t value);
    void bind(int parameter, std::string_view value);

    /// True when there is a row. After the last one, or an error, the statement is reset.
    bool row();
    /// For a statement without rows: true when it was carried out.
    bool run();
    void reset();

    // Of the current row.
    bool isNumber(int column) const;
    bool isText(int column) const;
    std::int64_t number(int column) const;
    std::string text(int column) const;

  private:
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
    int code_ = 0;
};

/// The one number that `sql` gives; `otherwise` when it gives none.
std::int64_t numberFrom(sqlite3* connection, std::string_view sql, std::int64_t otherwise);

}  // namespace wrenlet::practice
