#include "content/pack/pack.hpp"

#include <algorithm>

namespace wrenlet::pack {
namespace {

/// By halves, for clips and pictures are sorted by id.
template <class T>
const T* findSorted(const std::vector<T>& sorted, std::string_view id) {
    const auto it =
        std::lower_bound(sorted.begin(), sorted.end(), id,
                         [](const T& one, std::string_view key) { return one.id < key; });
    return it != sorted.end() && it->id == id ? &*it : nullptr;
}

}  // namespace

const Clip* Pack::clip(std::string_view id) const {
    return findSorted(clips, id);
}

const Picture* Pack::picture(std::string_view id) const {
    return findSorted(pictures, id);
}

const exercise::Item* Pack::item(std::string_view id) const {
    const auto it = std::find_if(items.begin(), items.end(),
                                 [&](const exercise::Item& item) { return item.id == id; });
    return it == items.end() ? nullptr : &*it;
}

std::string Pack::name() const {
    return unit_id + " " + std::to_string(version);
}

}  // namespace wrenlet::pack
