// The constants of the estimator and of the scheduler, all in one place, each with what it is for.
#pragma once

#include <cstddef>
#include <cstdint>

namespace wrenlet::practice {

/// What is believed of a child before any answer, and how beliefs move. Set on simulated children
/// (tests/simulator), which are no evidence about real ones.
struct Model {
    // How much children differ, as variances in log-odds, in the order of Family: child, unit,
    // skill, hearing, position, class_at, sound, sound_at, part_at.
    double variance[9] = {1.1, .25, .8, .31, .1, .5, .4, 1.5, .1};
    // How much a class may differ from what is believed of all, in the same order.
    double class_variance[9] = {.5, .25, .5, .5, .16, .25, .16, .25, .05};
    double family_weight = 94;  // the variances above count as so many beliefs of a class

    // Log-odds of knowing, before any answer. Larger units are easier than smaller ones (Stahl &
    // Murray 1994), and blending and isolating easier than segmenting and taking away (de Graaff
    // et al. 2011); the figures are this project's own.
    // sentence, compound, syllable, onset_rime, phoneme, letter
    double unit_ease[6] = {2, 2, 1.7, 1.5, 1, 1.3};
    // count, blend, segment, add, remove, substitute, tune, rhyme_judge, rhyme_sort, odd_one_out,
    // rhyme_pick, first, last, middle, long_short, name, sound, both_sounds, for_sound, digraph,
    // build
    double task_ease[21] = {0,  .3, -.3, -.4, -.8, -.9, .2,  .2, .2,  -.1, .1,
                            .4, .1, -.1, -.3, .6,  .2,  -.4, .1, -.3, -.3};
    double part_ease = 3.5;         // of what is no sound
    double sound_ease = 1.8;        // of any sound
    double share_of_several = .43;  // of each sound, where a question turns on several (a rime)

    double guess_over_chance = .055;
    double most_guess = .6;
    double slip = .055;

    // An answer makes a question surer than it makes its parts, each by itself: their errors cancel
    // out. Beliefs that are kept apart can hold one of the two. At 0 every part is as sure as it is
    // by itself, and their sum too unsure; at 1 the sum is right, and every part too sure.
    double together = .2;

    // Practice teaches: what an answer adds to the belief in the parts that it practised, and to
    // its variance. Of what a day added, a share is taken back on the next day; and a night adds
    // variance, since children forget, and learn elsewhere.
    double learned_task = .03;
    double learned_sound = .03;
    double learned_alone = .3;  // share of it, where the other of the two is not known
    double learned_variance = .03;
    double taken_back = .25;
    double night_variance = .01;
    double night_variance_child = .02;
    double most_nights = 30;  // so many nights make their variance; longer gaps count as these

    // Asked aloud: nothing to choose from, so hardly right by chance; an ear errs too. From memory.
    double heard_guess = .05;
    double heard_slip = .08;

    // What is said of a place.
    double known_from = .6;      // "missed" is: knows less than this share
    double missed_from = .8;     // P(missed) from which a sound is called missed
    double steady_to = .1;       // and to which it is called steady
    double task_variance = .15;  // of a place's items among each other, beside what is believed
    double sound_variance = .1;
    // What is believed comes out a little low: to read an answer well, guessing is taken to be
    // likelier than it is, and each side is known only through the other. In log-odds, of each.
    double task_reads_low = .36;
    double sound_reads_low = .36;
    // Ranges are drawn for less variance than is believed: with all of it they held more of the
    // truths than they say, of children who know sounds by degrees. An end nearer than `closed` to
    // none or all is none or all, since a child may know a sound wholly or not at all.
    double range_variance = .75;
    double closed = .14;
};
inline constexpr Model kModel;

/// How answers given without listening and answers given tired look, beside a child's own.
struct Attending {
    // Times, as ln of milliseconds, before any answer of the child; how much children differ, and
    // how much one does.
    double shortest_ms = 250;  // anything quicker counts as this
    double usual_ms = 4'000;
    double own_variance = .64;
    double kind_variance = .04;  // between the mechanics of the game
    double slope = .3;           // more where she cannot but guess than where she is sure
    double slope_variance = .04;
    double day_variance = .01;  // what a new session adds to own_variance
    double spread = .4;
    double spread_weight = 12;  // counts as so many answers
    double memory = 200;        // and older ones than so many fade
    double farthest = 2.5;      // spreads beyond which an answer pulls no stronger
    double stray = .03;         // of the answers, that come from anywhere
    double stray_variance = 2;

    // Those who tap: in times of their own, or so much quicker than the child's (as ln).
    double tapper_ms = 850;
    double tapper_variance = .2;
    double tapper_quicker = 1.2;
    double replays = .15;         // of prompts, by those who listen, before any answer
    double replays_weight = 6;    // counts as so many answers
    double tapper_replays = .03;  // and by those who don't
    double habit_kept = .85;      // how often a habit is kept
    double habit_memory = .9;     // of older touches at each new one
    double most_known = .93;      // sure is never surer than this: fingers slip
    // What she is believed to know surely is held against what her answers showed of it.
    double sure_from = .4;        // of the share believed known
    double sure_weight = 8;       // so much counts as shown before any answer
    double sure_memory = 80;      // and older ones than so much fade
    double sure_at_first = .9;    // kept of it, before any answer
    std::size_t sure_after = 12;  // answers of this session until one counts
    double least_kept = .5;

    // Tired: so much of what she knows is left, and times are longer by so much (as ln).
    double tired_share = .7;
    double tired_slower = .2;
    // And as it comes over her in a session (tiredness.hpp).
    double tires_first = 10,
           tires_step = 4;       // answers until it may begin, and between such moments
    double tired_grows = 17;     // answers until it is whole
    double tired_depth = .325;   // of attention lost then
    double tired_slowing = .8;   // longer, as a share, for each 1 of attention lost
    double today_variance = .1;  // of one day's times about those of all, as ln

    // How often, from one answer to the next, or at a session's first.
    double becomes_fast = .002, becomes_own_pace = .003, listens_again = .005, changes_pace = .005;
    double becomes_quick = .0002, slows_down = .02;
    double becomes_tired = .01, wakes_up = .02;
    double guessing_at_first = .01;  // each way of it
    double quick_at_first = .03;
    double tired_at_first = .01;

    // What is done about it, from which P(guessing) on.
    double unsure_from = .025;   // asks, now and then, what is surely known
    double reminds_from = .3;    // says "listen again"
    double guessing_from = .86;  // found: not counted
    double listens_below = .2;   // found listening again
    double tired_from = 1.8;     // of nats
    std::size_t most_kept = 64;  // answers of a session that are looked back on
};
inline constexpr Attending kAttending;

/// Every constant of the choice. Set on simulated children like the model's.
struct Policy {
    // What an item is worth: how much of it there is to learn. A child learns a sound best in a
    // task she can do, and a task on sounds she knows; where she knows neither, little.
    double sound_need = 1;     // for a sound that is not known at all
    double skill_need = .5;    // for a skill that is not
    double most_reach = 6;     // a skill counts as so many lines of a report at most
    double other_place = .32;  // of it, on a letter, a rime, a part, a number
    double middle = .47;       // how far what is half known teaches more than what is not at all
    double alone = .4;         // share of that where the other one is not known either
    double missed = .11;       // missed in an earlier session and not right since
    double overdue = .08;      // for what is due longest
    double focus = .1;         // for today's skills
    double pinned = 1.5;       // for skills that the teacher pinned

    // How hard it may be. Success is weighed against worth by a pull: where the day goes well, what
    // is hard and teaches most is asked; where it goes badly, what the child can do.
    double aim = .71;         // share of right answers of a day
    double aim_tries = 6;     // that share counts as so many answers before the first one
    double pull = 1.9;        // for each 1 of likeliness of success, on a day as aimed at
    double pull_slope = 140;  // more of it, for each 1 that the day's share falls short
    double pull_least = 0;
    double sure = .85;  // likeliness of success that is as good as certain

    // What came just now makes way.
    double again_today = .05;    // for each time the place was asked in this session
    double just_now = .14;       // asked as one of the last two
    double skill_today = .07;    // for each time the skill was asked in this session
    double times_seen = .57;     // for each time the item was asked lately, three at most
    std::size_t lately = 400;    // answers
    double another_task = .035;  // for leaving the last item's skill
    double chance = .05;         // a seeded throw, so that like items take turns
    double stay = .05;           // success that warm-up and ending give up so that a sort goes on

    int warm_up_items = 2;                          // the first ones are the likeliest to succeed
    std::int64_t days_until_due[4] = {1, 2, 4, 8};  // after 1, 2, 3, 4 and more right in a row

    int focus_skills = 2;    // today's
    int new_skills = 4;      // most skills begun in one session; pinned ones may always begin
    double easy_skill = .8;  // and those that are likely known so well

    // Hard rules.
    int places_running = 2;  // most answers in one place running
    int sounds_running = 2;  // most answers that turn on one sound running
    int skills_running = 5;  // most items of one skill running
    int items_apart = 60;    // items between an item and itself
};
inline constexpr Policy kPolicy;

}  // namespace wrenlet::practice
