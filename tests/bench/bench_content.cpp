// The core's figures: look-up of words against a hash map, one answer committed against a bare
// insert, one choice of the scheduler against a pass over the items; all items of a large unit.
#include <sqlite3.h>

#include <cstdio>
#include <filesystem>
#include <string>
#include <unordered_map>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/pack/pack_file.hpp"
#include "content/practice/scheduler.hpp"
#include "content/practice/store.hpp"
#include "content/speech/lexicon.hpp"
#include "content/speech/rhyme_index.hpp"
#include "tests/bench/figure.hpp"

using namespace wrenlet;
using bench::figure;
using bench::median;
using bench::seconds;

namespace {

const std::filesystem::path kShare = WRENLET_TEST_SHARE;
const std::filesystem::path kStarter = WRENLET_TEST_STARTER;

void lexiconFigures(const pack::Pack& pack) {
    const auto path = kShare / "lexicon.bin";
    std::vector<double> opens, reads;
    for (int i = 0; i < 15; ++i) {
        double begin = seconds();
        const auto opened = speech::Lexicon::open(path);
        opens.push_back((seconds() - begin) * 1e3);
        begin = seconds();
        const auto bytes = readWhole(path, 1 << 24);
        reads.push_back((seconds() - begin) * 1e3);
    }
    figure("lexicon open, against reading the file whole", median(opens), "ms", median(reads));
    figure("lexicon file, against 3 MB", static_cast<double>(std::filesystem::file_size(path)),
           "bytes", 3e6);

    const auto lexicon = speech::Lexicon::open(path);
    std::unordered_map<std::string, speech::Pronunciation> map;
    std::vector<std::string> words;
    for (const auto& word : pack.vocabulary.words) words.push_back(word.text);
    for (const auto& sentence : pack.vocabulary.sentences)
        for (const auto& word : sentence.words) words.push_back(word.text);
    for (const auto& word : words)
        if (const auto said = lexicon.value().lookUp(word); !said.empty()) map[word] = said.front();
    std::vector<double> ours, theirs;
    std::size_t sounds = 0;
    for (int run = 0; run < 25; ++run) {
        double begin = seconds();
        for (int i = 0; i < 100; ++i)
            for (const auto& word : words) sounds += lexicon.value().lookUp(word).size();
        const double count = 100.0 * static_cast<double>(words.size());
        ours.push_back((seconds() - begin) * 1e6 / count);
        begin = seconds();
        for (int i = 0; i < 100; ++i)
            for (const auto& word : words)
                if (const auto at = map.find(word); at != map.end())
                    sounds += speech::Pronunciation(at->second).size();
        theirs.push_back((seconds() - begin) * 1e6 / count);
    }
    if (sounds == 0) std::puts("");
    figure("word look-up, against a hash map of those words", median(ours), "us", median(theirs));
    figure("word look-up, against 2 us", median(ours), "us", 2);
}

/// The words with the most rhymes take longest.
void rhymeFigures() {
    const auto lexicon = speech::Lexicon::open(kShare / "lexicon.bin");
    double begin = seconds();
    const speech::RhymeIndex index(lexicon.value());
    figure("index of rhymes built, against 500 ms", (seconds() - begin) * 1e3, "ms", 500);
    figure("index of rhymes, against 40 MB", static_cast<double>(index.bytes()), "bytes", 4e7);
    std::vector<double> slowest;
    for (const char* word : {"cat", "station", "money", "day", "light", "bee", "orange"}) {
        const speech::Pronunciation said = lexicon.value().lookUp(word).front();
        std::vector<double> times;
        for (int run = 0; run < 101; ++run) {
            begin = seconds();
            (void)index.rhymesOf(said);
            times.push_back((seconds() - begin) * 1e3);
        }
        slowest.push_back(median(times));
    }
    figure("all rhymes of a word", *std::max_element(slowest.begin(), slowest.end()), "ms", 1);
}

/// Words of the classroom list with pictures, and the parts of the compounds among them.
exercise::Vocabulary largeUnit(std::size_t most) {
    const auto lexicon = speech::Lexicon::open(kShare / "lexicon.bin");
    const auto text = readWhole(kShare / "words/classroom.tsv", exercise::kMostListBytes);
    const auto listed = exercise::readClassroomWords(text.value(), "classroom.tsv");
    exercise::Vocabulary all, unit;
    all.words = exercise::saidAloud(listed.value(), lexicon.value(), "classroom.tsv").value();
    const auto add = [&unit, most](const exercise::Word& word) {
        if (unit.words.size() < most && unit.word(word.id) == nullptr) unit.words.push_back(word);
    };
    for (const exercise::Word& word : all.words) {
        if (word.picture.empty()) continue;
        add(word);
        for (const std::string& part : word.compound) add(*all.word(part));
    }
    const auto told = readWhole(kShare / "words/sentences.tsv", exercise::kMostListBytes);
    const auto sentences = exercise::readClassroomSentences(told.value(), "sentences.tsv");
    for (const auto& one : sentences.value()) unit.sentences.push_back(one.sentence);
    return unit;
}

void makerFigures() {
    constexpr std::size_t kWords = 500;
    const exercise::Vocabulary unit = largeUnit(kWords);
    if (unit.words.size() != kWords) std::puts("the list has too few words with pictures");
    std::vector<double> times;
    std::size_t items = 0;
    for (int run = 0; run < 5; ++run) {
        items = 0;
        const double begin = seconds();
        for (const exercise::SkillRow& row : exercise::skillTable())
            items += exercise::makeItems(unit, row.skill).size();
        times.push_back((seconds() - begin) * 1e3);
    }
    figure("all items of all skills for a unit of 500 words, against 1 s", median(times), "ms",
           1000);
    figure("how many items these are, against 5000", static_cast<double>(items), "items", 5000);
}

practice::Response row(const exercise::Item& item, std::int64_t session) {
    practice::Response response;
    response.child = "c-01";
    response.session = session;
    response.pack = "by-the-pond 1";
    response.item = item.id;
    response.skill = exercise::rowOf(item.skill).id;
    response.asked = item.subject;
    response.turns_on = item.turns_on;
    std::vector<std::string> listed;
    for (const auto& choice : item.choices) listed.push_back(choice.id);
    response.choices = std::move(listed);
    response.chosen = response.right = item.choices[item.answer].id;
    return response;
}

double bareInsert(const std::filesystem::path& path, int rows) {
    sqlite3* database = nullptr;
    sqlite3_open(path.string().c_str(), &database);
    sqlite3_exec(database,
                 "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t (a, b, c)",
                 nullptr, nullptr, nullptr);
    std::vector<double> times;
    for (int i = 0; i < rows; ++i) {
        const double begin = seconds();
        sqlite3_exec(database, "INSERT INTO t VALUES (1, 'one', 'two')", nullptr, nullptr, nullptr);
        times.push_back((seconds() - begin) * 1e3);
    }
    sqlite3_close(database);
    return median(times);
}

void practiceFigures(const pack::Pack& pack) {
    const auto folder = std::filesystem::temp_directory_path() / "wrenlet-bench-content";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    {
        auto store = practice::Store::open(folder / "store.db", "t-bench");
        const auto session = store.value().beginSession("c-01", "by-the-pond 1", 1, 1);
        std::vector<double> times;
        for (int i = 0; i < 200; ++i) {
            const auto response = row(pack.items[static_cast<std::size_t>(i) % pack.items.size()],
                                      session.value().id);
            const double begin = seconds();
            (void)store.value().append(response, i);
            times.push_back((seconds() - begin) * 1e3);
        }
        figure("an answer committed, against a bare insert with the same pragmas", median(times),
               "ms", bareInsert(folder / "bare.db", 200));
    }
    std::filesystem::remove_all(folder);

    practice::Mastery mastery;
    const practice::QuestionBank bank(pack.items);
    std::vector<practice::Response> history;
    std::vector<double> times, passes;
    std::size_t letters = 0;
    for (int asked = 0; asked < 200; ++asked) {
        practice::Situation situation;
        situation.bank = &bank;
        situation.history = history;
        situation.mastery = &mastery;
        situation.session = 1;
        situation.seed = 5;
        situation.asked_so_far = asked;
        double begin = seconds();
        const auto next = practice::PracticeScheduler().next(situation);
        times.push_back((seconds() - begin) * 1e3);
        begin = seconds();
        for (const auto& item : pack.items)
            for (const char letter : item.id) letters += static_cast<unsigned char>(letter);
        passes.push_back((seconds() - begin) * 1e3);
        history.push_back(row(pack.items[next->item], 1));
        mastery.add(history.back());
    }
    if (letters == 0) std::puts("");
    figure("a choice of the scheduler, against a pass over the items' ids", median(times), "ms",
           median(passes));
}

/// A child who plays 45 sessions of 40 items over 5,000 items: how long a choice takes at the end,
/// what her state weighs, and how long the answers of 180 such children take to be read again.
void masteryFigures() {
    std::vector<exercise::Item> items;
    const exercise::Vocabulary unit = largeUnit(500);
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        auto made = exercise::makeItems(unit, row.skill);
        const std::size_t step = made.size() / 400 + 1;
        for (std::size_t i = 0; i < made.size(); i += step) items.push_back(std::move(made[i]));
    }
    if (items.size() > 5000) items.resize(5000);
    const practice::QuestionBank bank(items);
    practice::Mastery mastery;
    std::vector<practice::Response> history;
    std::vector<double> times;
    for (int session = 1; session <= 45; ++session)
        for (int asked = 0; asked < 40; ++asked) {
            practice::Situation situation;
            situation.bank = &bank;
            situation.history = history;
            situation.mastery = &mastery;
            situation.session = session;
            situation.day = 20'000 + session;
            situation.seed = static_cast<std::uint64_t>(session);
            situation.asked_so_far = asked;
            const double begin = seconds();
            const auto next = practice::PracticeScheduler().next(situation);
            if (session > 40) times.push_back((seconds() - begin) * 1e3);
            const exercise::Item& item = items[next->item];
            practice::Response response = row(item, session);
            response.day = situation.day;
            if ((asked * 7 + session) % 4 == 0)
                response.chosen = item.choices[item.answer == 0 ? 1 : 0].id;
            history.push_back(response);
            mastery.add(history.back());
        }
    figure("items to choose from, against 5000", static_cast<double>(items.size()), "items", 5000);
    figure("a choice among them, against 1 ms", median(times), "ms", 1);
    figure("state of a child, against 64 KB", static_cast<double>(mastery.bytes()), "bytes", 65536);
    const double begin = seconds();
    std::size_t replayed = 0;
    for (int child = 0; child < 180; ++child) {
        practice::Mastery again;
        for (const practice::Response& response : history) again.add(response);
        replayed += history.size();
    }
    figure("answers replayed, against 324000", static_cast<double>(replayed), "answers", 324'000);
    figure("answers replayed, against 2 s", seconds() - begin, "s", 2);
}

}  // namespace

int main() {
    const auto pack = pack::readPackFile(kStarter / "packs/by-the-pond-1.zip");
    if (!pack.ok()) return 1;
    lexiconFigures(pack.value());
    rhymeFigures();
    makerFigures();
    practiceFigures(pack.value());
    masteryFigures();
    std::vector<double> times, plain;
    for (int i = 0; i < 9; ++i) {
        double begin = seconds();
        (void)pack::readPackFile(kStarter / "packs/by-the-pond-1.zip");
        times.push_back((seconds() - begin) * 1e3);
        begin = seconds();
        (void)readWhole(kStarter / "packs/by-the-pond-1.zip", 1 << 28);
        plain.push_back((seconds() - begin) * 1e3);
    }
    figure("a pack read and checked, against reading its bytes", median(times), "ms",
           median(plain));
    return 0;
}
