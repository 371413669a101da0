#include "tests/house/arrows.hpp"

#include <algorithm>

namespace wrenlet::house {
namespace {

// A name matches one that it equals, or one whose part before a closing '*' it starts with.
using Names = std::vector<std::string_view>;

struct Room {
    std::string_view sources;
    Names may_include;  // of ours
};

// The first row that matches a source decides; a source that none matches may include nothing.
const Room kRooms[] = {
    {"content/common/*", {"content/common/*"}},
    {"content/speech/*", {"content/common/*", "content/speech/*"}},
    {"content/exercise/*", {"content/common/*", "content/speech/*", "content/exercise/*"}},
    {"content/pack/*",
     {"content/common/*", "content/speech/*", "content/exercise/*", "content/pack/*"}},
    {"content/practice/*",
     {"content/common/*", "content/speech/*", "content/exercise/*", "content/pack/*",
      "content/practice/*"}},
    {"content/link/*", {"content/*"}},
    {"game/*", {"content/*", "game/*"}},
    {"editor/*", {"content/*", "editor/*"}},
    {"assets/*", {"content/*", "game/*", "editor/*", "assets/*"}},
    {"tests/*", {"content/*", "game/*", "editor/*", "assets/*", "tests/*"}},
};

struct Outsider {
    std::string_view what;
    Names headers;
    Names known_to;
};

const Outsider kOutsiders[] = {
    {"SDL",
     {"SDL.h", "SDL_*", "SDL2/*"},
     {"game/sdl/*", "game/main.cpp", "editor/windows/*", "editor/main.cpp", "assets/make/*",
      "tests/*"}},
    {"Dear ImGui",
     {"imgui*", "misc/freetype/imgui*", "backends/imgui*"},
     {"editor/windows/*", "editor/main.cpp", "assets/make/*", "tests/*"}},
    {"chance that differs between libraries (content/common/random.hpp is ours)", {"random"}, {}},
    {"what the web's C++ library lacks",
     {"format", "ranges", "source_location", "coroutine", "stop_token", "memory_resource"},
     {"game/sdl/*", "editor/*", "assets/make/*", "tests/*"}},
};

bool matches(std::string_view name, const Names& patterns) {
    return std::any_of(patterns.begin(), patterns.end(), [&](std::string_view pattern) {
        if (pattern.back() != '*') return name == pattern;
        pattern.remove_suffix(1);
        return name.substr(0, pattern.size()) == pattern;
    });
}

bool isOurs(std::string_view named) {
    return matches(named, {"content/*", "game/*", "editor/*", "assets/*", "tests/*"});
}

bool mayInclude(std::string_view path, std::string_view named) {
    for (const Room& room : kRooms)
        if (matches(path, {room.sources})) return matches(named, room.may_include);
    return false;
}

// What is wrong with the include, or nothing.
std::string complaint(const std::string& path, const Include& include) {
    const std::string& named = include.named;
    if (named.find("..") != std::string::npos || (include.quoted && !isOurs(named)))
        return "is not named from the project's root";
    if (isOurs(named)) return mayInclude(path, named) ? "" : "runs against the arrows";
    for (const Outsider& outsider : kOutsiders)
        if (matches(named, outsider.headers) && !matches(path, outsider.known_to))
            return "brings in " + std::string(outsider.what);
    return "";
}

// The text with each comment made blank; a string that holds a comment's beginning fools it, which
// no include line does.
std::string withoutComments(std::string_view text) {
    std::string bare(text);
    std::size_t at = 0;
    while ((at = bare.find('/', at)) != std::string::npos && at + 1 < bare.size()) {
        const bool block = bare[at + 1] == '*';
        if (!block && bare[at + 1] != '/') {
            ++at;
            continue;
        }
        const std::size_t found = bare.find(block ? "*/" : "\n", at + 2);
        const std::size_t end =
            std::min(bare.size(), found + (block && found != bare.npos ? 2 : 0));
        for (; at < end; ++at)
            if (bare[at] != '\n') bare[at] = ' ';
    }
    return bare;
}

}  // namespace

std::vector<Include> includesOf(std::string_view text) {
    std::vector<Include> includes;
    const std::string bare = withoutComments(text);
    std::size_t begin = 0;
    for (int number = 1; begin < bare.size(); ++number) {
        const std::size_t end = std::min(bare.size(), bare.find('\n', begin));
        const std::string_view line = std::string_view(bare).substr(begin, end - begin);
        begin = end + 1;
        const std::size_t hash = line.find_first_not_of(" \t");
        if (hash == line.npos || line[hash] != '#') continue;
        const std::size_t word = line.find_first_not_of(" \t", hash + 1);
        if (word == line.npos || line.substr(word, 7) != "include") continue;
        const std::size_t open = line.find_first_of("<\"", word);
        if (open == line.npos) continue;
        const bool quoted = line[open] == '"';
        const std::size_t close = line.find(quoted ? '"' : '>', open + 1);
        includes.push_back({number, std::string(line.substr(open + 1, close - open - 1)), quoted});
    }
    return includes;
}

std::vector<std::string> wrongIncludes(const std::string& path, std::string_view text) {
    std::vector<std::string> wrong;
    for (const Include& include : includesOf(text)) {
        const std::string why = complaint(path, include);
        if (why.empty()) continue;
        wrong.push_back(path + ":" + std::to_string(include.line) + ": " + include.named + " " +
                        why);
    }
    return wrong;
}

}  // namespace wrenlet::house
