// Reads our JSON files field by field and gathers every problem with its place, so that a broken
// file is told in one go and never by an exception. For the .cpp files that read one.
#pragma once

#include <cstddef>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::pack {

using Json = nlohmann::json;

/// The parsed text. Errors: UTF-16, not JSON (with its line), nested deeper than 16.
Result<Json> parseJson(std::string_view text, std::string_view where);

class JsonReader {
  public:
    explicit JsonReader(std::string_view where) : where_(where) {}

    /// Checks the "format" and "format_version" that each of our files begins with: up to `version`,
    /// the newest that is understood.
    bool isFormat(const Json& root, std::string_view format, int version, std::string_view noun);

    /// The field `key` of `object`; the default and a problem when it is of another kind. `place`
    /// is where `object` stands ("words, 3"). A field marked needed must be there.
    std::string text(const Json& object, const char* key, std::string_view place,
                     std::size_t most_letters, bool needed = false);
    std::vector<std::string> texts(const Json& object, const char* key, std::string_view place,
                                   std::size_t most, std::size_t most_letters);
    std::int64_t whole(const Json& object, const char* key, std::string_view place,
                       std::int64_t least, std::int64_t most, std::int64_t otherwise);
    double number(const Json& object, const char* key, std::string_view place);
    bool flag(const Json& object, const char* key, std::string_view place);
    /// A list of objects; an empty one and a problem when it is not that.
    const Json& list(const Json& object, const char* key, std::size_t most, bool needed);
    const Json& object(const Json& parent, const char* key);
    /// False, with a problem, when `value` is no object.
    bool isObject(const Json& value, std::string_view place);

    void error(std::string_view place, std::string what, std::string way_out);
    void warn(std::string_view place, std::string what, std::string way_out);

    bool failed() const { return anyError(problems_); }
    /// At most 40 of a weight, and one that counts the rest.
    std::vector<Problem> takeProblems();

  private:
    void add(std::string_view place, std::string what, std::string way_out, Problem::Weight weight);
    const Json* field(const Json& object, const char* key, std::string_view place, bool needed);

    std::string where_;
    std::vector<Problem> problems_;
    std::size_t untold_errors_ = 0, untold_warnings_ = 0;
};

/// "words, 3" for index 2: people count from one.
std::string placeIn(std::string_view list, std::size_t index);

}  // namespace wrenlet::pack
