// Compiles the dictionary's lines into the lexicon that the programs map: repairs and normalises
// the pronunciations, drops what no teacher types, front-codes the words.
// Usage: compile_lexicon DUMP OUT
#include <cstdio>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include "content/speech/lexicon_file.hpp"
#include "content/speech/repairs.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;

namespace {

std::vector<std::string_view> split(std::string_view line) {
    std::vector<std::string_view> fields;
    while (true) {
        const std::size_t tab = line.find('\t');
        fields.push_back(line.substr(0, tab));
        if (tab == std::string_view::npos) return fields;
        line.remove_prefix(tab + 1);
    }
}

/// False for abbreviations ("a.m.") and the like.
bool isPlainWord(std::string_view word) {
    return word.find_first_not_of("abcdefghijklmnopqrstuvwxyz'-") == std::string_view::npos;
}

int fail(const std::string& what) {
    std::fprintf(stderr, "compile_lexicon: %s\n", what.c_str());
    return 1;
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 3) return fail("usage: compile_lexicon DUMP OUT");
    std::ifstream dump(arguments[1]);
    if (!dump) return fail(std::string("cannot read ") + arguments[1]);

    std::vector<LexiconEntry> entries;
    for (std::string line; std::getline(dump, line);) {
        const auto fields = split(line);
        if (!isPlainWord(fields.front())) continue;
        std::vector<Pronunciation> said;
        for (std::size_t i = 1; i < fields.size(); ++i) {
            auto sounds = fromArpabetLine(fields[i]);
            if (!sounds) return fail("not a pronunciation: " + line);
            said.push_back(std::move(*sounds));
        }
        entries.push_back({std::string(fields.front()), repaired(fields.front(), std::move(said))});
    }

    const auto bytes = writeLexicon(std::move(entries));
    if (!bytes.ok()) return fail(sentence(bytes.problems().front()));
    std::ofstream out(arguments[2], std::ios::binary);
    out << bytes.value();
    out.close();
    return out ? 0 : fail(std::string("cannot write ") + arguments[2]);
}
