#include "editor/look/said.hpp"

namespace wrenlet::desk {

Said saidOf(const practice::SoundLine& line) {
    if (line.evidence.seen == 0) return Said::not_asked;
    if (line.held_back) return Said::shielded;
    switch (line.said) {
        case practice::Standing::missed:
            return Said::missed;
        case practice::Standing::growing:
            return Said::growing;
        case practice::Standing::steady:
            return Said::steady;
        case practice::Standing::too_little:
            break;
    }
    return Said::too_little;
}

std::string_view wordOf(Said said) {
    switch (said) {
        case Said::missed:
            return "missed";
        case Said::growing:
            return "growing";
        case Said::steady:
            return "steady";
        case Said::too_little:
            return "too little to say";
        case Said::shielded:
            return "shielded";
        case Said::not_asked:
            break;
    }
    return "not asked yet";
}

SaidLook lookOf(Said said) {
    using namespace colour;
    switch (said) {
        case Said::missed:
            return {Mark::diamond, kBrick, kWhite, kBrick, false};
        case Said::growing:
            return {Mark::half_disc, kStraw, kStrawInk, kStrawInk, false};
        case Said::steady:
            return {Mark::disc, kPaleDeep, kDeep, kDeep, false};
        case Said::too_little:
            return {Mark::dot, kPaper, kDot, kDot, true};
        case Said::shielded:
            return {Mark::shield, kWash, kSoft, kSoft, true};
        case Said::not_asked:
            break;
    }
    return {Mark::none, kPaper, kDot, kDot, true};
}

}  // namespace wrenlet::desk
