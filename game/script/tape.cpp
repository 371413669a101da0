#include <nlohmann/json.hpp>

#include <set>

#include "game/script/scripted_child.hpp"

namespace wrenlet::game {
namespace {

using Json = nlohmann::json;

/// Reads numbers by name, each within its range, and notes the ones that are not.
class Reader {
  public:
    Reader(const Json& json, std::string_view where) : json_(json), where_(where) {}

    template <class T>
    void number(const char* key, T& value, double least, double most) {
        const auto field = find(key);
        if (field == json_.end()) return;
        if (!field->is_number() || field->get<double>() < least || field->get<double>() > most)
            problems_.push_back({where_, "\"" + std::string(key) + "\" is out of its range.", ""});
        else
            value = field->get<T>();
    }
    void text(const char* key, std::string& value) {
        const auto field = find(key);
        if (field == json_.end()) return;
        if (field->is_string())
            value = field->get<std::string>();
        else
            problems_.push_back({where_, "\"" + std::string(key) + "\" is no text.", ""});
    }
    /// Everything that was wrong, fields that nobody asked for included.
    std::vector<Problem> take() {
        for (const auto& [key, value] : json_.items())
            if (known_.count(key) == 0)
                problems_.push_back({where_, "\"" + key + "\" is no field of a tape.", ""});
        return std::move(problems_);
    }

  private:
    Json::const_iterator find(const char* key) {
        known_.insert(key);
        return json_.find(key);
    }

    const Json& json_;
    std::string where_;
    std::set<std::string> known_;
    std::vector<Problem> problems_;
};

}  // namespace

Result<Tape> readTape(std::string_view json, std::string_view where) {
    const Json parsed = Json::parse(json, nullptr, false);
    if (!parsed.is_object())
        return Problem{std::string(where), "This is no tape of a scripted child.", ""};
    Tape tape;
    Reader reader(parsed, where);
    reader.number("seed", tape.seed, 0, 9e15);
    reader.text("child", tape.child);
    for (const auto& [key, value] : {std::pair{"right_share", &tape.right_share},
                                     {"drag_share", &tape.drag_share},
                                     {"palm_share", &tape.palm_share},
                                     {"replay_share", &tape.replay_share},
                                     {"adult_share", &tape.adult_share}})
        reader.number(key, *value, 0, 1);
    reader.number("sessions", tape.sessions, 1, 100);
    reader.number("width", tape.width, 320, 8192);
    reader.number("height", tape.height, 320, 8192);
    reader.number("most_minutes", tape.most_minutes, 1, 600);
    std::vector<Problem> problems = reader.take();
    if (!problems.empty()) return problems;
    return tape;
}

}  // namespace wrenlet::game
