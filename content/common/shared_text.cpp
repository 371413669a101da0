#include "content/common/shared_text.hpp"

namespace wrenlet {

const std::string& Text::nothing() {
    static const std::string nothing;
    return nothing;
}

const std::vector<std::string>& TextList::nothing() {
    static const std::vector<std::string> nothing;
    return nothing;
}

Text TextPool::text(std::string_view text) {
    if (text.empty()) return {};
    const auto found = texts_.find(text);
    if (found != texts_.end()) return found->second;
    const Text made{text};
    texts_.emplace(made.string(), made);
    return made;
}

std::optional<TextList> TextPool::list(const std::string& written) const {
    const auto found = lists_.find(written);
    if (found == lists_.end()) return std::nullopt;
    return found->second;
}

TextList TextPool::keep(const std::string& written, std::vector<std::string> texts) {
    return lists_.emplace(written, TextList(std::move(texts))).first->second;
}

}  // namespace wrenlet
