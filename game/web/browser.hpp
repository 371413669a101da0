// What the page's script does for the game: keep, show words, tell a test. Each call hands over
// and returns at once; `page` names the game to the script, which names it back in wrenlet_kept().
#pragma once

#include <cstdint>
#include <string>

namespace wrenlet::web {

class Page;

/// There is something to play; it waits for wrenlet_lay(), then for wrenlet_begin().
void tellOpen(Page* page);
/// It cannot be played, in words for an adult.
void tellFailed(const std::string& words);
/// An adult closed it.
void tellOver();
/// The tablet's settings are another; they lie where the game reads them.
void tellSettings();
/// Where the game stands, for a test.
void tellPlace(const std::string& json);

void keepSession(std::int64_t session, const std::string& json);
void keepResponse(Page* page, std::int64_t session, const std::string& json,
                  std::int64_t played_ms);
void keepEnd(std::int64_t session, std::int64_t played_ms);

}  // namespace wrenlet::web
