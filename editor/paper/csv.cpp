#include <cstdio>
#include <string_view>

#include "editor/look/said.hpp"
#include "editor/paper/exports.hpp"

namespace wrenlet::desk::paper {

namespace {

class Csv {
  public:
    explicit Csv(std::span<const std::string_view> heads) {
        for (const std::string_view head : heads) add(head);
        endLine();
    }
    Csv& add(std::string_view cell) {
        std::string text(cell);
        // a tab and a carriage return are said to start formulas as well (OWASP, "CSV Injection")
        if (!text.empty() && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos)
            text.insert(0, "'");
        if (text.find_first_of(",\"\r\n") != std::string::npos) {
            std::string quoted = "\"";
            for (const char c : text) quoted += c == '"' ? "\"\"" : std::string(1, c);
            text = quoted + "\"";
        }
        line_ += (is_first_ ? "" : ",") + text;
        is_first_ = false;
        return *this;
    }
    Csv& add(std::int64_t number) { return raw(std::to_string(number)); }
    Csv& add(double number) {
        char text[32];
        std::snprintf(text, sizeof text, "%.4f", number);
        return raw(text);
    }
    void endLine() {
        text_ += line_ + "\r\n";
        line_.clear();
        is_first_ = true;
    }
    std::string take() { return std::move(text_); }

  private:
    Csv& raw(const std::string& number) {
        line_ += (is_first_ ? "" : ",") + number;
        is_first_ = false;
        return *this;
    }

    std::string text_, line_;
    bool is_first_ = true;
};

}  // namespace

std::string responsesCsv(std::span<const practice::Response> responses) {
    constexpr std::string_view kHeads[] = {
        "tablet",  "sequence", "child",    "session", "pack",       "item",     "skill",
        "asked",   "sound",    "position", "chosen",  "right",      "is_right", "means",
        "choices", "try",      "hearings", "took_ms", "at_unix_ms", "day"};
    Csv csv(kHeads);
    for (const practice::Response& one : responses) {
        csv.add(one.tablet).add(one.sequence).add(one.child).add(one.session).add(one.pack);
        csv.add(one.item).add(one.skill).add(one.asked).add(one.turns_on.sound);
        csv.add(exercise::positionId(one.turns_on.position)).add(one.chosen).add(one.right);
        csv.add(std::int64_t{one.isRight()}).add(one.means);
        std::string choices;
        for (const std::string& choice : one.choices)
            choices += (choices.empty() ? "" : " ") + choice;
        csv.add(choices).add(std::int64_t{one.try_number}).add(std::int64_t{one.hearings});
        csv.add(one.took_ms).add(one.at_ms).add(one.day);
        csv.endLine();
    }
    return csv.take();
}

std::string progressCsv(std::span<const practice::ChildProgress> children) {
    constexpr std::string_view kHeads[] = {"child",  "skill", "standard",    "sound",    "position",
                                           "right",  "seen",  "by_guessing", "p_missed", "low",
                                           "middle", "high",  "shielded",    "said"};
    Csv csv(kHeads);
    for (const practice::ChildProgress& child : children)
        for (const practice::SoundLine& line : child.lines) {
            const auto skill = exercise::skillFromId(line.cell.skill);
            const practice::Evidence& evidence = line.evidence;
            csv.add(child.child.id).add(line.cell.skill);
            csv.add(skill ? exercise::rowOf(*skill).standard : "").add(line.cell.turns_on.sound);
            csv.add(exercise::positionId(line.cell.turns_on.position));
            csv.add(std::int64_t{evidence.right}).add(std::int64_t{evidence.seen});
            csv.add(evidence.guess).add(evidence.reading.p_missed).add(evidence.reading.low);
            csv.add(evidence.reading.middle).add(evidence.reading.high);
            csv.add(std::int64_t{line.shielded}).add(wordOf(saidOf(line)));
            csv.endLine();
        }
    return csv.take();
}

}  // namespace wrenlet::desk::paper
