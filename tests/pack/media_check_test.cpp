#include "content/pack/media_check.hpp"

#include <doctest/doctest.h>

#include <string>

using wrenlet::pack::whyNoPicture;

TEST_CASE("A drawing is a picture") {
    CHECK(whyNoPicture("<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0\"/></svg>") == "");
    CHECK(whyNoPicture("\xEF\xBB\xBF<?xml version=\"1.0\"?>\n<!-- a duck -->\n<svg></svg>") == "");
    CHECK(whyNoPicture("<svg><g fill=\"url(#a)\"><use href=\"#b\"/></g></svg>") == "");
}

TEST_CASE("What runs, leads outside or declares entities is no picture") {
    for (const char* svg :
         {"<svg><script>x</script></svg>", "<!DOCTYPE svg [<!ENTITY a \"b\">]><svg></svg>",
          "<svg><image href=\"#a\"/></svg>", "<svg><use href=\"other.svg#a\"/></svg>",
          "<svg><use xlink:href = 'http://x'/></svg>", "<svg onload=\"x\"></svg>",
          "<svg><path fill=\"url(http://x)\"/></svg>", "<svg><path d=\"M0", "hello", "", "<html>",
          "<?xml"}) {
        CAPTURE(std::string(svg));
        CHECK(whyNoPicture(svg) != "");
    }
    CHECK(whyNoPicture("<svg>" + std::string(2 << 20, ' ') + "</svg>") != "");
}

// Each of these keeps SDL_image 2.6's SVG reader busy for longer than anybody waits.
TEST_CASE("A drawing that would not end is no picture") {
    const auto drawn = [](const std::string& inside) {
        return whyNoPicture("<svg viewBox=\"0 0 100 100\">" + inside + "</svg>");
    };
    CHECK(drawn("<path d=\"M0 0L1e8 0\" stroke-dasharray=\".0001\"/>") != "");
    CHECK(drawn("<path d=\"M0 0L1e8 0\" style=\"stroke:#000;stroke-dasharray: 1e-4\"/>") != "");
    CHECK(drawn("<path d=\"M0 0L9 0\" style=\"stroke-dasharray:none\"/>") == "");
    std::string path, shapes;
    for (int i = 0; i < 5000; ++i) path += "L" + std::to_string(i % 97) + " 5";
    for (int i = 0; i < 5000; ++i) shapes += "<path d=\"M0 0h99v99z\"/>";
    CHECK(drawn("<path d=\"M0 0" + path + "\"/>") != "");
    CHECK(drawn("<path d='M0 0" + path.substr(0, path.size() / 8) + "'/>") == "");
    CHECK(drawn(shapes) != "");
    CHECK(drawn(shapes.substr(0, shapes.size() / 8)) == "");
}

TEST_CASE("A PNG has a header, an end and a bounded size") {
    const auto png = [](const std::string& width) {
        return std::string("\x89PNG\r\n\x1A\n\0\0\0\rIHDR", 16) + width +
               std::string("\0\0\0\x10\x08\x06\0\0\0abcd", 13) +
               std::string("\0\0\0\0IEND\xAE\x42\x60\x82", 12);
    };
    CHECK(whyNoPicture(png(std::string("\0\0\0\x10", 4))) == "");
    CHECK(whyNoPicture(png(std::string("\0\1\0\0", 4))) != "");
    CHECK(whyNoPicture(png(std::string("\0\0\0\x10", 4)).substr(0, 30)) != "");
}

TEST_CASE("Noise is no recording") {
    CHECK(wrenlet::pack::checkClip("OggS but no more").why_not == "is not a recording");
    CHECK(wrenlet::pack::checkClip("").why_not == "is not a recording");
}
