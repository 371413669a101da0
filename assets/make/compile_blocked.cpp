// Compiles the words to keep out into hashes of how they are written and said. A sound that the
// classroom list has too is not kept out: pea is no rude word.
// Usage: compile_blocked WORDS LEXICON CLASSROOM.tsv OUT
#include <algorithm>
#include <cstdio>
#include <fstream>
#include <string>
#include <vector>

#include "content/speech/block_list.hpp"
#include "content/speech/lexicon.hpp"

using namespace wrenlet::speech;

namespace {

int fail(const std::string& what) {
    std::fprintf(stderr, "compile_blocked: %s\n", what.c_str());
    return 1;
}

/// How the words of the classroom list are said first, as hashes, sorted.
std::vector<std::uint64_t> heardInClassrooms(std::ifstream& list, const Lexicon& lexicon) {
    std::vector<std::uint64_t> heard;
    for (std::string line; std::getline(list, line);) {
        if (line.empty() || line[0] == '#') continue;
        const std::size_t tab = line.find('\t');
        if (tab == std::string::npos) continue;
        const std::string word = line.substr(tab + 1, line.find('\t', tab + 1) - tab - 1);
        const std::vector<Pronunciation> said = lexicon.lookUp(word);
        if (!said.empty()) heard.push_back(blockHash(said.front()));
    }
    std::sort(heard.begin(), heard.end());
    return heard;
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 5) return fail("usage: compile_blocked WORDS LEXICON CLASSROOM.tsv OUT");
    const auto lexicon = Lexicon::open(arguments[2]);
    if (!lexicon.ok()) return fail(wrenlet::sentence(lexicon.problems().front()));
    std::ifstream words(arguments[1]), list(arguments[3]);
    if (!words || !list) return fail("cannot read the lists");
    const std::vector<std::uint64_t> heard = heardInClassrooms(list, lexicon.value());

    std::vector<std::uint64_t> hashes;
    for (std::string word; std::getline(words, word);) {
        if (word.empty()) continue;
        hashes.push_back(blockHash(word));
        for (const Pronunciation& said : lexicon.value().lookUp(word))
            if (!std::binary_search(heard.begin(), heard.end(), blockHash(said)))
                hashes.push_back(blockHash(said));
    }
    std::ofstream out(arguments[4], std::ios::binary);
    out << writeBlockList(std::move(hashes));
    out.close();
    return out ? 0 : fail(std::string("cannot write ") + arguments[4]);
}
