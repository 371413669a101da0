// Text that comes from other programs: pasted, dropped, exported. It may be in another encoding,
// begin with a mark, or be longer than anything typed here.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "content/common/result.hpp"

namespace wrenlet::desk {

/// `bytes` as UTF-8 without a byte order mark. Text that is not UTF-8 is read as Windows-1252 (in
/// which ISO 8859-1 is what it is) with a warning; of more than `most` bytes the whole lines that
/// fit are taken, with a warning. Error: UTF-16. `where` names the text in problems.
Result<std::string> outsideText(std::string_view bytes, std::string_view where, std::size_t most);

}  // namespace wrenlet::desk
