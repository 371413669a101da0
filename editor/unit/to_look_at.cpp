#include "editor/unit/to_look_at.hpp"

#include <algorithm>
#include <cstdlib>

#include "content/speech/respelling.hpp"
#include "editor/look/wording.hpp"
#include "editor/unit/unit_at_work.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Lint;
using Kind = WayOut::Kind;

WayOut keep(std::string text = "Keep it so") {
    return {Kind::keep, std::move(text)};
}
WayOut remove(const std::string& text) {
    return {Kind::remove, "Take " + text + " out"};
}
WayOut leaveOut(WordGroup group) {
    WayOut way{Kind::leave_out_of, "Leave out of " + std::string(groupName(group))};
    way.group = group;
    return way;
}
WayOut say(const speech::Pronunciation& sounds) {
    WayOut way{Kind::say, "Say \u201c" + speech::respelling(sounds) + "\u201d"};
    way.sounds = sounds;
    return way;
}

bool isKept(const pack::UnitWord& word, std::string_view code) {
    return std::find(word.kept.begin(), word.kept.end(), code) != word.kept.end();
}

/// True iff one letter more, fewer, changed, or two swapped make the one the other.
bool isOneSlipAway(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > 1 || a == b) return false;
    std::size_t at = 0;
    while (at < a.size() && a[at] == b[at]) ++at;
    if (a.size() < b.size()) return a.substr(at) == b.substr(at + 1);
    if (a.substr(at + 1) == b.substr(at + 1)) return true;
    return at + 1 < a.size() && a[at] == b[at + 1] && a[at + 1] == b[at] &&
           a.substr(at + 2) == b.substr(at + 2);
}

std::vector<std::string> nearWords(const std::string& text, const KnownWords& known,
                                   std::size_t most) {
    std::vector<std::string> near;
    for (const exercise::Word& word : known.classroom().words)
        if (near.size() < most && !word.picture.empty() && isOneSlipAway(text, word.text) &&
            std::find(near.begin(), near.end(), word.text) == near.end())
            near.push_back(word.text);
    return near;
}

void addHowSaid(WordLook& look, const pack::UnitWord& word, const KnownWords& known) {
    if (isKept(word, kSaidSeveralWays)) return;  // she has chosen its sounds
    const Result<KnownWord> found = known.find(word.text);
    if (look.sounds.empty()) {
        ToLookAt todo{"unknown",
                      "not in our list",
                      "\u201c" + look.text + "\u201d is not in our word list",
                      "Nobody knows yet how it is said, so it is not asked.",
                      {}};
        for (const std::string& near : nearWords(look.text, known, 1))
            todo.ways.push_back({Kind::respell, "Change to " + near, near});
        if (found.ok()) todo.ways.push_back(say(found.value().sounds));
        todo.ways.push_back(remove(look.text));
        look.to_look_at.push_back(std::move(todo));
        return;
    }
    if (!found.ok()) return;
    const KnownWord& one = found.value();
    if (word.sense.empty() && !one.other_senses.empty() && !isKept(word, kSeveralSenses)) {
        ToLookAt todo{std::string(kSeveralSenses),
                      "which one?",
                      "\u201c" + look.text + "\u201d has several meanings",
                      "Choose the one that you mean; children see its picture.",
                      {}};
        std::vector<std::string> senses = one.other_senses;
        senses.insert(senses.begin(), one.id);
        for (const std::string& id : senses) {
            if (todo.ways.size() == 3) break;
            const std::size_t tilde = id.find('~');
            todo.ways.push_back({Kind::sense,
                                 tilde == std::string::npos
                                     ? "the usual one"
                                     : "as in \u201c" + id.substr(tilde + 1) + "\u201d",
                                 id});
        }
        look.to_look_at.push_back(std::move(todo));
    } else if (!one.also.empty() && one.id.empty() && speech::sameSounds(look.sounds, one.sounds)) {
        ToLookAt todo{std::string(kSaidSeveralWays),
                      "several ways to say",
                      "\u201c" + look.text + "\u201d has several ways to say it",
                      "Choose one; children hear only that one.",
                      {say(one.sounds)}};
        for (const speech::Pronunciation& other : one.also)
            if (todo.ways.size() < 3) todo.ways.push_back(say(other));
        look.to_look_at.push_back(std::move(todo));
    }
}

/// The warnings on which she decides, by their code; a chip without text: only good to know.
ToLookAt decision(const Lint& lint, const WordLook& look, const KnownWords& known) {
    ToLookAt todo{lint.code, "", lint.why, lint.way_out, {}};
    if (lint.code == "rude") {
        todo.chip = "not fit for class?";
        todo.ways = {remove(look.text), keep("It is fine here")};
    } else if (lint.code == "rude-remainder") {
        todo.chip = "what is left is rude";
        todo.ways = {leaveOut(WordGroup::swap), keep("It is fine here")};
    } else if (lint.code == "no-picture") {
        todo.chip = "no picture";
        todo.ways = {keep("Hear it only")};
        // the dictionary has surnames, so that a slip may well be a word of it
        for (const std::string& near : nearWords(look.text, known, 1))
            todo.ways.push_back({Kind::respell, "Change to " + near, near});
        todo.ways.push_back(remove(look.text));
    } else if (lint.code == "shared-picture") {
        todo.chip = "same picture";
        todo.ways = {{Kind::no_picture, "No picture"}, keep(), remove(look.text)};
    } else if (lint.code == "looks-alike") {
        todo.chip = "looks like another";
        todo.ways = {keep("Keep both"), remove(look.text)};
    } else if (lint.code == "said-alike") {
        todo.chip = "sounds like another";
        todo.ways = {keep("Keep both"), remove(look.text)};
    } else if (lint.code == "looks-compound") {
        todo.chip = "two words in one?";
        todo.ways = {keep("One word")};
    }
    return todo;
}

}  // namespace

void addWarnings(WordLook& look, const pack::UnitWord& word, const exercise::Vocabulary& vocabulary,
                 const std::vector<Lint>& together, const exercise::LintRules& rules,
                 const KnownWords& known) {
    addHowSaid(look, word, known);
    std::vector<Lint> all;
    if (const exercise::Word* found = vocabulary.word(look.id))
        all = exercise::lintWord(*found, vocabulary, rules);
    if (word.compound.empty() && !look.sounds.empty())
        if (auto looks = known.looksCompound(look.id)) all.push_back(std::move(*looks));
    for (const Lint& lint : together)
        if (!lint.words.empty() && lint.words.back() == look.id) all.push_back(lint);
    for (const Lint& lint : all) {
        if (lint.code == "unknown") continue;  // told by addHowSaid, with its ways out
        ToLookAt todo = decision(lint, look, known);
        if (todo.chip.empty()) {
            look.good_to_know.push_back(lint.why);
        } else if (!isKept(word, lint.code)) {
            look.to_look_at.push_back(std::move(todo));
        }
    }
}

}  // namespace wrenlet::desk
