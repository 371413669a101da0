#include "tests/simulator/run.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "tests/simulator/draw.hpp"
#include "tests/simulator/tapper.hpp"

namespace wrenlet::simulator {

namespace {

using practice::Response;

constexpr std::int64_t kFirstDay = 20'000;
constexpr std::int64_t kDayMs = 86'400'000;
constexpr double kBadSession = 0.6;          // share right under which a session was too hard
constexpr int kReadAfter[] = {1, 2, 4, 10};  // sessions: 40, 80, 160 and 400 items
constexpr int kTopAfter = 4;
constexpr std::size_t kTop = 8;
constexpr int kFoundWithin = 12;
constexpr double kTired = .25;  // of attention lost by a session's end
// The tiredness that one who knows the child looks for: the middle of what counts as tired.
constexpr double kLookedFor = .325, kLookedForFrom = 22.5;

// Streams of one child's seed.
constexpr std::uint64_t kChildStream = 1, kAnswerStream = 2, kChoiceStream = 3, kTapStream = 4,
                        kPupilStream = 5;

std::uint64_t seedOf(const ClassOfChildren& children, int child) {
    // Any two numbers; that they differ keeps the ranges apart.
    const std::uint64_t range = children.seeds == Seeds::tune ? 0x7E57 : 0x1D70;
    return stepSeed(
        stepSeed(range, static_cast<std::uint64_t>(children.generator)),
        static_cast<std::uint64_t>(children.number) * 1000 + static_cast<std::uint64_t>(child));
}

double logLoss(double p, bool right) {
    constexpr double kSurest = 0.999;
    const double kept = std::clamp(p, 1 - kSurest, kSurest);
    return -std::log(right ? kept : 1 - kept);
}

/// Everything about one child in one run.
struct Place {
    std::uint64_t seed = 0;
    std::unique_ptr<Child> child;
    Seat seat;
    std::shared_ptr<Reader> beside;
    std::vector<int> last_asked;         // by item, the answer's number; -1 - kApart: never
    std::vector<double> known_at_first;  // by row
    std::vector<std::size_t> places;     // where the last answers stood
    int asked = 0;
    Tapping tapping;
    bool found = false;
};

class Run {
  public:
    Run(const Bank& bank, const ClassOfChildren& children, const MakeClassroom& make,
        const MakeClassroom& beside, const Listener& listener, bool with_tappers)
        : bank_(bank), listener_(listener), with_tappers_(with_tappers), classroom_(make(bank)) {
        if (beside) beside_ = beside(bank);
        for (int i = 0; i < children.children; ++i) seatChild(children, i);
    }

    void sessions() {
        for (int session = 0; session < kSessions; ++session) {
            for (std::size_t i = 0; i < places_.size(); ++i) playSession(i, session);
            classroom_->dayEnded();
            if (beside_) beside_->dayEnded();
            if (!with_tappers_ && isReadAfter(session + 1)) readAll(session + 1);
            for (Place& place : places_) sleep(place, session);
        }
    }

    void countGains() {
        for (const Place& place : places_)
            for (std::size_t row = 0; row < bank_.rows; ++row) {
                const double at_first = place.known_at_first[row];
                const double gain = place.child->knownOf(bank_.components[row]) - at_first;
                if (at_first < kKnownShare) tally_.of(Measure::weak_gain).add(gain);
                tally_.of(Measure::missed_at_first).add(at_first < kKnownShare);
                tally_.of(Measure::total_gain).add(gain);
                if (place.child->nature().profile == Profile::very_low)
                    tally_.of(Measure::very_low_total_gain).add(gain);
            }
    }

    void countTappers() {
        for (const Place& place : places_) {
            tally_.of(Measure::tap_found).add(place.found);
            if (place.tapping.slow) tally_.of(Measure::tap_found_slow).add(place.found);
        }
    }

    bool watchesTapping() const { return classroom_->watchesTapping(); }
    const Tally& tally() const { return tally_; }

  private:
    void seatChild(const ClassOfChildren& children, int number) {
        Place place;
        place.seed = seedOf(children, number);
        place.child = makeChild(children.generator, bank_, stepSeed(place.seed, kChildStream));
        const Pupil pupil{number, "c-" + std::to_string(number), place.child->shields(),
                          stepSeed(place.seed, kPupilStream)};
        place.seat = classroom_->seat(pupil);
        if (beside_) place.beside = beside_->seat(pupil).reader;
        place.last_asked.assign(bank_.items.size(), -1 - kApart);
        for (std::size_t row = 0; row < bank_.rows; ++row)
            place.known_at_first.push_back(place.child->knownOf(bank_.components[row]));
        Random random(stepSeed(place.seed, kTapStream));
        place.tapping = drawTapping(random);
        places_.push_back(std::move(place));
    }

    void playSession(std::size_t number, int session) {
        Place& place = places_[number];
        int right = 0;
        Held first = Held::listening;  // that was held of the session and was no listening
        bool alarm = false;
        double tells = 0;
        place.places.clear();
        for (int asked = 0; asked < kItems; ++asked) {
            const int item = choose(place, session, asked);
            Random random(stepSeed(stepSeed(place.seed, kAnswerStream),
                                   static_cast<std::uint64_t>(place.asked)));
            const auto order = orderOf(item, place, random);
            const bool taps = with_tappers_ && place.tapping.at(session, asked);
            Answer answer = place.child->answer(item, asked, random);
            if (taps) answer = place.tapping.answer(answer, order, asked, random);
            const Response response =
                responseOf(place, number, session, asked, item, order, answer);
            tells += tellsTired(*place.child, item, asked, response.isRight(), answer.took_ms);
            if (!with_tappers_) countAnswer(place, session, asked, item, response);
            if (listener_) listener_(static_cast<int>(number), item, response);
            see(place, item, response);
            if (!taps) place.child->practise(item, random);
            right += response.isRight();
            place.last_asked[static_cast<std::size_t>(item)] = place.asked++;
            const Held held = place.seat.reader->held();
            if (first == Held::listening) first = held;
            if (held != Held::tapping) continue;
            alarm = true;
            if (taps && asked < place.tapping.from_item + kFoundWithin) place.found = true;
        }
        if (!with_tappers_) countSession(place, right, alarm);
        if (watchesTapping()) countHeld(place, session, first, tells);
    }

    /// How much likelier that answer is of the child when she tires than when she does not.
    static double tellsTired(const Child& child, int item, int asked, bool right, int took_ms) {
        Nature tiring;
        tiring.tires = kLookedFor;
        tiring.tires_from = kLookedForFrom;
        const auto likely = [&](double awake) {
            const double p = child.pRight(item, awake);
            const double off = std::log(took_ms / child.medianMs(item, awake));
            const double spread = child.nature().tempo_spread;
            return std::log(right ? p : 1 - p) - off * off / (2 * spread * spread);
        };
        return likely(attention(tiring, asked)) - likely(1);
    }

    int choose(Place& place, int session, int asked) {
        resting_.resize(bank_.items.size());
        for (std::size_t i = 0; i < resting_.size(); ++i)
            resting_[i] = place.asked - place.last_asked[i] <= kApart;
        return place.seat.policy->choose(
            {session, asked, kFirstDay + session,
             stepSeed(stepSeed(place.seed, kChoiceStream), static_cast<std::uint64_t>(place.asked)),
             resting_});
    }

    /// Shuffled so that no answer place comes three times running; numbers, yes and no keep theirs.
    std::vector<std::size_t> orderOf(int item, Place& place, Random& random) const {
        const exercise::Item& asked = bank_.items[static_cast<std::size_t>(item)].item;
        std::vector<std::size_t> order(asked.choices.size());
        std::iota(order.begin(), order.end(), 0);
        const auto answerPlace = [&] {
            return static_cast<std::size_t>(std::find(order.begin(), order.end(), asked.answer) -
                                            order.begin());
        };
        const std::size_t n = place.places.size();
        const auto isThird = [&] {
            return n >= 2 && place.places[n - 1] == place.places[n - 2] &&
                   answerPlace() == place.places[n - 1];
        };
        if (!exercise::keepsOrder(asked)) {
            random.shuffle(order);
            while (isThird()) random.shuffle(order);
        }
        place.places.push_back(answerPlace());
        return order;
    }

    Response responseOf(const Place& place, std::size_t number, int session, int asked, int item,
                        const std::vector<std::size_t>& order, const Answer& answer) const {
        const exercise::Item& question = bank_.items[static_cast<std::size_t>(item)].item;
        const auto& chosen = question.choices[static_cast<std::size_t>(answer.choice)];
        Response response;
        response.tablet = "t-" + std::to_string(number);
        response.sequence = place.asked + 1;
        response.child = "c-" + std::to_string(number);
        response.session = session + 1;
        response.pack = "bank";
        response.item = question.id;
        response.skill = exercise::rowOf(question.skill).id;
        response.asked = question.subject;
        response.turns_on = question.turns_on;
        response.chosen = chosen.id;
        response.right = question.choices[question.answer].id;
        std::vector<std::string> listed;
        for (const std::size_t index : order) listed.push_back(question.choices[index].id);
        response.choices = std::move(listed);
        response.means = chosen.means;
        response.hearings = answer.hearings;
        response.took_ms = answer.took_ms;
        response.day = kFirstDay + session;
        response.at_ms = response.day * kDayMs + 9 * 3'600'000 + asked * 12'000;
        return response;
    }

    void see(Place& place, int item, const Response& response) {
        place.seat.policy->saw(item, response);
        place.seat.reader->saw(item, response);
        if (place.beside) place.beside->saw(item, response);
    }

    void countAnswer(const Place& place, int session, int asked, int item,
                     const Response& response) {
        tally_.of(Measure::right).add(response.isRight());
        if (session == 0) return;
        tally_.of(Measure::log_loss)
            .add(logLoss(place.seat.reader->pRight(item), response.isRight()));
        const double own = place.child->pRight(item, attention(place.child->nature(), asked));
        tally_.of(Measure::log_loss_child).add(logLoss(own, response.isRight()));
        if (place.beside)
            tally_.of(Measure::log_loss_bkt)
                .add(logLoss(place.beside->pRight(item), response.isRight()));
    }

    void countSession(const Place& place, int right, bool alarm) {
        const bool bad = right < kBadSession * kItems;
        tally_.of(Measure::bad_sessions).add(bad);
        if (place.child->nature().profile == Profile::very_low)
            tally_.of(Measure::very_low_bad_sessions).add(bad);
        if (watchesTapping()) tally_.of(Measure::tap_false).add(alarm);
    }

    static bool isReadAfter(int sessions) {
        return std::find(std::begin(kReadAfter), std::end(kReadAfter), sessions) !=
               std::end(kReadAfter);
    }

    /// Sessions that were neither fresh nor tired are not counted.
    void countHeld(const Place& place, int session, Held first, double tells) {
        const double tires = place.child->nature().tires;
        if (!with_tappers_ && (tires == 0 || tires >= kTired))
            tally_.addTells(tires == 0 ? Truly::fresh : Truly::tired, tells);
        if (with_tappers_ && session == place.tapping.session)
            tally_.addSession(Truly::tapping, first);
        else if (!with_tappers_ && tires == 0)
            tally_.addSession(Truly::fresh, first);
        else if (!with_tappers_ && tires >= kTired)
            tally_.addSession(Truly::tired, first);
    }

    void readAll(int sessions) {
        for (const Place& place : places_) read(place, sessions);
        const auto said = classroom_->said();
        for (std::size_t i = 0; i < said.size(); ++i)
            for (const SaidLine& line : said[i])
                tally_.addSaid(line, knownOf(*places_[i].child, line.cell));
    }

    /// Mean share known of the bank's items that ask the cell.
    double knownOf(const Child& child, const practice::Cell& cell) {
        if (cells_.empty())
            for (std::size_t i = 0; i < bank_.items.size(); ++i) {
                const exercise::Item& item = bank_.items[i].item;
                cells_[{std::string(exercise::rowOf(item.skill).id), item.turns_on}].push_back(
                    static_cast<int>(i));
            }
        const std::vector<int>& items = cells_.at(cell);
        double sum = 0;
        for (const int item : items) sum += child.known(item);
        return sum / static_cast<double>(items.size());
    }

    void read(const Place& place, int sessions) {
        std::vector<std::pair<double, bool>> named;  // how likely missed, and whether it is
        for (std::size_t row = 0; row < bank_.rows; ++row) {
            const Reading reading = place.seat.reader->row(static_cast<int>(row));
            const double known = place.child->knownOf(bank_.components[row]);
            tally_.addReading(reading, known);
            named.emplace_back(reading.p_missed, known < kKnownShare);
        }
        if (sessions != kTopAfter) return;
        // Rows that are equally likely stay in their order.
        std::stable_sort(named.begin(), named.end(),
                         [](const auto& a, const auto& b) { return a.first > b.first; });
        for (std::size_t i = 0; i < std::min(kTop, named.size()); ++i)
            tally_.of(Measure::top8_precision).add(named[i].second);
    }

    void sleep(Place& place, int session) {
        Random random(stepSeed(stepSeed(place.seed, kAnswerStream),
                               1'000'000u + static_cast<unsigned>(session)));
        place.child->night(random);
        place.seat.policy->night();
        place.seat.reader->night();
        if (place.beside) place.beside->night();
    }

    const Bank& bank_;
    const Listener& listener_;
    const bool with_tappers_;
    std::unique_ptr<Classroom> classroom_, beside_;
    std::vector<Place> places_;
    std::vector<std::uint8_t> resting_;
    std::map<practice::Cell, std::vector<int>> cells_;  // their items in the bank
    Tally tally_;
};

}  // namespace

Tally runClass(const Bank& bank, const ClassOfChildren& children, const MakeClassroom& make,
               const MakeClassroom& beside, const Listener& listener) {
    Run honest(bank, children, make, beside, listener, false);
    honest.sessions();
    honest.countGains();
    Tally tally = honest.tally();
    if (!honest.watchesTapping()) return tally;
    const Listener nobody;
    Run tapping(bank, children, make, {}, nobody, true);
    tapping.sessions();
    tapping.countTappers();
    tally.add(tapping.tally());
    return tally;
}

}  // namespace wrenlet::simulator
