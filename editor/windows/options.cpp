#include "editor/windows/options.hpp"

#include <cstdio>
#include <cstdlib>

#include "content/pack/text_rules.hpp"

namespace wrenlet::desk {

namespace {

Problem notUnderstood(const std::string& word) {
    return {word, "This is not understood here.", "wrenlet-desk --help lists what is."};
}

bool readSize(const std::string& text, DeskOptions& options) {
    int width = 0, height = 0, end = 0;
    if (std::sscanf(text.c_str(), "%5dx%5d%n", &width, &height, &end) != 2) return false;
    if (static_cast<std::size_t>(end) != text.size()) return false;
    if (width < 320 || width > 7680 || height < 240 || height > 4320) return false;
    options.width = width;
    options.height = height;
    return true;
}

bool readScale(const std::string& text, DeskOptions& options) {
    char* end = nullptr;
    const float scale = std::strtof(text.c_str(), &end);
    if (text.empty() || *end != '\0' || !(scale >= 0.5f && scale <= 4.f)) return false;
    options.scale = scale;
    return true;
}

bool readPage(const std::string& text, DeskOptions& options) {
    options.page = text == "child" ? Page::child : Page::map;
    return text == "child" || text == "map";
}

// True when `value` is one that `name` can have.
bool readValue(const std::string& name, const std::string& value, DeskOptions& options) {
    if (name == "--size") return readSize(value, options);
    if (name == "--scale") return readScale(value, options);
    if (name == "--page") return readPage(value, options);
    if (name == "--picture") options.picture = std::filesystem::u8path(value);
    if (name == "--skill") options.skill = value;
    if (name == "--child") {
        options.child = value;
        options.page = Page::child;
    }
    if (name == "--unit") {
        options.unit = value;
        return pack::isPlainId(value);
    }
    return (name == "--picture" || name == "--skill" || name == "--child") && !value.empty();
}

}  // namespace

Result<DeskOptions> readOptions(std::span<const std::string> words) {
    DeskOptions options;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::string& word = words[at];
        if (word.empty() || word.front() != '-') {
            if (!options.classroom.empty()) return notUnderstood(word);
            options.classroom = std::filesystem::u8path(word);
        } else if (at + 1 == words.size() || !readValue(word, words[at + 1], options)) {
            return notUnderstood(at + 1 == words.size() ? word : word + " " + words[at + 1]);
        } else {
            ++at;
        }
    }
    return options;
}

}  // namespace wrenlet::desk
