#include <nlohmann/json.hpp>
#include <optional>

#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/typed_word.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/known_words.hpp"

namespace wrenlet::desk {

namespace {

using speech::Pronunciation;

constexpr const char* kUse = "wrenlet-desk rhyme A B [--accent NAME]... [--json]\n";

struct Call {
    std::vector<std::string> words;
    std::vector<speech::Accent> accents;
    bool json = false;
};

std::string knownAccents() {
    std::string text = "Known are:\n";
    for (const speech::Accent accent : speech::allAccents()) {
        std::string name(speech::accentName(accent));
        name.resize(14, ' ');
        text += "  " + name + std::string(speech::accentMeaning(accent)) + "\n";
    }
    return text;
}

/// Nothing, with the reason on `err`, when the words of the call are off.
std::optional<Call> callOf(std::span<const std::string> args, std::ostream& err) {
    Call call;
    for (std::size_t i = 0; i < args.size(); ++i) {
        if (args[i] == "--json") {
            call.json = true;
        } else if (args[i] == "--accent") {
            const std::string name = i + 1 < args.size() ? args[++i] : std::string();
            const auto accent = speech::accentNamed(name);
            if (!accent) {
                err << "No accent is called \"" << speech::shownWord(name) << "\". "
                    << knownAccents();
                return std::nullopt;
            }
            call.accents.push_back(*accent);
        } else if (args[i].substr(0, 2) == "--") {
            err << "Not understood: " << speech::shownWord(args[i]) << "\nUse: " << kUse;
            return std::nullopt;
        } else {
            call.words.push_back(args[i]);
        }
    }
    if (call.words.size() == 2) return call;
    err << "Name two words.\nUse: " << kUse;
    return std::nullopt;
}

std::vector<Pronunciation> allWays(const KnownWord& word) {
    std::vector<Pronunciation> all{word.sounds};
    all.insert(all.end(), word.also.begin(), word.also.end());
    return all;
}

/// A sentence when another way to say one of the words would change the verdict; else empty.
std::string otherwise(const KnownWord& a, const KnownWord& b, const Call& call,
                      const speech::RhymeVerdict& verdict) {
    for (const Pronunciation& said : allWays(a))
        for (const Pronunciation& other : allWays(b)) {
            const auto there = speech::rhymeVerdict(said, other, call.accents);
            if (there.answer == verdict.answer) continue;
            return " Said /" + speech::ipa(said) + "/ and /" + speech::ipa(other) + "/, " +
                   (there.answer == speech::RhymeAnswer::yes  ? "they rhyme."
                    : there.answer == speech::RhymeAnswer::no ? "they do not rhyme."
                                                              : "it depends on the accent.");
        }
    return "";
}

std::string guessed(const KnownWord& word) {
    if (!word.confirm_by_ear) return "";
    return " How \"" + word.text + "\" is said, /" + speech::ipa(word.sounds) +
           "/, is a guess: confirm by ear.";
}

}  // namespace

int rhymeCommand(std::span<const std::string> args, Console console) {
    const std::optional<Call> call = callOf(args, console.err);
    if (!call) return 2;
    const Result<KnownWords> words = KnownWords::open(console.assets);
    for (const Problem& problem : words.problems()) console.err << sentence(problem) << "\n";
    if (!words.ok()) return 1;
    const Result<KnownWord> a = words.value().find(call->words[0]);
    const Result<KnownWord> b = words.value().find(call->words[1]);
    for (const auto* word : {&a, &b})
        for (const Problem& problem : word->problems()) console.err << sentence(problem) << "\n";
    if (!a.ok() || !b.ok()) return 1;

    speech::RhymeVerdict verdict =
        speech::rhymeVerdict(a.value().sounds, b.value().sounds, call->accents);
    verdict.why +=
        otherwise(a.value(), b.value(), *call, verdict) + guessed(a.value()) + guessed(b.value());
    if (call->json) {
        nlohmann::ordered_json json;
        json["rhyme"] = speech::rhymeAnswerName(verdict.answer);
        json["kind"] = speech::rhymeKindName(verdict.kind);
        json["why"] = verdict.why;
        console.out << json.dump(2) << "\n";
    } else {
        console.out << speech::rhymeAnswerName(verdict.answer) << " ("
                    << speech::rhymeKindName(verdict.kind) << "): " << verdict.why << "\n";
    }
    return 0;
}

}  // namespace wrenlet::desk
