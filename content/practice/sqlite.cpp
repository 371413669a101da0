#include "content/practice/sqlite.hpp"

#include <sqlite3.h>

namespace wrenlet::practice {

void CloseConnection::operator()(sqlite3* connection) const {
    sqlite3_close_v2(connection);
}

std::string utf8(const std::filesystem::path& path) {
    const auto text = path.u8string();
    return std::string(text.begin(), text.end());
}

Problem problemOf(int code, std::string_view where) {
    const std::string name(where);
    switch (code & 0xff) {
        case SQLITE_FULL:
            return {name, "The disk is full, so this could not be kept.",
                    "Make some room on it; what was kept before is safe."};
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return {name, "This file may be read but not written to.",
                    "Check that its folder is not write-protected."};
        case SQLITE_CANTOPEN:
            return {name, "This file cannot be opened or made.",
                    "Check that its folder is there and may be written to."};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {name, "Another program is using this file.",
                    "Close the other one, then start again."};
        case SQLITE_NOTADB:
            return {name, "This is not a store of answers.", "Choose another file."};
        case SQLITE_CORRUPT:
            return {name, "This store of answers is damaged.",
                    "Keep the file, and put back the newest copy of it from the classroom folder."};
        case SQLITE_IOERR:
            return {name, "The disk did not take or give the data.",
                    "Check that it is still plugged in and has room."};
        case SQLITE_NOMEM:
            return {name, "There is not enough memory to read this file.",
                    "Close other programs and try again."};
        default:
            return {name,
                    std::string("The store of answers reports: ") + sqlite3_errstr(code) + ".", ""};
    }
}

int execute(sqlite3* connection, const char* sql) {
    return sqlite3_exec(connection, sql, nullptr, nullptr, nullptr);
}

void Statement::Finalize::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

Statement::Statement(sqlite3* connection, std::string_view sql) {
    sqlite3_stmt* made = nullptr;
    code_ = sqlite3_prepare_v3(connection, sql.data(), static_cast<int>(sql.size()),
                               SQLITE_PREPARE_PERSISTENT, &made, nullptr);
    statement_.reset(made);
}

void Statement::bind(int parameter, std::int64_t value) {
    sqlite3_bind_int64(statement_.get(), parameter + 1, value);
}

void Statement::bind(int parameter, std::string_view value) {
    // A null pointer would be bound as NULL, and an empty view may hold one.
    sqlite3_bind_text64(statement_.get(), parameter + 1, value.empty() ? "" : value.data(),
                        value.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

bool Statement::row() {
    if (!statement_) return false;
    code_ = sqlite3_step(statement_.get());
    if (code_ == SQLITE_ROW) return true;
    if (code_ == SQLITE_DONE) code_ = SQLITE_OK;
    sqlite3_reset(statement_.get());
    return false;
}

bool Statement::run() {
    return ok() && !row() && code_ == SQLITE_OK;
}

void Statement::reset() {
    sqlite3_reset(statement_.get());
}

bool Statement::isNumber(int column) const {
    return sqlite3_column_type(statement_.get(), column) == SQLITE_INTEGER;
}

bool Statement::isText(int column) const {
    return sqlite3_column_type(statement_.get(), column) == SQLITE_TEXT;
}

std::int64_t Statement::number(int column) const {
    return sqlite3_column_int64(statement_.get(), column);
}

std::string Statement::text(int column) const {
    const auto* bytes = sqlite3_column_text(statement_.get(), column);
    if (!bytes) return {};
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column));
    return std::string(reinterpret_cast<const char*>(bytes), size);
}

std::int64_t numberFrom(sqlite3* connection, std::string_view sql, std::int64_t otherwise) {
    Statement statement(connection, sql);
    return statement.row() ? statement.number(0) : otherwise;
}

}  // namespace wrenlet::practice
