#include "tests/ear/word_report.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>

#include "content/common/random.hpp"
#include "editor/voice/another_word.hpp"
#include "editor/voice/trim.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using desk::SaidWord;
using speech::Pronunciation;

constexpr const char* kTexts =
    "cat hat bat rat can cap map dog log frog pig wig big bed red pen hen ten sun run bun bus cup "
    "duck truck sock rock clock fish dish ship sheep chip goat coat boat rain train cake lake "
    "snake "
    "moon spoon ball wall bell shell ring king fox box bear chair tree bee key deer house mouse "
    "cow "
    "star car jar hand sand nest vest lamp jump milk apple rabbit turtle monkey rainbow umbrella "
    "butterfly elephant banana";

constexpr std::size_t kOthers = 20;

/// True iff one sound is another, or is there or not.
bool isNear(const Pronunciation& a, const Pronunciation& b) {
    const Pronunciation &less = a.size() < b.size() ? a : b, &more = a.size() < b.size() ? b : a;
    if (more.size() - less.size() > 1) return false;
    std::size_t same = 0, end = 0;
    while (same < less.size() && less[same].phoneme == more[same].phoneme) ++same;
    while (end < less.size() - same &&
           less[less.size() - 1 - end].phoneme == more[more.size() - 1 - end].phoneme)
        ++end;
    return same + end >= more.size() - 1 && !speech::sameSounds(a, b);
}

/// Margins of right words and of wrong ones.
struct Margins {
    std::vector<double> right, wrong;

    /// The share that goes wrong where as many right ones are blamed as wrong ones pass, in
    /// percent.
    double equalError() const {
        std::vector<double> all = right;
        all.insert(all.end(), wrong.begin(), wrong.end());
        double best = 100, gap = 2;
        for (const double at : all) {
            const double blamed = part(right, at), passed = 1 - part(wrong, at);
            if (std::fabs(blamed - passed) >= gap) continue;
            gap = std::fabs(blamed - passed);
            best = 50 * (blamed + passed);
        }
        return best;
    }
    static double part(const std::vector<double>& margins, double below) {
        return margins.empty() ? 0
                               : static_cast<double>(
                                     std::count_if(margins.begin(), margins.end(),
                                                   [&](double margin) { return margin < below; })) /
                                     static_cast<double>(margins.size());
    }
};

std::vector<Line> linesOf(const std::string& who, const std::string& among, const Margins& margins,
                          double threshold, double wanted) {
    const auto count = [&](const std::vector<double>& all) {
        return static_cast<int>(std::count_if(all.begin(), all.end(),
                                              [&](double margin) { return margin < threshold; }));
    };
    const int right = static_cast<int>(margins.right.size());
    const int wrong = static_cast<int>(margins.wrong.size());
    Line noticed =
        share("right word", who + "; " + among, "wrong word noticed", count(margins.wrong), wrong);
    Line blamed =
        share("right word", who + "; " + among, "right word blamed", count(margins.right), right);
    blamed.more_is_better = false;
    Line equal;
    equal.check = "right word";
    equal.condition = who + "; " + among;
    equal.figure = "equal error";
    equal.value = margins.equalError();
    equal.of = right + wrong;
    equal.wanted = wanted;
    equal.more_is_better = false;
    return {noticed, blamed, equal};
}

}  // namespace

const std::vector<std::string>& wordTexts() {
    static const std::vector<std::string> all = [] {
        std::istringstream in(kTexts);
        std::vector<std::string> texts;
        for (std::string text; in >> text;) texts.push_back(text);
        return texts;
    }();
    return all;
}

std::vector<std::string> textsOf(std::size_t voice, std::size_t parts) {
    std::vector<std::string> out;
    for (std::size_t i = voice % parts; i < wordTexts().size(); i += parts)
        out.push_back(wordTexts()[i]);
    return out;
}

std::vector<SaidWord> wordsSaid(const speech::Lexicon& lexicon) {
    std::vector<SaidWord> all;
    for (const std::string& text : wordTexts())
        if (const auto said = lexicon.lookUp(text); !said.empty())
            all.push_back({text, said.front()});
    return all;
}

std::vector<Line> wordReport(const std::vector<Word>& words, const std::string& who,
                             const std::vector<SaidWord>& all, desk::WordEar& ear) {
    Margins unrelated, near;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Word& word = words[i];
        Random random(stepSeed(23, i));
        const desk::Pcm take = inRoom(word.clean, 40, Colour::pink, random.next());
        const desk::HeardSpeech heard = desk::heardIn(take);
        const desk::Pcm said = desk::cutOut(take, desk::widened(heard.all(), 0.05, take));
        std::vector<SaidWord> far, close;
        for (const SaidWord& other : all) {
            if (speech::sameSounds(other.sounds, word.sounds)) continue;
            (isNear(other.sounds, word.sounds) ? close : far).push_back(other);
        }
        random.shuffle(far);
        random.shuffle(close);
        if (far.size() <= kOthers) continue;
        const SaidWord itself{word.text, word.sounds};
        const auto margin = [&](const Pronunciation& expected, std::vector<SaidWord> others) {
            const auto judged = ear.judge(said, expected, others);
            return judged ? judged->margin : 0;
        };
        const std::vector<SaidWord> queue(far.begin(),
                                          far.begin() + static_cast<std::ptrdiff_t>(kOthers));
        std::vector<SaidWord> queue_with = queue;
        queue_with.push_back(itself);
        unrelated.right.push_back(margin(word.sounds, queue));
        unrelated.wrong.push_back(margin(far[kOthers].sounds, queue_with));
        if (close.empty()) continue;
        near.right.push_back(margin(word.sounds, close));
        near.wrong.push_back(margin(close.front().sounds, {itself}));
    }
    std::vector<Line> lines =
        linesOf(who, "among unrelated words", unrelated, desk::kAnotherBelow, 5.6);
    if (!near.right.empty())
        for (Line& line : linesOf(who, "among words one sound away", near, desk::kAnotherBelow, 23))
            lines.push_back(std::move(line));
    return lines;
}

}  // namespace wrenlet::ear
