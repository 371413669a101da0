// What the desk keeps of the tablets that joined over the network, in the classroom's folder link/:
// their list with their keys, for this computer's user alone; what each sent, until it is handed in
// as a native tablet's file; and what was refused.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/link/bytes.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kMostTablets = 300;  // on the list, with those removed

struct LinkFolder {
    pack::Classroom classroom;
    std::filesystem::path folder() const { return classroom.folder / "link"; }
    std::filesystem::path list() const { return folder() / "tablets.json"; }
    std::filesystem::path held() const { return folder() / "serving.lock"; }
    std::filesystem::path refused() const { return folder() / "refused.log"; }
    std::filesystem::path store(std::string_view tablet) const {
        return folder() / (std::string(tablet) + ".db");
    }
};

struct ListedTablet {
    link::TabletIdentity identity;
    std::uint64_t number = 0;  // nothing that it asks under this number or a lower one is done
    std::int64_t joined_ms = 0, seen_ms = 0;
    bool removed = false;  // by the teacher; its key is kept to tell it so
    bool operator==(const ListedTablet&) const = default;
};

/// Empty where there is none yet. Errors: broken, of a newer program; it is left as it is.
Result<std::vector<ListedTablet>> readTabletList(const LinkFolder& folder);
/// Replaces the file whole, and makes the folder, both for this user alone where the disk knows of
/// users.
Result<Done> keepTabletList(const LinkFolder& folder, const std::vector<ListedTablet>& tablets);

}  // namespace wrenlet::desk
