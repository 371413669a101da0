#include "editor/document/dose.hpp"

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

std::string hours(double value) {
    return wording::figure(static_cast<std::int64_t>(value));
}

}  // namespace

Dose doseOf(std::int64_t practised_ms) {
    return {static_cast<double>(practised_ms) / 3'600'000,
            wording::capital(wording::minutes(practised_ms)) +
                " here. Studies: " + hours(kDoseFrom) + " to " + hours(kDoseTo) +
                " hours in all with lessons, most gained near " + hours(kDoseMost) + "."};
}

}  // namespace wrenlet::desk
