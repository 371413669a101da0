// The scheduler's constants, all in one place, each with what it is for.
#pragma once

#include <cstdint>

namespace wrenlet::practice {

/// Every constant of the choice. None is fitted to children; they are this project's own rules.
struct Policy {
    // How the likeliness of a right answer is guessed.
    double first_skill_success = 0.85;  // before any answer, for the skill taught first
    double later_skill_step = 0.03;     // and so much less for each one taught later
    double skill_prior_tries = 4;       // that guess counts as so many tries
    double cell_prior_tries = 2;        // the skill's counts as so many tries at its cell
    double just_missed = 0.15;          // taken off where the last try was missed

    // What an item is for.
    int warm_up_items = 2;      // the first ones are the likeliest to succeed
    double focus_share = 0.6;   // of the throws of the dice: today's two skills
    double missed_share = 0.2;  // missed before this session; the rest is for what is due
    std::int64_t days_until_due[4] = {1, 2, 4, 8};  // after 1, 2, 3, 4 and more right in a row

    // Which one: the higher score. 1 is all the difference between known and unknown.
    double strain = 3;           // for each 1 that success lies under the floor below
    double floor = 0.5;          // likeliness of success that is still enough on a good day
    double floor_most = 0.85;    // and on a bad one
    double good_day = 0.8;       // share of right answers under which the floor rises with it
    double day_weight = 0.15;    // of the newest answer in that share
    double again_today = 0.15;   // for each time the cell was asked in this session
    double another_task = 0.05;  // for leaving the last item's skill
    double overdue = 0.2;        // for what is due longest
    double chance = 0.1;         // a seeded throw, so that like items take turns
    double stay = 0.05;          // success that warm-up and ending give up so that a sort goes on

    // Today's two skills.
    int focus_skills = 2;
    double focus_prior_known = 0.5;  // share known of a skill before any answer
    double focus_prior_tries = 4;    // that counts as so many tries

    // Hard rules.
    int places_running = 2;  // most answers in one place running
    int sounds_running = 2;  // most answers that turn on one sound running
    int skills_running = 5;  // most items of one skill running
    int items_apart = 20;    // items between an item and itself
};
inline constexpr Policy kPolicy;

}  // namespace wrenlet::practice
