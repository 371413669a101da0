// All that is known of one child, kept up to date one response at a time: what she knows (mastery),
// whether she listens (attention), and which answers are not counted because she gave them without
// listening. When she is found guessing, the answers since it likely began are taken out of mastery
// again, at most to the beginning of that session; what follows stays out while it lasts.
//
// The same responses in the same order give the same state to the last bit.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/practice/attention.hpp"
#include "content/practice/mastery.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

/// First answers running in one session that are not counted.
struct LeftOut {
    std::string tablet;
    std::int64_t session = 0;
    std::int64_t day = 0;
    std::int64_t first = 0, last = 0;  // their sequence numbers
    int answers = 0;
    bool operator==(const LeftOut&) const = default;
};

/// Whether a first answer is among them.
bool isAmong(const Response& response, std::span<const LeftOut> left_out);
std::map<std::int64_t, int> answersByDay(std::span<const LeftOut> left_out);

class Learner {
  public:
    /// As Mastery takes them.
    explicit Learner(std::shared_ptr<const ClassPriors> priors = std::make_shared<ClassPriors>(),
                     std::vector<std::string> shields = {});

    /// Responses of one child, a session's running one after another, days not backwards.
    void add(const Response& response);

    /// What was asked aloud, between sessions. It is never taken back.
    void hear(const Heard& heard);

    const Mastery& mastery() const { return mastery_; }
    const Attention& attention() const { return attention_; }

    /// Oldest first.
    std::span<const LeftOut> leftOut() const { return left_out_; }
    /// Of a response that was added.
    bool isCounted(const Response& response) const { return !isAmong(response, left_out_); }
    /// What is kept of the child takes in memory.
    std::size_t bytes() const;
    int notCounted() const;
    int notCounted(std::string_view tablet, std::int64_t session) const;

  private:
    /// An answer of this session that was counted.
    struct Counted {
        std::int64_t sequence = 0;
        Mastery::Before before;
    };
    void enterSessionOf(const Response& response);
    void leaveOut(const Response& response);

    Mastery mastery_;
    std::vector<std::string> shields_;
    Attention attention_;
    std::string tablet_;
    std::int64_t session_ = -1;
    std::vector<Counted> counted_;  // in this session, since guessing was last found
    bool leaves_out_ = false;       // the newest answer
    std::vector<LeftOut> left_out_;
};

}  // namespace wrenlet::practice
