// Where the link's bytes go over HTTP, and what the desk's status says to a tablet's page. Bodies
// of both directions are application/octet-stream.
#pragma once

#include <string_view>

namespace wrenlet::link {

/// GET gives the offer, POST takes a request and gives the answer (join.hpp).
inline constexpr std::string_view kJoinPath = "/join";
/// POST takes a sealed ask and gives the sealed answer (talk.hpp).
inline constexpr std::string_view kTalkPath = "/talk";

/// With any other status than `well` there is no message in the body, and nothing was changed. None
/// of them is sealed, so anybody on the network could have said it: a page may wait or ask the
/// teacher because of one, and never forgets its key or an answer.
enum class Status : int {
    well = 200,
    no_message = 400,  // not the bytes of one
    not_known = 403,   // a wrong code; a tablet that is not on the list, or not its key
    not_here = 404,    // no such path
    too_long = 413,    // over kMostTalkBytes
    code_gone = 410,   // no code is open: ask the teacher for one
    too_often = 429,   // wait some seconds (Retry-After) and ask again
    not_now = 503,     // the desk is stopping, or has too much to do: ask again later
};

}  // namespace wrenlet::link
