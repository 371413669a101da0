// Numbers so small that the processor reckons with them a hundred times slower count as none, on
// this thread for as long as this lives. A filter that dies away ends in such numbers; nothing of
// them is ever heard.
#pragma once

#include <cstdint>

#if defined(__SSE2__)
#include <xmmintrin.h>
#endif

namespace wrenlet::desk {

class TinyAsNone {
  public:
    TinyAsNone() : before_(mode()) {
#if defined(__SSE2__)
        setMode(before_ | 0x8040);  // flush to zero, denormals are zero
#elif defined(__aarch64__)
        setMode(before_ | 1u << 24);  // flush to zero
#endif
    }
    ~TinyAsNone() {
        setMode(before_);
    }
    TinyAsNone(const TinyAsNone&) = delete;
    TinyAsNone& operator=(const TinyAsNone&) = delete;

  private:
    static std::uint64_t mode() {
#if defined(__SSE2__)
        return _mm_getcsr();
#elif defined(__aarch64__)
        std::uint64_t mode;
        __asm__ volatile("mrs %0, fpcr" : "=r"(mode));
        return mode;
#else
        return 0;
#endif
    }
    static void setMode([[maybe_unused]] std::uint64_t mode) {
#if defined(__SSE2__)
        _mm_setcsr(static_cast<unsigned>(mode));
#elif defined(__aarch64__)
        __asm__ volatile("msr fpcr, %0" : : "r"(mode));
#endif
    }

    std::uint64_t before_;
};

}  // namespace wrenlet::desk
