#include "editor/serve/qr_code.hpp"

#include <memory>

#include <qrencode.h>

namespace wrenlet::desk {

std::optional<QrCode> qrCodeOf(std::string_view text) {
    if (text.empty()) return std::nullopt;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(
        QRcode_encodeString(std::string(text).c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1),
        &QRcode_free);
    if (!made) return std::nullopt;
    QrCode code;
    code.size = made->width;
    const auto all = static_cast<std::size_t>(code.size * code.size);
    for (std::size_t i = 0; i < all; ++i) code.dark.push_back((made->data[i] & 1) != 0);
    return code;
}

std::string asText(const QrCode& code) {
    const auto isDark = [&](int column, int row) {
        return column >= 0 && row >= 0 && column < code.size && row < code.size &&
               code.isDark(column, row);
    };
    std::string text;
    for (int row = -QrCode::kQuiet; row < code.size + QrCode::kQuiet; row += 2) {
        text += "\x1b[30;107m";  // black on bright white, whatever the console's colours are
        for (int column = -QrCode::kQuiet; column < code.size + QrCode::kQuiet; ++column) {
            const bool upper = isDark(column, row), lower = isDark(column, row + 1);
            text += upper && lower ? "\u2588" : upper ? "\u2580" : lower ? "\u2584" : " ";
        }
        text += "\x1b[0m\n";
    }
    return text;
}

}  // namespace wrenlet::desk
