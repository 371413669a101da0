#include "tests/desk/demo_class.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "content/common/random.hpp"

namespace wrenlet::desk::demo {

namespace {

using exercise::Position;

struct Foil {
    const char* chosen;
    const char* means;
};

// One sound in one skill: what is asked on it, the head of its home where there is one, the foils
// from the nearest to the farthest, and how hard it is in this invented class.
struct Sound {
    const char* skill;
    const char* sound;
    Position position;
    std::vector<const char*> asked;
    const char* head;  // empty: the asked word is itself the right choice
    std::vector<Foil> foils;
    double hardness;
};

const std::vector<Sound>& sounds() {
    static const std::vector<Sound> all{
        {"sentence.count",
         "3",
         Position::word_count,
         {"s-1", "s-2"},
         "3",
         {{"4", "counted one too many"}, {"2", "counted one too few"}},
         0.15},
        {"sentence.count",
         "4",
         Position::word_count,
         {"s-3", "s-4"},
         "4",
         {{"5", "counted one too many"}, {"3", "counted one too few"}},
         0.3},
        {"sentence.count",
         "5",
         Position::word_count,
         {"s-5", "s-6"},
         "5",
         {{"6", "counted one too many"}, {"4", "counted one too few"}},
         0.5},
        {"sentence.count",
         "6",
         Position::word_count,
         {"s-7", "s-8"},
         "6",
         {{"5", "counted one too few"}, {"7", "counted one too many"}},
         0.75},
        {"onset-rime.rhyme-sort",
         "ɪɡ",
         Position::rime,
         {"pig", "dig"},
         "wig",
         {{"mug", "heard /ʌɡ/ for /ɪɡ/"}, {"ten", "heard /ɛn/ for /ɪɡ/"}},
         0.45},
        {"onset-rime.rhyme-sort",
         "æt",
         Position::rime,
         {"cat", "bat"},
         "hat",
         {{"ten", "heard /ɛn/ for /æt/"}, {"coat", "heard /oʊt/ for /æt/"}},
         0.2},
        {"onset-rime.rhyme-sort",
         "ɛn",
         Position::rime,
         {"hen", "pen"},
         "ten",
         {{"hat", "heard /æt/ for /ɛn/"}, {"wig", "heard /ɪɡ/ for /ɛn/"}},
         0.55},
        {"onset-rime.rhyme-sort",
         "ʌɡ",
         Position::rime,
         {"bug", "rug"},
         "mug",
         {{"wig", "heard /ɪɡ/ for /ʌɡ/"}, {"hat", "heard /æt/ for /ʌɡ/"}},
         0.3},
        {"onset-rime.rhyme-sort",
         "oʊt",
         Position::rime,
         {"boat", "goat"},
         "coat",
         {{"hat", "heard /æt/ for /oʊt/"}, {"mug", "heard /ʌɡ/ for /oʊt/"}},
         0.35},
        {"compound.blend",
         "bow~rain",
         Position::whole,
         {"rainbow"},
         "",
         {{"raincoat", "heard coat for bow"}, {"snowman", "another word"}},
         0.1},
        {"compound.blend",
         "fish",
         Position::whole,
         {"starfish", "goldfish"},
         "",
         {{"starlight", "heard light for fish"}, {"cupcake", "another word"}},
         0.15},
        {"compound.blend",
         "cup",
         Position::whole,
         {"cupcake"},
         "",
         {{"pancake", "heard pan for cup"}, {"rainbow", "another word"}},
         0.12},
        {"onset-rime.blend",
         "k",
         Position::first,
         {"cat", "coat"},
         "",
         {{"bat", "heard /b/ for /k/ first"}, {"hat", "heard /h/ for /k/ first"}},
         0.3},
        {"onset-rime.blend",
         "m",
         Position::first,
         {"mug", "moon"},
         "",
         {{"bug", "heard /b/ for /m/ first"}, {"rug", "heard /ɹ/ for /m/ first"}},
         0.1},
        {"onset-rime.blend",
         "ʃ",
         Position::first,
         {"sheep", "ship"},
         "",
         {{"jeep", "heard /dʒ/ for /ʃ/ first"}, {"sleep", "heard /sl/ for /ʃ/ first"}},
         0.4},
        {"onset-rime.blend",
         "p",
         Position::first,
         {"pig", "pen"},
         "",
         {{"big", "heard /b/ for /p/ first"}, {"wig", "heard /w/ for /p/ first"}},
         0.5},
        {"phoneme.blend",
         "t",
         Position::last,
         {"cat", "goat", "net"},
         "",
         {{"cap", "heard /p/ for /t/ last"}, {"can", "heard /n/ for /t/ last"}},
         0.85},
        {"phoneme.blend",
         "p",
         Position::last,
         {"cup", "map"},
         "",
         {{"cut", "heard /t/ for /p/ last"}, {"cub", "heard /b/ for /p/ last"}},
         0.7},
        {"phoneme.blend",
         "n",
         Position::last,
         {"hen", "sun"},
         "",
         {{"hem", "heard /m/ for /n/ last"}, {"head", "heard /d/ for /n/ last"}},
         0.35},
        {"phoneme.blend",
         "ɛ",
         Position::middle,
         {"pen", "net"},
         "",
         {{"pin", "heard /ɪ/ for /ɛ/ in the middle"}, {"pan", "heard /æ/ for /ɛ/ in the middle"}},
         0.8},
        {"phoneme.blend",
         "æ",
         Position::middle,
         {"cat", "map"},
         "",
         {{"cut", "heard /ʌ/ for /æ/ in the middle"}, {"kit", "heard /ɪ/ for /æ/ in the middle"}},
         0.4},
    };
    return all;
}

constexpr std::array<const char*, 22> kNames{
    "Callum", "Sol", "Gus",  "Amir", "Jonah", "Ravi", "Wes",  "Maya", "Oona", "Imani", "Tess",
    "Zora",   "Bea", "Dede", "Elio", "Farah", "Hana", "Kiri", "Leo",  "Nils", "Pia",   "Uma"};

std::string twoDigits(std::size_t number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

std::string childId(std::size_t at) {
    return "c-" + twoDigits(at + 1);
}

practice::Response answer(const Sound& sound, double knows, Random& random) {
    practice::Response response;
    response.skill = sound.skill;
    response.turns_on = {sound.sound, sound.position};
    response.asked = sound.asked[random.below(static_cast<std::uint32_t>(sound.asked.size()))];
    response.right = *sound.head ? sound.head : response.asked;
    std::vector<std::string> listed{response.right.string()};
    for (const Foil& foil : sound.foils) listed.emplace_back(foil.chosen);
    random.shuffle(listed);
    response.choices = std::move(listed);
    const double guess = 1.0 / static_cast<double>(response.choices.size());
    if (random.unit() < knows + (1 - knows) * guess) {
        response.chosen = response.right;
    } else {
        const Foil& foil = sound.foils[random.unit() < 0.75 ? 0 : 1];
        response.chosen = foil.chosen;
        response.means = foil.means;
    }
    return response;
}

bool isSchoolDay(std::int64_t day) {
    const std::int64_t weekday = (day + 4) % 7;  // 1970-01-01 was a Thursday; 0 is Sunday
    return weekday != 0 && weekday != 6;
}

}  // namespace

pack::ClassList classList() {
    pack::ClassList list;
    list.title = "Demo class";
    list.pack = "by-the-pond-3.zip";
    for (std::size_t at = 0; at < kNames.size(); ++at)
        list.children.push_back({childId(at), kNames[at], "badge-" + twoDigits(at + 1), {}});
    list.children[7].shields = {"pin-pen"};
    return list;
}

std::vector<practice::Response> responses(std::uint64_t seed) {
    constexpr std::int64_t kDays = 18;
    constexpr int kItems = 34;
    std::vector<practice::Response> all;
    std::array<std::int64_t, 4> sequences{};
    for (std::size_t child = 0; child + 1 < kNames.size(); ++child) {
        Random random(stepSeed(seed, child));
        const double talent = 0.05 + 0.95 * static_cast<double>(child) / 20;
        std::vector<double> knows;
        for (const Sound& sound : sounds())
            knows.push_back(std::clamp(
                talent * 1.2 - sound.hardness + 0.45 + random.unit() * 0.3 - 0.15, 0.02, 0.98));
        for (std::int64_t day = kLastDay - kDays; day <= kLastDay; ++day) {
            if (!isSchoolDay(day) || random.unit() < 0.12) continue;
            const std::size_t tablet = random.below(sequences.size());
            for (int item = 0; item < kItems; ++item) {
                const auto at = random.below(static_cast<std::uint32_t>(sounds().size()));
                practice::Response response = answer(sounds()[at], knows[at], random);
                knows[at] = std::min(0.98, knows[at] + 0.008);
                response.child = childId(child);
                response.tablet = "t-" + std::to_string(tablet + 1);
                response.sequence = ++sequences[tablet];
                response.session = day;
                response.item = response.skill.string() + "/" + response.asked.string();
                response.pack = "by-the-pond 3";
                response.took_ms = 2'500 + random.below(7'000);
                response.day = day;
                response.at_ms = day * 86'400'000 + 36'000'000 + item * 12'000;
                all.push_back(std::move(response));
            }
        }
    }
    return all;
}

OpenedClass demoClass() {
    return classOf(classList(), responses(7), {}, kNowMs - 2 * 60'000);
}

OpenedClass withProblems() {
    std::vector<Problem> problems{
        {"tablets/t-4.db", "One tablet's file was cut short.",
         "Its first 96 answers are kept; it sends the rest at its next session.",
         Problem::Weight::warning},
        {"tablets/t-9.db", "This tablet's file is from a newer Wrenlet.",
         "Bring this desk up to date, then gather again.", Problem::Weight::warning}};
    return classOf(classList(), responses(7), std::move(problems), kNowMs - 2 * 60'000);
}

OpenedClass afterOneDay() {
    std::vector<practice::Response> first;
    for (practice::Response& response : responses(7))
        if (response.day == kLastDay - 18) first.push_back(std::move(response));
    return classOf(classList(), std::move(first), {}, kNowMs);
}

OpenedClass nobodyPlayed() {
    return classOf(classList(), {}, {}, kNowMs);
}

OpenedClass noChildren() {
    pack::ClassList list;
    list.title = "Demo class";
    return classOf(std::move(list), {}, {}, kNowMs);
}

OpenedClass unreadableList() {
    OpenedClass opened;
    opened.classroom.folder = "demo";
    opened.gathered_ms = kNowMs;
    opened.problems = {{"class.json, line 12", "The class list is broken off in the middle.",
                        "Put back the last copy that was whole."}};
    return opened;
}

}  // namespace wrenlet::desk::demo
