#include "editor/document/dose.hpp"

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

Dose doseOf(std::int64_t practised_ms) {
    return {static_cast<double>(practised_ms) / 3'600'000,
            wording::capital(wording::minutes(practised_ms)) +
                " here. Studies: 5 to 18 hours in all with lessons, most gained near 10."};
}

}  // namespace wrenlet::desk
