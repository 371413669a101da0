// Texts that many rows hold at once. A class's year is some 300,000 answers made of a few thousand
// different texts: each row holds a pointer to a text, and each text is in memory once.
#pragma once

#include <initializer_list>
#include <memory>
#include <optional>
#include <ostream>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace wrenlet {

/// A text that never changes and is cheap to copy; to be read wherever a string is.
class Text {
  public:
    Text() = default;
    Text(std::string text)  // NOLINT: a string is one
        : text_(text.empty() ? nullptr : std::make_shared<const std::string>(std::move(text))) {}
    Text(std::string_view text) : Text(std::string(text)) {}  // NOLINT
    Text(const char* text) : Text(std::string(text)) {}       // NOLINT

    const std::string& string() const { return text_ ? *text_ : nothing(); }
    operator const std::string&() const { return string(); }  // NOLINT
    operator std::string_view() const { return string(); }    // NOLINT
    bool empty() const { return text_ == nullptr; }
    std::size_t size() const { return string().size(); }

    friend bool operator==(const Text& a, const Text& b) {
        return a.text_ == b.text_ || a.string() == b.string();
    }
    friend bool operator==(const Text& a, const std::string& b) { return a.string() == b; }
    friend bool operator==(const Text& a, std::string_view b) { return a.string() == b; }
    friend bool operator==(const Text& a, const char* b) { return a.string() == b; }
    friend bool operator<(const Text& a, const Text& b) { return a.string() < b.string(); }
    friend std::ostream& operator<<(std::ostream& out, const Text& text) {
        return out << text.string();
    }

  private:
    static const std::string& nothing();
    std::shared_ptr<const std::string> text_;
};

/// Several texts in order that never change and are cheap to copy.
class TextList {
  public:
    TextList() = default;
    TextList(std::vector<std::string> texts)  // NOLINT: a list of strings is one
        : texts_(std::make_shared<const std::vector<std::string>>(std::move(texts))) {}
    TextList(std::initializer_list<std::string> texts) : TextList(std::vector(texts)) {}

    const std::vector<std::string>& vector() const { return texts_ ? *texts_ : nothing(); }
    operator const std::vector<std::string>&() const { return vector(); }  // NOLINT
    bool empty() const { return vector().empty(); }
    std::size_t size() const { return vector().size(); }
    const std::string& operator[](std::size_t at) const { return vector()[at]; }
    auto begin() const { return vector().begin(); }
    auto end() const { return vector().end(); }

    friend bool operator==(const TextList& a, const TextList& b) {
        return a.texts_ == b.texts_ || a.vector() == b.vector();
    }

  private:
    static const std::vector<std::string>& nothing();
    std::shared_ptr<const std::vector<std::string>> texts_;
};

/// Hands out one Text for equal texts, while rows are read.
class TextPool {
  public:
    Text text(std::string_view text);
    /// The list that was kept for `written`, if one was.
    std::optional<TextList> list(const std::string& written) const;
    TextList keep(const std::string& written, std::vector<std::string> texts);

  private:
    std::unordered_map<std::string_view, Text> texts_;  // keys lie in the values
    std::unordered_map<std::string, TextList> lists_;
};

}  // namespace wrenlet
