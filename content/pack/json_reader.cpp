#include "content/pack/json_reader.hpp"

#include <algorithm>

#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::size_t kMostProblems = 40;  // more are not read by anyone
constexpr int kMostDepth = 16;

bool isTooDeep(std::string_view text) {
    int depth = 0;
    bool in_string = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (in_string) {
            if (c == '\\')
                ++i;
            else if (c == '"')
                in_string = false;
        } else if (c == '"') {
            in_string = true;
        } else if (c == '[' || c == '{') {
            if (++depth > kMostDepth) return true;
        } else if (c == ']' || c == '}') {
            --depth;
        }
    }
    return false;
}

/// Builds the values as they are read, and remembers where the text breaks, without an exception:
/// a web page has none.
class Reading final : public nlohmann::detail::json_sax_dom_parser<Json> {
  public:
    explicit Reading(Json& into) : json_sax_dom_parser(into, false) {}

    template <class Exception>
    bool parse_error(std::size_t at, const std::string& token, const Exception& error) {
        broken_at_ = at;
        return json_sax_dom_parser::parse_error(at, token, error);
    }
    std::size_t brokenAt() const { return broken_at_; }

  private:
    std::size_t broken_at_ = 0;
};

std::string inField(std::string_view place, const char* key) {
    return place.empty() ? std::string(key) : std::string(place) + ", " + key;
}

}  // namespace

std::string placeIn(std::string_view list, std::size_t index) {
    return std::string(list) + ", " + std::to_string(index + 1);
}

Result<Json> parseJson(std::string_view text, std::string_view where) {
    if (isUtf16(text))
        return Problem{std::string(where), "This is text in UTF-16.", "Save it as UTF-8."};
    if (isTooDeep(text))
        return Problem{std::string(where), "This file is nested too deeply to be one of ours.",
                       "Choose another file."};
    Json read;
    Reading reading(read);
    if (Json::sax_parse(text.begin(), text.end(), &reading)) return read;
    const auto at = static_cast<std::ptrdiff_t>(std::min(reading.brokenAt(), text.size()));
    const auto line = 1 + std::count(text.begin(), text.begin() + at, '\n');
    return Problem{std::string(where) + ", line " + std::to_string(line),
                   "The text breaks off or has a sign too many here.",
                   "Look for a missing comma, quote or bracket on this line or just above."};
}

void JsonReader::add(std::string_view place, std::string what, std::string way_out,
                     Problem::Weight weight) {
    const auto same = std::count_if(problems_.begin(), problems_.end(),
                                    [&](const Problem& p) { return p.weight == weight; });
    if (static_cast<std::size_t>(same) >= kMostProblems) {
        ++(weight == Problem::Weight::error ? untold_errors_ : untold_warnings_);
        return;
    }
    std::string where = where_;
    if (!place.empty()) where += ", " + std::string(place);
    problems_.push_back({std::move(where), std::move(what), std::move(way_out), weight});
}

std::vector<Problem> JsonReader::takeProblems() {
    using Weight = Problem::Weight;
    for (const auto& [count, weight] :
         {std::pair{untold_errors_, Weight::error}, std::pair{untold_warnings_, Weight::warning}})
        if (count > 0)
            problems_.push_back({where_, "There are " + std::to_string(count) + " more like these.",
                                 "Put these right first.", weight});
    untold_errors_ = untold_warnings_ = 0;
    return std::move(problems_);
}

void JsonReader::error(std::string_view place, std::string what, std::string way_out) {
    add(place, std::move(what), std::move(way_out), Problem::Weight::error);
}

void JsonReader::warn(std::string_view place, std::string what, std::string way_out) {
    add(place, std::move(what), std::move(way_out), Problem::Weight::warning);
}

bool JsonReader::isObject(const Json& value, std::string_view place) {
    if (value.is_object()) return true;
    error(place, "Here should be fields in { }.", "Compare it with a file that works.");
    return false;
}

bool JsonReader::isFormat(const Json& root, std::string_view format, int version,
                          std::string_view noun) {
    if (!isObject(root, "")) return false;
    const auto kind = root.find("format");
    const auto number = root.find("format_version");
    if (kind == root.end() || !kind->is_string() || kind->get_ref<const std::string&>() != format ||
        number == root.end() || !number->is_number_integer()) {
        error("", "This is not " + std::string(noun) + ".", "Choose another file.");
        return false;
    }
    if (const auto is = number->get<std::int64_t>(); is < 1 || is > version) {
        error("", "This was made by another version of Wrenlet.",
              "Bring the newer Wrenlet to this machine.");
        return false;
    }
    return true;
}

const Json* JsonReader::field(const Json& object, const char* key, std::string_view place,
                              bool needed) {
    const auto it = object.find(key);
    if (it != object.end() && !it->is_null()) return &*it;
    if (needed) error(inField(place, key), "This field is missing.", "Add it.");
    return nullptr;
}

std::string JsonReader::text(const Json& object, const char* key, std::string_view place,
                             std::size_t most_letters, bool needed) {
    const Json* value = field(object, key, place, needed);
    if (!value) return "";
    if (!value->is_string()) {
        error(inField(place, key), "Here should be text in quotes.", "Put it in quotes.");
        return "";
    }
    std::string found = value->get<std::string>();
    if (!isLine(found, most_letters)) {
        error(inField(place, key),
              inQuotes(found) + " is longer than " + std::to_string(most_letters) +
                  " letters or has characters that cannot be seen.",
              "Shorten or retype it.");
        return "";
    }
    if (needed && found.empty()) error(inField(place, key), "This field is empty.", "Fill it in.");
    return found;
}

std::vector<std::string> JsonReader::texts(const Json& object, const char* key,
                                           std::string_view place, std::size_t most,
                                           std::size_t most_letters) {
    std::vector<std::string> out;
    const Json* value = field(object, key, place, false);
    if (!value) return out;
    const bool fits =
        value->is_array() && value->size() <= most &&
        std::all_of(value->begin(), value->end(), [&](const Json& entry) {
            return entry.is_string() && isLine(entry.get_ref<const std::string&>(), most_letters);
        });
    if (!fits) {
        error(inField(place, key),
              "Here should be a list in [ ] of at most " + std::to_string(most) +
                  " short texts in quotes.",
              "Compare it with a file that works.");
        return out;
    }
    for (const Json& entry : *value) out.push_back(entry.get<std::string>());
    return out;
}

std::int64_t JsonReader::whole(const Json& object, const char* key, std::string_view place,
                               std::int64_t least, std::int64_t most, std::int64_t otherwise) {
    const Json* value = field(object, key, place, false);
    if (!value) return otherwise;
    const bool unsigned_too_large =
        value->is_number_unsigned() && value->get<std::uint64_t>() > std::uint64_t(INT64_MAX);
    if (value->is_number_integer() && !unsigned_too_large) {
        const auto found = value->get<std::int64_t>();
        if (found >= least && found <= most) return found;
    }
    error(inField(place, key),
          "Here should be a whole number from " + std::to_string(least) + " to " +
              std::to_string(most) + ".",
          "Change it.");
    return otherwise;
}

double JsonReader::number(const Json& object, const char* key, std::string_view place) {
    const Json* value = field(object, key, place, true);
    if (!value) return 0;
    if (value->is_number()) return value->get<double>();
    error(inField(place, key), "Here should be a number.", "Change it.");
    return 0;
}

bool JsonReader::flag(const Json& object, const char* key, std::string_view place) {
    const Json* value = field(object, key, place, false);
    if (!value) return false;
    if (value->is_boolean()) return value->get<bool>();
    error(inField(place, key), "Here should be true or false.", "Change it.");
    return false;
}

const Json& JsonReader::list(const Json& object, const char* key, std::size_t most, bool needed) {
    static const Json kNone = Json::array();
    const Json* value = field(object, key, "", needed);
    if (!value) return kNone;
    if (!value->is_array()) {
        error(key, "Here should be a list in [ ].", "Compare it with a file that works.");
        return kNone;
    }
    if (value->size() > most) {
        error(key,
              "This list has " + std::to_string(value->size()) + " entries, more than the " +
                  std::to_string(most) + " that fit.",
              "Split it into smaller ones.");
        return kNone;
    }
    return *value;
}

const Json& JsonReader::object(const Json& parent, const char* key) {
    static const Json kNone = Json::object();
    const Json* value = field(parent, key, "", false);
    return value && isObject(*value, key) ? *value : kNone;
}

}  // namespace wrenlet::pack
