// "Find me more": where the teacher stands among the words that are offered for a skill, and adding
// them to the unit. Looking for them happens aside.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "editor/tryout/find_more.hpp"
#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

class Finder {
  public:
    Finder(OpenUnit& unit, Aside& finding, std::function<void()> wake);
    ~Finder() { newest_.wait(); }

    /// Topic and sound are taken back when it is another skill.
    void lookFor(exercise::Skill skill);
    void setTopic(const std::string& topic);  // the one that is set: any again
    void setSound(const std::string& sound);
    const std::string& topic() const { return topic_; }
    const std::string& sound() const { return sound_; }
    const std::vector<std::string>& topics() const { return topics_; }
    const std::vector<std::string>& sounds() const { return sounds_; }

    /// Null while it still looks.
    const Offers* offers() const;
    std::size_t chosen() const { return chosen_; }
    void choose(std::size_t index) { chosen_ = index; }
    void move(int by);
    void add();  // the one chosen
    void addAll();

    void step();

  private:
    OpenUnit& unit_;
    Newest<std::shared_ptr<const Offers>> newest_;
    std::optional<exercise::Skill> skill_;
    std::string topic_, sound_;
    std::vector<std::string> topics_, sounds_;
    struct Asked {
        std::uint64_t changes = 0;  // of the unit whose look was asked with
        std::string topic, sound;
        bool operator==(const Asked&) const = default;
    };
    std::optional<Asked> asked_;
    std::uint64_t calls_ = 0;  // the number of the newest
    std::shared_ptr<const Offers> offers_;
    std::size_t chosen_ = 0;
};

}  // namespace wrenlet::desk
