#include "game/stage/mark.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

int rankOf(const std::string& name) {
    return name == "replay" ? 1 : name == "leave" ? 2 : 0;
}

}  // namespace

std::vector<std::string> Mark::orderOf(std::vector<std::string> names) {
    std::erase(names, "wren");
    std::stable_sort(names.begin(), names.end(), [](const std::string& a, const std::string& b) {
        return rankOf(a) < rankOf(b);
    });
    return names;
}

void Mark::move(const std::vector<std::string>& order, int by) {
    if (order.empty()) return;
    const auto count = static_cast<int>(order.size());
    const auto found = at_ ? std::find(order.begin(), order.end(), *at_) : order.end();
    const int from = found != order.end() ? static_cast<int>(found - order.begin())
                     : by > 0             ? -1
                                          : count;
    at_ = order[static_cast<std::size_t>(((from + by) % count + count) % count)];
}

std::optional<std::string> Mark::on(const std::vector<std::string>& order) const {
    if (!at_ || order.empty()) return std::nullopt;
    return std::find(order.begin(), order.end(), *at_) != order.end() ? *at_ : order.front();
}

}  // namespace wrenlet::game
