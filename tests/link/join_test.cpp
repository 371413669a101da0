#include "content/link/join.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/link/join_code.hpp"
#include "tests/link/seeded_entropy.hpp"

using namespace wrenlet;
using namespace wrenlet::link;
using samples::SeededEntropy;

namespace {

constexpr std::int64_t kNow = 1'790'000'000'000;
const std::string kCode = "K7MD4RXP";

TabletIdentity identity() {
    TabletIdentity given;
    given.tablet = "t-4f2a";
    given.key.fill(7);
    return given;
}

struct Meeting {
    SeededEntropy entropy{1};
    JoinDoor door = *JoinDoor::open(kCode, kNow, entropy);
    JoiningTablet tablet(const std::string& code = kCode) {
        return *JoiningTablet::begin(code, door.offer(), entropy);
    }
    std::variant<Joined, JoinRefusal> ask(const std::string& request, std::int64_t now = kNow) {
        return door.answer(request, now, identity(), entropy);
    }
};

bool refused(const std::variant<Joined, JoinRefusal>& answer, JoinRefusal why) {
    const auto* const refusal = std::get_if<JoinRefusal>(&answer);
    return refusal != nullptr && *refusal == why;
}

std::string with(std::string bytes, std::size_t at, char other) {
    bytes[at] = static_cast<char>(bytes[at] ^ other);
    return bytes;
}

}  // namespace

TEST_CASE("A tablet that knows the code is handed its name and key") {
    Meeting meeting;
    const JoiningTablet tablet = meeting.tablet();
    const auto answer = meeting.ask(tablet.request());
    REQUIRE(std::holds_alternative<Joined>(answer));
    CHECK(std::get<Joined>(answer).answer.size() <= kMostJoinAnswerBytes);
    CHECK(tablet.finish(std::get<Joined>(answer).answer) == identity());
    CHECK_FALSE(meeting.door.isOpen(kNow));
}

TEST_CASE("The key never goes over the network as it is") {
    Meeting meeting;
    const auto answer = std::get<Joined>(meeting.ask(meeting.tablet().request())).answer;
    CHECK(answer.find(std::string(4, 7)) == answer.npos);
    CHECK(answer.find("t-4f2a") == answer.npos);
}

TEST_CASE("A code is good for one tablet") {
    Meeting meeting;
    REQUIRE(std::holds_alternative<Joined>(meeting.ask(meeting.tablet().request())));
    CHECK(refused(meeting.ask(meeting.tablet().request()), JoinRefusal::closed));
}

TEST_CASE("A tablet whose answer got lost is answered alike, and only it can read it") {
    Meeting meeting;
    const JoiningTablet tablet = meeting.tablet();
    const auto first = std::get<Joined>(meeting.ask(tablet.request()));
    const auto second = std::get<Joined>(meeting.ask(tablet.request(), kNow + 2000));
    CHECK_FALSE(first.again);
    CHECK(second.again);
    CHECK(first.answer == second.answer);
    CHECK_FALSE(meeting.tablet().finish(second.answer));
    CHECK(refused(meeting.ask(tablet.request(), kNow + JoinDoor::kLivesMs), JoinRefusal::closed));
}

TEST_CASE("A code lives five minutes") {
    Meeting meeting;
    const std::string request = meeting.tablet().request();
    CHECK(meeting.door.isOpen(kNow + JoinDoor::kLivesMs - 1));
    CHECK_FALSE(meeting.door.isOpen(kNow + JoinDoor::kLivesMs));
    CHECK(refused(meeting.ask(request, kNow + JoinDoor::kLivesMs), JoinRefusal::closed));
}

TEST_CASE("Guesses are slowed, and after five the code is gone") {
    Meeting meeting;
    const std::string right = meeting.tablet().request();
    const std::string wrong = meeting.tablet("K7MD4RXQ").request();
    std::int64_t now = kNow;
    for (int i = 0; i < JoinDoor::kMostWrong; ++i) {
        REQUIRE(refused(meeting.ask(wrong, now), JoinRefusal::wrong_code));
        if (i + 1 < JoinDoor::kMostWrong) {
            const std::int64_t wait = JoinDoor::kFirstWaitMs << i;
            CHECK(refused(meeting.ask(right, now + wait - 1), JoinRefusal::too_soon));
            CHECK(meeting.door.wrong() == i + 1);
            now += wait;
        }
    }
    CHECK(refused(meeting.ask(right, now + 60'000), JoinRefusal::closed));
}

TEST_CASE("A right code after a wrong one is let in") {
    Meeting meeting;
    REQUIRE(refused(meeting.ask(meeting.tablet("K7MD4RXQ").request()), JoinRefusal::wrong_code));
    CHECK(std::holds_alternative<Joined>(meeting.ask(meeting.tablet().request(), kNow + 1000)));
}

TEST_CASE("Whatever bit of a request is changed, the tablet is not let in") {
    Meeting meeting;
    const std::string request = meeting.tablet().request();
    for (std::size_t at = 0; at < request.size(); ++at) {
        JoinDoor door = meeting.door;
        const auto answer = door.answer(with(request, at, static_cast<char>(1 << at % 8)), kNow,
                                        identity(), meeting.entropy);
        CHECK(std::holds_alternative<JoinRefusal>(answer));
    }
    for (std::size_t size = 0; size < request.size(); ++size)
        CHECK(refused(meeting.ask(request.substr(0, size)), JoinRefusal::no_request));
    CHECK(refused(meeting.ask(request + "x"), JoinRefusal::no_request));
    CHECK(meeting.door.wrong() == 0);
}

TEST_CASE("Whatever bit of an answer is changed, the tablet takes no key from it") {
    Meeting meeting;
    const JoiningTablet tablet = meeting.tablet();
    const std::string answer = std::get<Joined>(meeting.ask(tablet.request())).answer;
    REQUIRE(tablet.finish(answer));
    for (std::size_t at = 0; at < answer.size(); ++at)
        CHECK_FALSE(tablet.finish(with(answer, at, static_cast<char>(1 << at % 8))));
    for (std::size_t size = 0; size < answer.size(); ++size)
        CHECK_FALSE(tablet.finish(answer.substr(0, size)));
}

TEST_CASE("Who stands between without the code gets nothing from either side") {
    // It plays the desk to the tablet and the tablet to the desk, with a code that it guessed.
    Meeting meeting;
    SeededEntropy between(2);
    const JoiningTablet tablet = meeting.tablet();
    JoinDoor false_desk = *JoinDoor::open("22222222", kNow, between);
    const auto to_tablet = false_desk.answer(tablet.request(), kNow, identity(), between);
    CHECK(refused(to_tablet, JoinRefusal::wrong_code));
    const auto false_tablet = JoiningTablet::begin("22222222", meeting.door.offer(), between);
    CHECK(refused(meeting.ask(false_tablet->request()), JoinRefusal::wrong_code));
}

TEST_CASE("A public key of small order is refused") {
    // RFC 7748, section 6.1: the all-zero product. The key of zeros is one that leads to it.
    Meeting meeting;
    std::string request = meeting.tablet().request();
    request.replace(1, 32, std::string(32, '\0'));
    CHECK(refused(meeting.ask(request), JoinRefusal::wrong_code));
}

TEST_CASE("An offer that is none, or of another version, begins nothing") {
    Meeting meeting;
    const std::string offer = meeting.door.offer();
    CHECK_FALSE(JoiningTablet::begin(kCode, "", meeting.entropy));
    CHECK_FALSE(JoiningTablet::begin(kCode, offer + "x", meeting.entropy));
    CHECK_FALSE(JoiningTablet::begin(kCode, with(offer, 0, 2), meeting.entropy));
}

TEST_CASE("A code is eight signs of which none looks like another") {
    SeededEntropy entropy(3);
    std::string seen;
    for (int i = 0; i < 400; ++i) {
        const std::string code = makeCode(entropy);
        REQUIRE(code.size() == kCodeLength);
        CHECK(codeFromTyped(code) == code);
        seen += code;
    }
    for (const char sign : kCodeSigns) CHECK(seen.find(sign) != seen.npos);
    for (const char sign : std::string("01ILOU")) CHECK(seen.find(sign) == seen.npos);
}

TEST_CASE("A code is taken however it is typed, and nothing else is") {
    CHECK(codeFromTyped("k7md 4rxp") == kCode);
    CHECK(codeFromTyped(" K7MD-4RXP ") == kCode);
    CHECK(codeToShow(kCode) == "K7MD 4RXP");
    for (const char* none : {"", "K7MD4RX", "K7MD4RXPP", "K7MD4RX0", "K7MD4RX\xC3\x84", "K7MD_RXP"})
        CHECK_FALSE(codeFromTyped(none));
}
