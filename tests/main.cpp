#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>

// Under the sanitizers: libsndfile 1.2 forgets what libvorbis gave it for an OGG that is damaged,
// some 5 KB a file; tests hand it many.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:vorbis_info_init\n"; }
