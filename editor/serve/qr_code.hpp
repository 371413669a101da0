// A text as a QR code (ISO/IEC 18004), through libqrencode: what a tablet's camera reads instead of
// an address typed in.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::desk {

struct QrCode {
    static constexpr int kQuiet = 4;  // modules of ground that belong around it

    int size = 0;            // modules a side, without the quiet ground
    std::vector<bool> dark;  // row by row
    bool isDark(int column, int row) const { return dark[std::size_t(row * size + column)]; }
};

/// With the error correction "M". Nothing for a text that is empty or too long.
std::optional<QrCode> qrCodeOf(std::string_view text);

/// For a console: two modules a sign, dark on light.
std::string asText(const QrCode& code);

}  // namespace wrenlet::desk
