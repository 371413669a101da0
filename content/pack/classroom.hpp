// The classroom folder, all that is shared between desk and tablets: class.json (written by the
// desk alone), packs/ (read-only once handed out), tablets/ (one snapshot a tablet, written by that
// tablet alone). Each file has one writer and is replaced whole.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::pack {

struct Child {
    std::string id;                    // "c-07": never shown, never reused
    std::string name;                  // given name; two children may share one
    std::string badge;                 // "badge-07": what the child touches
    std::vector<std::string> shields;  // contrasts never called missed: "b/v", "pin-pen"
    std::vector<std::string> key{};    // two of kKeyPictures, or empty: the badge is enough
    std::string roster{};              // her id in the school's own list; empty: not from one
    bool operator==(const Child&) const = default;
};

inline constexpr int kLeastMinutes = 5, kMostMinutes = 8;  // of a session

struct ClassSettings {
    int session_minutes = 6;         // of playing: about so many
    std::vector<std::string> focus;  // skill ids she pinned; empty: chosen for each child
    bool operator==(const ClassSettings&) const = default;
};

struct ClassList {
    std::string title;  // "Room 4"
    std::vector<Child> children;
    std::vector<Child> left;  // no longer in the class: not on tablets, their answers kept
    std::vector<std::string> deleted;  // ids of those deleted for good: told to every tablet
    std::string pack;         // file name in packs/: "by-the-pond-1.zip"
    ClassSettings settings;
    bool operator==(const ClassList&) const = default;

    const Child* child(std::string_view id) const;  // in the class
    bool isDeleted(std::string_view id) const;
};

inline constexpr std::size_t kMostChildren = 200;  // in the class
inline constexpr std::size_t kMostLeft = 2'000;    // who have left it
inline constexpr std::size_t kMostDeleted = 4'000;
inline constexpr std::size_t kMostNameLetters = 60;
inline constexpr std::size_t kMostRosterLetters = 255;

Result<ClassList> readClassList(std::string_view json, std::string_view where);
std::string writeClassList(const ClassList& list);

/// Where things lie in a classroom folder.
struct Classroom {
    std::filesystem::path folder;
    std::filesystem::path classFile() const { return folder / "class.json"; }
    std::filesystem::path packFile(std::string_view name) const { return folder / "packs" / name; }
    std::filesystem::path packs() const { return folder / "packs"; }
    std::filesystem::path tablets() const { return folder / "tablets"; }
    std::filesystem::path earFile() const { return folder / "ear.json"; }  // marks given aloud
    std::filesystem::path papers() const { return folder / "papers"; }  // made at the desk
    std::filesystem::path snapshot(std::string_view tablet) const {
        return folder / "tablets" / (std::string(tablet) + ".db");
    }
};

inline constexpr std::uint64_t kMostClassBytes = 1 << 20;

Result<ClassList> openClassList(const Classroom& classroom);

}  // namespace wrenlet::pack
