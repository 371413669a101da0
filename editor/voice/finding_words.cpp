#include "editor/voice/finding_words.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace wrenlet::desk {
namespace {

using Kind = pack::VoiceNeed::Kind;

/// The letters or sound alone: "b" for "/b/".
std::string bare(const pack::VoiceNeed& need) {
    std::string text = need.text;
    if (text.size() > 2 && text.front() == '/' && text.back() == '/')
        text = text.substr(1, text.size() - 2);
    return text;
}

/// What she says, as it stands in a sentence: "goat" in its quotes, the b, the sentence.
std::string named(const pack::VoiceNeed& need) {
    if (need.kind == Kind::sound) return "the " + bare(need);
    if (need.kind == Kind::sentence || need.kind == Kind::phrase) return "the sentence";
    return '"' + need.text + '"';
}

std::string whole(double number) {
    return std::to_string(std::lround(number));
}

std::string hundredths(double seconds) {
    char text[16];
    std::snprintf(text, sizeof text, "%.2f", seconds);
    return text;
}

bool has(const std::vector<Finding>& findings, Trouble trouble) {
    return std::any_of(findings.begin(), findings.end(),
                       [&](const Finding& finding) { return finding.trouble == trouble; });
}

}  // namespace

FindingWords wordsOf(const Finding& finding, const pack::VoiceNeed& need) {
    const std::string it = named(need), again = "Say it again", keep = "Keep it as it is";
    switch (finding.trouble) {
        case Trouble::silent:
            return {"nothing",
                    "Nothing is heard. Come closer to the microphone and say " + it + ".",
                    {again}};
        case Trouble::clipped:
            return {"too loud",
                    "Too loud: the tops are cut. Lean back and say " + it + " again.",
                    {again, keep}};
        case Trouble::too_quiet:
            return {"too quiet",
                    "Too quiet by " + whole(std::max(1.0, finding.amount)) +
                        " dB. Come closer, or speak up, and say " + it + " again.",
                    {again, keep}};
        case Trouble::noisy:
            return {"noisy",
                    "The room is noisy: speech stands only " +
                        whole(std::max(0.0, finding.amount)) +
                        " dB above it. Come closer, or wait for quiet.",
                    {again, keep}};
        case Trouble::cut_off_start:
            return {"cut off",
                    "The start of " + it + " is missing. Wait a moment before you speak.",
                    {again, keep}};
        case Trouble::cut_off_end:
            return {"cut off",
                    "The end of " + it + " is missing. Wait a moment before you stop.",
                    {again, keep}};
        case Trouble::two_tries:
            return {"said before",
                    "I heard " + it + " more than once. Children would hear it all.",
                    {"Keep the last one", again, keep}};
        case Trouble::added_vowel:
            return {
                "uh",
                "I heard an \"uh\" after " + it + ", " + hundredths(finding.amount) + " seconds.",
                {"Cut it off", keep}};
        case Trouble::another_word:
            return {"another word?",
                    "This sounds more like \"" + finding.instead + "\" than " + it + ".",
                    {"Hear it", "It is " + bare(need), again}};
    }
    return {};
}

std::array<CheckLine, 6> checkLines(const std::vector<Finding>& findings,
                                    const pack::VoiceNeed& need) {
    const auto line = [&](const std::string& well,
                          std::initializer_list<std::pair<Trouble, std::string>> troubles) {
        for (const auto& [trouble, text] : troubles)
            if (has(findings, trouble)) return CheckLine{text, false};
        return CheckLine{well, true};
    };
    const bool is_long = need.kind == Kind::sentence || need.kind == Kind::phrase;
    const std::string it = is_long ? "the sentence" : bare(need);
    return {line("Loud enough",
                 {{Trouble::silent, "Nothing is heard"}, {Trouble::too_quiet, "Too quiet"}}),
            line("Not overdriven", {{Trouble::clipped, "Too loud"}}),
            line("Room is quiet", {{Trouble::noisy, "Room is noisy"}}),
            line("Nothing cut off", {{Trouble::cut_off_start, "Start is missing"},
                                     {Trouble::cut_off_end, "End is missing"}}),
            line("Sounds like " + it, {{Trouble::another_word, "Another word?"},
                                       {Trouble::two_tries, "Said more than once"}}),
            line("No added \"uh\"", {{Trouble::added_vowel, "An added \"uh\""}})};
}

}  // namespace wrenlet::desk
