#include "content/exercise/tune.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::exercise {

namespace {

std::string lower(std::string_view text) {
    std::string word(text);
    for (char& letter : word)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return word;
}

/// The verbs that begin a yes-or-no question; each also with n't.
bool asks(std::string word) {
    static const std::vector<std::string_view> kVerbs = {
        "am",  "is",  "are",   "was", "were",  "do",   "does",  "did",   "has",    "have",
        "had", "can", "could", "may", "might", "will", "would", "shall", "should", "must"};
    if (word == "can't" || word == "won't") return true;
    if (word.size() > 3 && word.substr(word.size() - 3) == "n't") word.resize(word.size() - 3);
    return std::find(kVerbs.begin(), kVerbs.end(), word) != kVerbs.end();
}

bool isQuestionWord(std::string_view word) {
    static const std::vector<std::string_view> kWords = {"who",   "whose", "whom", "what", "which",
                                                         "where", "when",  "why",  "how"};
    const std::string_view stem = word.substr(0, word.find('\''));  // who's, where's
    return std::find(kWords.begin(), kWords.end(), stem) != kWords.end();
}

}  // namespace

std::optional<Tune> tuneOf(const Sentence& sentence) {
    std::string_view text = sentence.text;
    while (!text.empty() && std::string_view(" \"')").find(text.back()) != std::string_view::npos)
        text.remove_suffix(1);
    if (text.empty() || sentence.words.size() < 2) return std::nullopt;
    const char mark = text.back();
    text.remove_suffix(1);
    if (text.find_first_of(".?!;:") != std::string_view::npos) return std::nullopt;
    const std::string first = lower(sentence.words.front().text);
    if (mark == '.') {
        if (asks(first) || isQuestionWord(first)) return std::nullopt;
        return Tune::telling;
    }
    const bool offers =
        std::any_of(sentence.words.begin(), sentence.words.end(),
                    [](const SpokenWord& word) { return lower(word.text) == "or"; });
    if (mark != '?' || !asks(first) || offers || text.find(',') != std::string_view::npos)
        return std::nullopt;
    return Tune::asking;
}

}  // namespace wrenlet::exercise
