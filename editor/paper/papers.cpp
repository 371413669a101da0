#include "editor/paper/papers.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/paper/exports.hpp"
#include "editor/paper/report_pages.hpp"
#include "editor/paper/tomorrow_pages.hpp"

namespace wrenlet::desk {

namespace {

std::string isoDate(std::int64_t day) {
    const std::chrono::year_month_day date{
        std::chrono::sys_days{std::chrono::days{static_cast<int>(day)}}};
    char text[40];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", int(date.year()), unsigned(date.month()),
                  unsigned(date.day()));
    return text;
}

/// Letters and digits as they are, one hyphen for whatever stands between them.
std::string inFileName(const std::string& name) {
    std::string text;
    for (const char c : name) {
        const auto byte = static_cast<unsigned char>(c);
        const bool is_plain = byte >= 0x80 || (byte >= '0' && byte <= '9') ||
                              (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
        if (is_plain)
            text += c;
        else if (!text.empty() && text.back() != '-')
            text += '-';
    }
    while (!text.empty() && text.back() == '-') text.pop_back();
    return text.empty() ? "child" : text;
}

struct Named {
    const char *front, *ending;
};

Named named(Paper paper) {
    switch (paper) {
        case Paper::lesson:
            return {"lesson", ".html"};
        case Paper::tables:
            return {"small-tables", ".html"};
        case Paper::family:
            return {"family", ".html"};
        case Paper::specialist:
            return {"specialist", ".html"};
        case Paper::answers:
            return {"answers", ".csv"};
        case Paper::progress:
            return {"progress", ".csv"};
        case Paper::xapi:
            return {"statements", ".json"};
    }
    return {"paper", ".html"};
}

}  // namespace

bool isOfAChild(Paper paper) {
    return paper == Paper::family || paper == Paper::specialist;
}

std::string paperName(Paper paper, const OpenedClass& opened, std::size_t child) {
    const auto [front, ending] = named(paper);
    std::string name = front;
    if (isOfAChild(paper)) {
        const auto names = paper::namesOf(opened.children);
        name += "-" + inFileName(names.at(opened.children[child].child.id));
    }
    if (const std::int64_t day = lastDayOf(opened); day > 0) name += "-" + isoDate(day);
    return name + ending;
}

std::string paperOf(Paper paper, const OpenedClass& opened, std::size_t child,
                    const TomorrowPlan& plan, std::string_view pack_name) {
    switch (paper) {
        case Paper::lesson:
            return paper::lessonPage({std::string(pack_name), plan.lesson},
                                     paper::namesOf(opened.children));
        case Paper::tables: {
            const TablesOnPaper tables = tablesOnPaper(plan, opened.children);
            return paper::groupsPage(tables.grouping, tables.plans,
                                     paper::namesOf(opened.children));
        }
        case Paper::family:
            return paper::familyPage(opened, child, lastDayOf(opened));
        case Paper::specialist:
            return paper::specialistPage(opened, child, lastDayOf(opened));
        case Paper::answers:
            return paper::responsesCsv(opened.responses);
        case Paper::progress:
            return paper::progressCsv(opened.children);
        case Paper::xapi:
            return paper::xapiStatements(opened.responses);
    }
    return {};
}

Result<std::filesystem::path> putPaper(const pack::Classroom& classroom, std::string_view name,
                                       std::string_view bytes) {
    const std::filesystem::path folder = classroom.folder / "papers";
    std::error_code error;
    if (!std::filesystem::is_directory(classroom.folder, error))
        return Problem{classroom.folder.string(), "The classroom folder is not there.",
                       "Plug the stick in again, or look whether the share can be reached."};
    std::filesystem::create_directories(folder, error);
    const std::filesystem::path file = folder / std::filesystem::u8path(std::string(name));
    const Result<Done> written = writeWhole(file, bytes);
    if (!written.ok()) return written.problems();
    return file;
}

std::string fileAddress(const std::filesystem::path& path) {
    constexpr std::string_view kPlain =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~/:";
    const auto utf8 = path.generic_u8string();
    const std::string text(utf8.begin(), utf8.end());
    std::string address = text.empty() || text.front() != '/' ? "file:///" : "file://";
    for (const char c : text) {
        if (kPlain.find(c) != std::string_view::npos) {
            address += c;
            continue;
        }
        char code[4];
        std::snprintf(code, sizeof code, "%%%02X",
                      static_cast<unsigned>(static_cast<unsigned char>(c)));
        address += code;
    }
    return address;
}

}  // namespace wrenlet::desk
