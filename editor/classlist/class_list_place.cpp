#include "editor/classlist/class_list_place.hpp"

#include <algorithm>
#include <system_error>

#include "content/common/files.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

bool isListFile(const std::filesystem::path& path) {
    const std::string ending = path.extension().string();
    std::error_code error;
    return (ending == ".csv" || ending == ".txt" || ending == ".zip") &&
           std::filesystem::is_regular_file(path, error);
}

}  // namespace

void ClassListPlace::add(OpenClassList& list) {
    if (typed.empty()) return;
    if (isListFile(typed)) {
        const std::filesystem::path file = std::exchange(typed, {});
        return takeFile(file, list);
    }
    addNames(typed, "What you typed", 0, list);
    if (!fresh_.empty() || not_taken.empty()) typed.clear();
}

void ClassListPlace::addNames(const std::string& text, std::string where, std::size_t column,
                              OpenClassList& list) {
    NamesRead names = readNames(text, where, column);
    std::vector<std::string> before;
    for (const pack::Child& child : list.list().children) before.push_back(child.id);
    std::string first;
    not_taken = std::move(names.problems);
    for (Problem& problem : list.change().add(names.children, where, &first))
        not_taken.push_back(std::move(problem));
    if (names.children.empty() && not_taken.empty())
        not_taken.push_back({where, "There is no name in it.", "Write one name on a line.",
                             Problem::Weight::warning});
    if (!first.empty()) take(first, list);
    text_ = text;
    where_ = std::move(where);
    column_ = column;
    fresh_.clear();
    std::size_t long_names = 0;
    for (const pack::Child& child : list.list().children) {
        if (std::find(before.begin(), before.end(), child.id) != before.end()) continue;
        fresh_.push_back(child.id);
        long_names += child.name.find(' ') != std::string::npos;
    }
    offer.reset();
    if (fresh_.empty()) return;
    if (names.columns >= 2 && !names.has_head)
        offer = NamesOffer{"The names are from column " + std::to_string(column + 1) + " of " +
                               std::to_string(names.columns) + ".",
                           "Given names are all that is needed; nothing else is kept.",
                           "Take column " + std::to_string((column + 1) % names.columns + 1),
                           NamesOffer::Kind::other_column, list.work().changes()};
    else if (names.columns == 1 && fresh_.size() >= 2 && 2 * long_names > fresh_.size())
        offer =
            NamesOffer{wording::counted(std::int64_t(long_names), "child has", "children have") +
                           " more than one name.",
                       "No surname is needed here.", "Keep the first names alone",
                       NamesOffer::Kind::given_names, list.work().changes()};
}

void ClassListPlace::takeOffer(OpenClassList& list) {
    if (offered(list) == nullptr) return;
    const NamesOffer taken = *offer;
    offer.reset();
    if (taken.kind == NamesOffer::Kind::given_names) return list.change().keepGivenNames(fresh_);
    list.change().undo();  // what was just added from the other column
    const std::size_t columns = readNames(text_, where_).columns;
    addNames(std::string(text_), where_, (column_ + 1) % columns, list);
}

void ClassListPlace::takeFile(const std::filesystem::path& file, OpenClassList& list) {
    const std::string name = file.filename().string();
    offer.reset();
    roster.reset();
    const bool is_zip = file.extension() == ".zip";
    const Result<std::string> bytes = readWhole(file, kMostRosterFileBytes);
    if (!bytes.ok()) {
        not_taken = bytes.problems();
        return;
    }
    if (!is_zip && !isRoster(bytes.value())) return addNames(bytes.value(), name, 0, list);
    const Result<RosterFiles> files = openRoster(file);
    Result<Roster> read = files.ok() ? readRoster(files.value()) : Result<Roster>(files.problems());
    not_taken = read.problems();
    if (!read.ok()) return;
    roster_from = name;
    roster = std::move(read.value());
    if (roster->classes.size() < 2 && roster->children.size() <= pack::kMostChildren)
        takeRoster(std::nullopt, list);
}

void ClassListPlace::takeRoster(std::optional<std::size_t> of_class, OpenClassList& list) {
    if (!roster) return;
    const std::vector<NewChild> children =
        of_class ? roster->classes[*of_class].children : roster->children;
    roster.reset();
    std::string first;
    for (Problem& problem : list.change().add(children, roster_from, &first))
        not_taken.push_back(std::move(problem));
    if (children.empty() && not_taken.empty())
        not_taken.push_back({roster_from, "There is no child in it.",
                             "Look whether it is the list.", Problem::Weight::warning});
    if (!first.empty()) take(first, list);
}

std::vector<std::string> ClassListPlace::rows(const OpenClassList& list) const {
    std::vector<std::string> ids;
    for (const pack::Child& child : list.list().children) ids.push_back(child.id);
    for (const pack::Child& child : list.list().left) ids.push_back(child.id);
    return ids;
}

void ClassListPlace::take(const std::string& id, const OpenClassList& list) {
    in_hand = id;
    key_first.clear();
    delete_typed.clear();
    deleted_told.clear();
    const pack::Child* child = list.work().child(id);
    name_typed = name_seen = child != nullptr ? child->name : "";
}

void ClassListPlace::move(int by, const OpenClassList& list) {
    const std::vector<std::string> all = rows(list);
    if (all.empty()) return;
    const auto at = std::find(all.begin(), all.end(), in_hand);
    const auto last = static_cast<std::ptrdiff_t>(all.size()) - 1;
    const std::ptrdiff_t to =
        at == all.end() ? 0 : std::clamp<std::ptrdiff_t>(at - all.begin() + by, 0, last);
    take(all[static_cast<std::size_t>(to)], list);
}

void ClassListPlace::touchKey(const std::string& picture, OpenClassList& list) {
    if (key_first.empty() || key_first == picture) {
        key_first = key_first == picture ? std::string() : picture;
        return;
    }
    list.change().giveKey(in_hand, {std::exchange(key_first, {}), picture});
}

void ClassListPlace::leaveOrComeBack(OpenClassList& list) {
    if (list.work().child(in_hand) != nullptr) {
        list.change().leave(in_hand);
    } else if (list.work().leftChild(in_hand) != nullptr && !list.change().comeBack(in_hand)) {
        not_taken = {{"class.json", "All badges are given.",
                      "Take out who has left the class, then try again.",
                      Problem::Weight::warning}};
    }
}

bool ClassListPlace::mayDelete(const OpenClassList& list) const {
    const pack::Child* child = list.work().leftChild(in_hand);
    return child != nullptr && delete_typed == child->name;
}

void ClassListPlace::wasDeleted(const ChildDeleted& done, const std::string& name) {
    deleted_told =
        name + " is deleted, with " + wording::counted(std::int64_t(done.answers), "answer") + ".";
    if (!done.receipt.empty())
        deleted_told += " The receipt is " + done.receipt.filename().string() + " in receipts/.";
    if (!done.tablets.empty())
        deleted_told += " Open Wrenlet on " + wording::names(done.tablets) +
                        " near this folder, so that these forget too.";
    not_taken = done.problems;
    delete_typed.clear();
    in_hand.clear();
}

}  // namespace wrenlet::desk
