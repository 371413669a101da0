// A hash over bytes, to tell whether two runs gave the same: FNV-1a, 64 bits
// (http://www.isthe.com/chongo/tech/comp/fnv/). Not for keeping anything safe.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <type_traits>

namespace wrenlet::game {

class Hash {
  public:
    void add(const void* bytes, std::size_t size) {
        const auto* from = static_cast<const unsigned char*>(bytes);
        for (std::size_t i = 0; i < size; ++i) value_ = (value_ ^ from[i]) * 0x100000001b3ull;
    }
    /// REQUIRES: a type without padding.
    template <class T>
    void add(const T& value) {
        static_assert(std::is_arithmetic_v<T> || std::is_enum_v<T>);
        add(&value, sizeof value);
    }
    /// With its length, so that two texts are not the same as another two.
    void add(const std::string& text) {
        add(text.size());
        add(text.data(), text.size());
    }
    std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 0xcbf29ce484222325ull;
};

}  // namespace wrenlet::game
