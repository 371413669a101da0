#include "content/practice/question_bank.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <string_view>
#include <tuple>
#include <unordered_map>

namespace wrenlet::practice {

QuestionBank::QuestionBank(std::span<const exercise::Item> items) : items_(items) {
    using Asks = std::tuple<exercise::Skill, std::string_view, exercise::Position, std::size_t>;
    std::map<Asks, std::uint32_t> questions;
    std::unordered_map<FeatureKey, std::uint32_t> numbers;
    // By their ids, so that the order of a pack decides nothing, down to the rounding of sums.
    std::vector<std::uint32_t> order(items.size());
    std::iota(order.begin(), order.end(), 0u);
    std::sort(order.begin(), order.end(),
              [items](std::uint32_t a, std::uint32_t b) { return items[a].id < items[b].id; });
    for (const std::uint32_t i : order) {
        const exercise::Item& item = items[i];
        if (item.choices.empty() || item.answer >= item.choices.size()) continue;
        const auto& [sound, position] = item.turns_on;
        const auto [asked, is_new] =
            questions.try_emplace({item.skill, sound, position, item.choices.size()},
                                  static_cast<std::uint32_t>(questions_.size()));
        entries_.push_back({i, asked->second, keyOf(item.id)});
        if (!is_new) continue;
        const auto [place, is_new_place] = place_numbers_.try_emplace(
            {sound, position}, static_cast<std::uint32_t>(place_numbers_.size()));
        const Features features = featuresOf(exercise::rowOf(item.skill).id, item.turns_on);
        Question question;
        question.skill = item.skill;
        question.place = place->second;
        question.choices = static_cast<std::uint32_t>(item.choices.size());
        question.task_ease = features.task_ease;
        question.sound_ease = features.sound_ease;
        question.answering = answeringAmong(item.choices.size());
        question.begin = static_cast<std::uint32_t>(parts_.size());
        question.sounds = question.begin + static_cast<std::uint32_t>(features.of_task);
        for (const Feature& feature : features) {
            const auto [numbered, is_first] =
                numbers.try_emplace(feature.key, static_cast<std::uint32_t>(features_.size()));
            if (is_first) features_.push_back(feature);
            parts_.push_back({numbered->second, feature.share});
            if (is_new_place &&
                (feature.family == Family::sound_at || feature.family == Family::part_at))
                places_.push_back(numbered->second);
        }
        question.is_on_a_sound =
            std::count_if(features.begin(), features.end(), [](const Feature& feature) {
                return feature.family == Family::sound && feature.share == 1;
            }) == 1;
        question.end = static_cast<std::uint32_t>(parts_.size());
        questions_.push_back(question);
    }
    weigh();
}

void QuestionBank::weigh() {
    std::map<exercise::Skill, double> in_skill;
    std::vector<double> in_place(places_.size()), in_question(questions_.size());
    for (const Entry& entry : entries_) {
        const Question& question = questions_[entry.question];
        in_skill[question.skill] += 1;
        in_place[question.place] += 1;
        in_question[entry.question] += 1;
    }
    for (std::size_t i = 0; i < questions_.size(); ++i) {
        Question& question = questions_[i];
        question.weight = in_question[i] / in_skill[question.skill];
        if (question.is_on_a_sound) question.weight += in_question[i] / in_place[question.place];
    }
}

std::optional<std::uint32_t> QuestionBank::placeOf(const exercise::TurnsOn& turns_on) const {
    const auto found = place_numbers_.find({turns_on.sound, turns_on.position});
    return found == place_numbers_.end() ? std::nullopt : std::optional(found->second);
}

std::uint64_t QuestionBank::keyOf(std::string_view item) {
    std::uint64_t key = 0xcbf29ce484222325ull;
    for (const char c : item) key = (key ^ static_cast<unsigned char>(c)) * 0x100000001b3ull;
    return key;
}

bool QuestionBank::offers(exercise::Skill skill) const {
    return std::any_of(questions_.begin(), questions_.end(),
                       [skill](const Question& one) { return one.skill == skill; });
}

}  // namespace wrenlet::practice
