// The questions that a pack's items ask, made ready for choosing among thousands of them: items
// that ask the same of a child share one question, and questions share their features by number.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/practice/mastery.hpp"

namespace wrenlet::practice {

class QuestionBank {
  public:
    struct Part {
        std::uint32_t feature = 0;  // into features()
        double share = 1;
    };
    struct Question {
        exercise::Skill skill{};
        std::uint32_t place = 0;  // the number of its sound and position, below places()
        /// A question stands in its skill's line of a report and, if it is on a sound, in that
        /// sound's: its items' share of both.
        double weight = 0;
        bool is_on_a_sound = false;  // on one phoneme in its place
        std::uint32_t choices = 0;   // how many
        double task_ease = 0, sound_ease = 0;
        Answering answering;
        std::uint32_t begin = 0, sounds = 0, end = 0;  // into its parts: the task's, the sound's
    };
    struct Entry {
        std::uint32_t item = 0;      // into items()
        std::uint32_t question = 0;  // into questions()
        std::uint64_t key = 0;       // keyOf() the item's id
    };

    /// `items` must outlive it. Items without choices are left out.
    explicit QuestionBank(std::span<const exercise::Item> items);

    std::span<const exercise::Item> items() const { return items_; }
    std::span<const Entry> entries() const { return entries_; }
    std::span<const Question> questions() const { return questions_; }
    std::span<const Feature> features() const { return features_; }
    std::span<const Part> ofTask(const Question& question) const {
        return std::span(parts_).subspan(question.begin, question.sounds - question.begin);
    }
    std::span<const Part> ofSound(const Question& question) const {
        return std::span(parts_).subspan(question.sounds, question.end - question.sounds);
    }
    /// A sound in its place that items turn on: the number of its feature.
    std::span<const std::uint32_t> places() const { return places_; }
    /// Into places(); nothing if no item turns on that.
    std::optional<std::uint32_t> placeOf(const exercise::TurnsOn& turns_on) const;
    /// An item's own number, whatever its place in the pack: FNV-1a of its id.
    static std::uint64_t keyOf(std::string_view item);
    bool offers(exercise::Skill skill) const;

  private:
    void weigh();

    std::span<const exercise::Item> items_;
    std::vector<Entry> entries_;
    std::vector<Question> questions_;
    std::vector<Part> parts_;
    std::vector<Feature> features_;
    std::vector<std::uint32_t> places_;
    std::map<std::pair<std::string_view, exercise::Position>, std::uint32_t> place_numbers_;
};

}  // namespace wrenlet::practice
