#include <doctest/doctest.h>

#include <regex>

#include "editor/look/palette.hpp"
#include "editor/look/wording.hpp"
#include "editor/paper/html.hpp"
#include "editor/paper/report_pages.hpp"
#include "editor/paper/tomorrow_pages.hpp"
#include "tests/desk/demo_class.hpp"

namespace wrenlet::desk {
namespace {

bool has(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

std::size_t times(const std::string& text, std::string_view part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

const OpenedClass& room() {
    static const OpenedClass opened = demo::demoClass();
    return opened;
}

/// Every page that is made of the demo class.
std::vector<std::string> allPages() {
    std::vector<std::string> pages;
    for (std::size_t i = 0; i < room().children.size(); ++i) {
        pages.push_back(paper::familyPage(room(), i, demo::kLastDay));
        pages.push_back(paper::specialistPage(room(), i, demo::kLastDay));
    }
    pages.push_back(paper::groupsPage(practice::groupsOf(room().children), {},
                                      paper::namesOf(room().children)));
    return pages;
}

std::string hex(Colour colour) {
    char text[8];
    std::snprintf(text, sizeof text, "#%02x%02x%02x", colour.red, colour.green, colour.blue);
    return text;
}

}  // namespace

TEST_CASE("Paper: what a browser would take for markup is shown as it is") {
    CHECK(paper::escaped("<b>Tom & \"Jo\" O'N</b>") ==
          "&lt;b&gt;Tom &amp; &quot;Jo&quot; O&#39;N&lt;/b&gt;");
    CHECK(paper::escaped("M\xC3\xA1ya \xF0\x9F\x90\xA6") == "M\xC3\xA1ya \xF0\x9F\x90\xA6");
    CHECK(paper::escaped(std::string("a\0b\x01\xC3\xFF\xC0\xAF", 7)) == "ab");
    OpenedClass opened = room();
    opened.children[0].child.name = "<script>x</script>";
    CHECK_FALSE(has(paper::familyPage(opened, 0, 0), "<script"));
    CHECK_FALSE(has(paper::specialistPage(opened, 0, 0), "<script"));
}

TEST_CASE("Paper: every page carries the caution, runs nothing and fetches nothing") {
    for (const std::string& page : allPages()) {
        CHECK(has(page, kCaution));
        CHECK(has(page, "default-src 'none'"));
        for (const char* never : {"<script", "http://", "https://", "@import", "url(", "<img"})
            CHECK_FALSE(has(page, never));
        CHECK(times(page, "<main>") == 1);
        CHECK(times(page, "<h1>") == 1);
    }
}

TEST_CASE("Paper: colours are the desk's, and dark enough on white") {
    using namespace colour;
    const std::string page = paper::page("", paper::rangeBar(.1, .5, .9, ""));
    const std::regex colours("#[0-9a-f]{6}");
    int seen = 0;
    for (std::sregex_iterator it(page.begin(), page.end(), colours), end; it != end; ++it, ++seen) {
        bool known = false;
        for (const Colour one : {kInk, kSoft, kDeep, kDeeper, kBrick, kEdge, kLine, kWhite})
            known = known || hex(one) == it->str();
        CAPTURE(it->str());
        CHECK(known);
    }
    CHECK(seen > 8);
    for (const Colour text : {kInk, kSoft, kDeeper, kBrick}) CHECK(contrast(text, kWhite) >= 4.5);
}

TEST_CASE("Paper: the family's page names no figure of a sound and calls nothing missed") {
    for (std::size_t i = 0; i < room().children.size(); ++i) {
        std::string page = paper::familyPage(room(), i, demo::kLastDay);
        page.erase(0, page.find("<main>"));
        CHECK_FALSE(has(page, "missed"));
        CHECK_FALSE(has(page, " of 1"));
        CHECK_FALSE(has(page, "%"));
        CHECK(has(page, room().children[i].child.name));
        for (const auto& other : room().children)
            if (other.child.name.size() > 3 && other.child.id != room().children[i].child.id)
                CHECK_FALSE(has(page, ">" + other.child.name));
    }
}

TEST_CASE("Paper: the specialist's page has the counts of each line that it shows") {
    std::size_t rows = 0;
    for (std::size_t i = 0; i < room().children.size(); ++i) {
        const std::string page = paper::specialistPage(room(), i, demo::kLastDay);
        for (const practice::SoundLine& line : room().children[i].lines) {
            if (line.said != practice::Standing::missed) continue;
            const std::string counts =
                std::to_string(line.evidence.right) + " of " + std::to_string(line.evidence.seen);
            CHECK(has(page, counts));
        }
        rows += times(page, "<tr><td>");
        if (!room().children[i].child.shields.empty())
            CHECK(has(page, room().children[i].child.shields.front()));
    }
    CHECK(rows > 100);
}

TEST_CASE("Paper: two children of one name are told apart by their badges") {
    std::vector<practice::ChildProgress> children(3);
    children[0].child = {"c-1", "Maya", "badge-07", {}};
    children[1].child = {"c-2", "Maya", "badge-11", {}};
    children[2].child = {"c-3", "Leo", "badge-02", {}};
    const paper::Names names = paper::namesOf(children);
    CHECK(names.at("c-1") == "Maya (badge 07)");
    CHECK(names.at("c-2") == "Maya (badge 11)");
    CHECK(names.at("c-3") == "Leo");
}

}  // namespace wrenlet::desk
