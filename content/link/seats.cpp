#include <utility>

#include "content/link/message.hpp"
#include "content/pack/badges.hpp"

namespace wrenlet::link {

Welcome welcomeOf(const pack::ClassList& list) {
    Welcome welcome;
    for (const pack::Child& child : list.children)
        welcome.seats.push_back({child.id, child.badge, child.shields, child.key});
    welcome.deleted = list.deleted;
    welcome.settings = list.settings;
    welcome.pack = list.pack;
    return welcome;
}

pack::ClassList classOf(const Welcome& welcome) {
    pack::ClassList list;
    for (const Seat& seat : welcome.seats) {
        const pack::Badge* const badge = pack::badge(seat.badge);
        std::string name = badge != nullptr ? std::string(badge->name) : seat.badge;
        list.children.push_back(
            {seat.child, std::move(name), seat.badge, seat.shields, seat.key, {}});
    }
    list.deleted = welcome.deleted;
    list.settings = welcome.settings;
    list.pack = welcome.pack;
    return list;
}

}  // namespace wrenlet::link
