// Putting one row of a document's list in, out or another in its place, by the row's id: what most
// edits are made of.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace wrenlet::desk {

template <class Row>
struct Was {
    std::string id;          // what the changed row is called now; empty: it is gone
    std::optional<Row> row;  // what it was; none: it is new
    std::size_t at = 0;
};

/// An empty `id` puts a new row in; past the end is last.
template <class Row, class IdOf>
Was<Row> putRow(std::vector<Row>& rows, const std::string& id, const std::optional<Row>& row,
                std::size_t at, IdOf idOf) {
    Was<Row> was;
    if (!id.empty()) {
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const Row& one) { return idOf(one) == id; });
        if (found != rows.end()) {
            was.at = static_cast<std::size_t>(found - rows.begin());
            was.row = std::move(*found);
            rows.erase(found);
        }
    }
    if (row) {
        was.id = idOf(*row);
        const std::size_t place = std::min(at, rows.size());
        rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(place), *row);
    }
    return was;
}

}  // namespace wrenlet::desk
