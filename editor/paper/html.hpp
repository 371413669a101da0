// A page that prints: one HTML file with everything in it, read in any browser, with nothing that
// runs and nothing fetched. A4 or Letter, whichever the printer has.
#pragma once

#include <string>
#include <string_view>

namespace wrenlet::desk::paper {

/// With &, <, > and both quotes written so that a browser shows them; what is no UTF-8 or no
/// printing character is left out.
std::string escaped(std::string_view text);

/// `<name class="kind">text</name>`, the text escaped. `kind` may be empty.
std::string element(std::string_view name, std::string_view text, std::string_view kind = {});

/// A whole page. `body` is HTML already.
std::string page(std::string_view title, std::string_view body);

/// A bar from 0 to 1 with the range and a mark at the middle, as a drawing in the page; `label` is
/// read out by a screen reader. REQUIRES: 0 <= low <= middle <= high <= 1.
std::string rangeBar(double low, double middle, double high, std::string_view label);

}  // namespace wrenlet::desk::paper
