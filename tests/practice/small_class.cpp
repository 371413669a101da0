#include "tests/practice/small_class.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::practice::samples {
namespace {

constexpr const char* kSkills[] = {"phoneme.first", "phoneme.last", "phoneme.blend",
                                   "onset-rime.rhyme-pick"};
constexpr const char* kSounds[] = {"p", "b", "t", "d", "k", "ɡ", "m", "n", "f", "s", "ʃ", "l"};
constexpr std::size_t kSoundCount = std::size(kSounds);

/// Sum of twelve throws: nearly normal, with mean 0 and variance 1.
double nearlyNormal(Random& random) {
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += random.unit();
    return sum;
}

}  // namespace

SmallChild::SmallChild(std::uint64_t seed, double level) : random_(seed) {
    for (std::size_t i = 0; i < std::size(kSkills); ++i)
        skills_.push_back(i < 2 ? .97 : .55 + .25 * level + .2 * random_.unit());
    for (std::size_t i = 0; i < kSoundCount; ++i)
        sounds_.push_back(random_.unit() < level ? .97 : .3);
    median_ms_ = 3'800 * std::exp(.35 * nearlyNormal(random_));
    tires_ = random_.unit() < .3 ? .1 + .2 * random_.unit() : 0;
}

Response SmallChild::ask(int session) {
    const auto skill = random_.below(static_cast<std::uint32_t>(std::size(kSkills)));
    const auto sound = random_.below(static_cast<std::uint32_t>(kSoundCount));
    const std::size_t choices = 2 + random_.below(3);
    Response question;
    question.tablet = "t-1";
    question.sequence = static_cast<std::int64_t>(given_.size()) + 1;
    question.child = "c-1";
    question.session = session;
    question.skill = kSkills[skill];
    question.turns_on = {kSounds[sound],
                         skill == 1 ? exercise::Position::last : exercise::Position::first};
    question.item = question.skill.string() + kSounds[sound];
    std::vector<std::string> listed;
    for (std::size_t i = 0; i < choices; ++i) listed.push_back("w" + std::to_string(i));
    question.choices = std::move(listed);
    question.right = question.choices[random_.below(static_cast<std::uint32_t>(choices))];
    question.day = 20'000 + session;
    question.at_ms = question.day * 86'400'000;
    return question;
}

double SmallChild::known(const Response& question) const {
    std::size_t skill = 0, sound = 0;
    while (kSkills[skill] != question.skill) ++skill;
    while (kSounds[sound] != question.turns_on.sound) ++sound;
    return skills_[skill] * sounds_[sound];
}

void SmallChild::answer(Response& question, double attention) {
    const double knows = known(question) * attention;
    const bool is_known = random_.unit() < knows;
    question.chosen =
        is_known
            ? question.right.string()
            : question.choices[random_.below(static_cast<std::uint32_t>(question.choices.size()))];
    question.took_ms = static_cast<std::int64_t>(median_ms_ * (1 + .4 * (1 - knows)) *
                                                 std::exp(.4 * nearlyNormal(random_)));
    question.hearings = random_.unit() < .1 + .2 * (1 - knows) ? 2 : 1;
}

int SmallChild::play(Learner& learner, int session, int taps_from, Tapping tapping) {
    const auto told = [&learner](const Response& question) {
        const Features features = featuresOf(question.skill, question.turns_on);
        const Answering answering = answeringAmong(question.choices.size());
        return tellsListening(chanceOfRight(learner.mastery().known(features), answering),
                              question.choices.size());
    };
    int found = 0;
    for (int asked = 0; asked < 40; ++asked) {
        Response question = ask(session);
        const auto state = learner.attention().state();
        const bool in_doubt =
            asked > 0 && state != Attention::State::listening && state != Attention::State::tired;
        for (int more = 0; in_doubt && more < 15; ++more) {
            Response other = ask(session);
            if (told(other) > told(question)) question = std::move(other);
        }
        answer(question, 1 - tires_ * std::clamp((asked - 20) / 20.0, 0.0, 1.0));
        if (asked >= taps_from) {
            const auto choices = question.choices.size();
            const std::size_t place = tapping.habit == 0   ? random_.below(4)
                                      : tapping.habit == 1 ? 1
                                                           : last_place_ + 1;
            question.chosen = question.choices[place % choices];
            question.hearings = 1;
            if (!tapping.slow) question.took_ms = 500 + random_.below(700);
        }
        last_place_ = static_cast<std::size_t>(
            std::find(question.choices.begin(), question.choices.end(), question.chosen) -
            question.choices.begin());
        if (!question.isRight()) question.means = "heard another sound";
        learner.add(question);
        given_.push_back(std::move(question));
        if (found == 0 && learner.attention().state() == Attention::State::guessing)
            found = asked + 1;
    }
    return found;
}

}  // namespace wrenlet::practice::samples
