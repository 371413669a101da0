// Children's names as they are typed, pasted and exported, and what is wrong with them.
#include <doctest/doctest.h>

#include <fstream>

#include "content/common/random.hpp"
#include "content/pack/archive.hpp"
#include "editor/classlist/csv.hpp"
#include "editor/classlist/names.hpp"
#include "editor/classlist/one_roster.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

std::vector<std::string> given(const std::vector<NewChild>& children) {
    std::vector<std::string> names;
    for (const NewChild& child : children) names.push_back(child.given);
    return names;
}

using Names = std::vector<std::string>;

// Heads as the CSV bindings of 1EdTech OneRoster 1.1 (users.csv with its role) and 1.2.1 (August
// 2023: without it, roles.csv beside) list them.
constexpr const char* kHead11 =
    "sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,"
    "familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password\n";
constexpr const char* kHead12 =
    "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,"
    "middleName,identifier,email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,"
    "resourceSourcedIds,preferredGivenName,preferredMiddleName,preferredFamilyName,"
    "primaryOrgSourcedId,pronouns\n";
constexpr const char* kRoles12 =
    "sourcedId,status,dateLastModified,userSourcedId,roleType,role,beginDate,endDate,orgSourcedId,"
    "userProfileSourcedId\n";

std::string user11(const std::string& id, const std::string& role, const std::string& given,
                   const std::string& family, const std::string& status = "") {
    return id + "," + status + ",,true,org-1," + role + ",name-" + id + ",," + given + "," +
           family + ",,,mail@example.test,,,,01,secret\n";
}

}  // namespace

TEST_CASE("Names are read by line, in one line, and from columns") {
    CHECK(given(readNames("Maya\nLeo\r\nSol\n", "list").children) == Names{"Maya", "Leo", "Sol"});
    CHECK(given(readNames("Maya, Leo, Mary Ann", "list").children) ==
          Names{"Maya", "Leo", "Mary Ann"});
    CHECK(given(readNames("Maya; Leo; Sol", "list").children) == Names{"Maya", "Leo", "Sol"});
    const NamesRead columns = readNames("Maya | King; Leo | Brook", "list");
    CHECK(given(columns.children) == Names{"Maya", "Leo"});
    CHECK(columns.children[1].family == "Brook");
    CHECK(columns.columns == 2);
    CHECK(given(readNames("King,Maya\nBrook,Leo\n", "list", 1).children) == Names{"Maya", "Leo"});
    const NamesRead headed = readNames("Last name;First name;Room\nKing;Maya;4\n", "list.csv");
    CHECK(headed.has_head);
    CHECK(given(headed.children) == Names{"Maya"});
    CHECK(headed.children[0].family == "King");
    CHECK(given(readNames("\"Maya\",\"King, jr.\"\n\"Leo\",\"\"\n", "l").children) ==
          Names{"Maya", "Leo"});
}

TEST_CASE("A byte order mark, Windows letters and other scripts are read, and UTF-16 is told") {
    CHECK(given(readNames("\xEF\xBB\xBFMaya\nZo\xC3\xAB\n", "list").children) ==
          Names{"Maya", "Zo\u00eb"});
    const NamesRead windows = readNames("Maya\nZo\xEB\n", "list.csv");  // ISO 8859-1
    CHECK(given(windows.children) == Names{"Maya", "Zo\u00eb"});
    REQUIRE(windows.problems.size() == 1);
    CHECK(given(readNames("\u0410\u043d\u044f\n\u5c0f\u660e", "list").children).size() == 2);
    const NamesRead utf16 = readNames(std::string("\xFF\xFEM\0a\0", 6), "list.csv");
    CHECK(utf16.children.empty());
    CHECK(utf16.problems.at(0).what.find("UTF-16") != std::string::npos);
}

TEST_CASE("A broken line is told by its number and costs none of the others") {
    const NamesRead read =
        readNames("first name,last name\nMaya,King\n\"Leo,Brook\n,Marsh\n12,7\n" +
                      std::string(70, 'x') + ",Long\nSol,Field\n",
                  "list.csv");
    CHECK(given(read.children) == Names{"Maya", "Sol"});
    REQUIRE(read.problems.size() == 4);
    CHECK(read.problems[0].where == "list.csv, line 3");
    CHECK(read.problems[0].what.find("not closed") != std::string::npos);
    CHECK(read.problems[1].where == "list.csv, line 4");
    CHECK(read.problems[2].where == "list.csv, line 5");
    CHECK(read.problems[3].what.find("longer than a name") != std::string::npos);
}

TEST_CASE("A quoted field holds commas and doubled quotes, as RFC 4180 has it") {
    // RFC 4180, section 2, rules 5 to 7, with its examples
    const auto rows = csvRows("\"aaa\",\"b\"\"bb\",\"ccc\"\r\nzzz,\"y,y\",xxx", ',', 10);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].fields == Names{"aaa", "b\"bb", "ccc"});
    CHECK(rows[1].fields == Names{"zzz", "y,y", "xxx"});
    CHECK(csvRows("a,b,\n", ',', 10).at(0).fields == Names{"a", "b", ""});
    CHECK(csvRows("\"a\" b,c\n", ',', 10).at(0).why_broken.find("behind") != std::string::npos);
    CHECK(csvRows("a\nb\nc\n", ',', 2).size() == 2);
}

TEST_CASE("OneRoster 1.1: the students of users.csv, with id and given name and no more") {
    RosterFiles files;
    files.users = std::string("\xEF\xBB\xBF") + kHead11 + user11("s1", "student", "Maya", "King") +
                  user11("t1", "teacher", "Ada", "Field") +
                  user11("s2", "student", "\"Leo, jr\"", "Brook") +
                  user11("s3", "student", "Sol", "Marsh", "tobedeleted") +
                  user11("s1", "student", "Maya", "King") + user11("s4", "student", "", "Hill") +
                  "s5,,,true,\"org,student,x\n" + user11("s6", "student", "Wim", "Vale");
    const auto read = readRoster(files);
    REQUIRE(read.ok());
    CHECK(given(read.value().children) == Names{"Maya", "Leo, jr", "Wim"});
    CHECK(read.value().children[0].roster == "s1");
    CHECK(read.value().children[0].family == "King");
    REQUIRE(read.problems().size() == 3);
    CHECK(read.problems()[0].where == "users.csv, line 8");
    CHECK(read.problems()[1].where == "users.csv, line 6");
    CHECK(read.problems()[2].where == "users.csv, line 7");
    CHECK(read.problems()[2].what == "There is no given name on this line.");
    CHECK(isRoster(files.users));
    CHECK_FALSE(isRoster("first name,last name\n"));
}

TEST_CASE("OneRoster 1.2: roles.csv tells the students, the preferred name is taken") {
    RosterFiles files;
    files.users = std::string(kHead12) +
                  "s1,,,true,u1,,Margarethe,King,,,,,,,,,,,Maya,,,org-1,\n"
                  "t1,,,true,u2,,Ada,Field,,,,,,,,,,,,,,org-1,\n";
    files.roles = std::string(kRoles12) + "r1,,,s1,primary,student,,,org-1,\n" +
                  "r2,,,t1,primary,teacher,,,org-1,\n";
    const auto read = readRoster(files);
    REQUIRE(read.ok());
    CHECK(given(read.value().children) == Names{"Maya"});
    CHECK(read.problems().empty());
    files.roles.clear();
    const auto untold = readRoster(files);
    REQUIRE(untold.ok());
    CHECK(untold.value().children.size() == 2);
    CHECK(untold.problems().at(0).what == "Nothing here tells children from grown-ups.");
}

TEST_CASE("Classes and enrollments beside users.csv part the children by class") {
    const practice::samples::Folder folder;
    const auto put = [&](const char* name, const std::string& text) {
        practice::samples::writeBytes(folder / name, text);
    };
    put("users.csv", kHead11 + user11("s1", "student", "Maya", "King") +
                         user11("s2", "student", "Leo", "Brook") +
                         user11("s3", "student", "Sol", "Marsh"));
    put("classes.csv",
        "sourcedId,status,dateLastModified,title,grades,courseSourcedId\nc1,,,Hill,,k\nc2,,,Marsh,,"
        "k\n");
    put("enrollments.csv",
        "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role\n"
        "e1,,,c1,o,s1,student\ne2,,,c2,o,s2,student\ne3,,,c1,o,s3,student\ne4,,,c1,o,t1,teacher\n"
        "e5,tobedeleted,,c2,o,s3,student\n");
    const auto files = openRoster(folder / "users.csv");
    REQUIRE(files.ok());
    const auto read = readRoster(files.value());
    REQUIRE(read.ok());
    REQUIRE(read.value().classes.size() == 2);
    CHECK(read.value().classes[0].title == "Hill");
    CHECK(given(read.value().classes[0].children) == Names{"Maya", "Sol"});
    CHECK(given(read.value().classes[1].children) == Names{"Leo"});

    const auto zip = pack::writeArchive({{"users.csv", files.value().users},
                                         {"classes.csv", files.value().classes},
                                         {"enrollments.csv", files.value().enrollments}});
    REQUIRE(zip.ok());
    put("export.zip", zip.value());
    const auto zipped = openRoster(folder / "export.zip");
    REQUIRE(zipped.ok());
    CHECK(readRoster(zipped.value()).value().classes.size() == 2);
}

TEST_CASE("A list that is none, is cut short or far too long is told and never crashes") {
    const practice::samples::Folder folder;
    CHECK_FALSE(readRoster({"givenName,familyName\nMaya,King\n", "", "", ""}).ok());
    CHECK_FALSE(readRoster({}).ok());
    CHECK_FALSE(openRoster(folder / "gone.csv").ok());
    practice::samples::writeBytes(folder / "other.zip", "PK no zip");
    CHECK_FALSE(openRoster(folder / "other.zip").ok());
    practice::samples::writeBytes(folder / "long.csv", std::string(kMostRosterFileBytes + 1, 'a'));
    CHECK_FALSE(openRoster(folder / "long.csv").ok());
    const std::string good =
        kHead11 + user11("s1", "student", "Maya", "King") + user11("s2", "student", "Leo", "Brook");
    Random random(7);
    for (int i = 0; i < 3000; ++i) {
        std::string bad = good.substr(0, random.below(static_cast<std::uint32_t>(good.size())));
        for (int j = 0; j < 6 && !bad.empty(); ++j)
            bad[random.below(static_cast<std::uint32_t>(bad.size()))] =
                static_cast<char>(random.below(256));
        const auto read = readRoster({bad, bad, bad, bad});
        if (read.ok()) CHECK(read.value().children.size() <= 2);
        CHECK(readNames(bad, "bad").children.size() <= bad.size());
    }
}

}  // namespace wrenlet::desk
