#include "editor/serve/class_now.hpp"

#include <algorithm>
#include <utility>

#include "content/common/files.hpp"
#include "content/link/bytes.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::int64_t kLookMs = 1000;

}  // namespace

bool ServedClass::isDeleted(std::string_view child) const {
    return std::find(welcome.deleted.begin(), welcome.deleted.end(), child) !=
           welcome.deleted.end();
}

std::shared_ptr<const ServedClass> ClassNow::at(std::int64_t now_ms) {
    const std::lock_guard lock(mutex_);
    const bool is_due = !looked_ || now_ms - looked_ms_ >= kLookMs || now_ms < looked_ms_;
    if (is_due) {
        looked_ms_ = now_ms;
        // By its text: times of files are whole seconds on some systems, and on sticks two of them.
        Result<std::string> text = readWhole(classroom_.classFile(), pack::kMostClassBytes);
        if (!looked_ || !text.ok() || text.value() != read_ || !state_->problems.empty()) {
            looked_ = true;
            readAnew(std::move(text));
        }
    }
    return state_;
}

std::shared_ptr<const ServedClass> ClassNow::now(std::int64_t now_ms) {
    {
        const std::lock_guard lock(mutex_);
        looked_ = false;
    }
    return at(now_ms);
}

void ClassNow::readAnew(Result<std::string> text) {
    auto now = std::make_shared<ServedClass>(*state_);
    now->problems.clear();
    read_ = text.ok() ? text.value() : std::string();
    const Result<pack::ClassList> list =
        text.ok() ? pack::readClassList(read_, classroom_.classFile().filename().string())
                  : Result<pack::ClassList>(text.problems());
    if (!list.ok()) {
        now->problems = list.problems();
        state_ = std::move(now);
        return;
    }
    const std::string hash_before = state_->welcome.pack_hash;
    const bool same_pack = list.value().pack == state_->welcome.pack && !hash_before.empty();
    now->welcome = link::welcomeOf(list.value());
    if (same_pack) {  // what is handed out is never changed
        now->welcome.pack_hash = hash_before;
    } else {
        now->pack_bytes = std::make_shared<const std::string>();
        if (!list.value().pack.empty()) {
            auto bytes = readWhole(classroom_.packFile(list.value().pack), pack::kMostPackBytes);
            if (bytes.ok()) {
                now->pack_bytes = std::make_shared<const std::string>(std::move(bytes.value()));
                now->welcome.pack_hash = link::hashOf(*now->pack_bytes);
            } else {
                now->problems = bytes.problems();
            }
        }
    }
    now->welcome.pack_bytes = now->pack_bytes->size();
    state_ = std::move(now);
}

}  // namespace wrenlet::desk
