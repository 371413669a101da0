#include "content/link/join_code.hpp"

namespace wrenlet::link {

std::string makeCode(Entropy& entropy) {
    // A byte past the last whole round of signs is thrown again, so that each is as likely.
    constexpr std::size_t kWholeRounds = 256 / kCodeSigns.size() * kCodeSigns.size();
    std::string code;
    while (code.size() < kCodeLength) {
        std::uint8_t byte = 0;
        entropy.fill({&byte, 1});
        if (byte < kWholeRounds) code += kCodeSigns[byte % kCodeSigns.size()];
    }
    return code;
}

std::optional<std::string> codeFromTyped(std::string_view typed) {
    std::string code;
    for (char sign : typed) {
        if (sign == ' ' || sign == '-') continue;
        if (sign >= 'a' && sign <= 'z') sign = static_cast<char>(sign - 'a' + 'A');
        if (kCodeSigns.find(sign) == kCodeSigns.npos || code.size() == kCodeLength)
            return std::nullopt;
        code += sign;
    }
    if (code.size() != kCodeLength) return std::nullopt;
    return code;
}

std::string codeToShow(std::string_view code) {
    return std::string(code.substr(0, kCodeLength / 2)) + " " +
           std::string(code.substr(kCodeLength / 2));
}

}  // namespace wrenlet::link
