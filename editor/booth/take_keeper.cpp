#include "editor/booth/take_keeper.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <system_error>

#include "content/common/files.hpp"
#include "editor/voice/audio_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kName = "take-%04zu.flac";

std::size_t numberOf(const std::string& name) {
    std::size_t number = 0;
    return std::sscanf(name.c_str(), "take-%zu.flac", &number) == 1 ? number : 0;
}

std::vector<Problem> write(const std::filesystem::path& folder, const std::string& name,
                           const Pcm& take) {
    std::error_code error;
    // a classroom folder that is gone is not made anew: it may be a stick
    if (std::filesystem::is_directory(folder.parent_path(), error))
        std::filesystem::create_directory(folder, error);
    const Result<std::string> bytes = encodeFlac(take);
    if (!bytes.ok()) return bytes.problems();
    return writeWhole(folder / name, bytes.value()).problems();
}

}  // namespace

TakeKeeper::TakeKeeper(std::filesystem::path folder, Aside& aside, std::function<void()> wake)
    : folder_(std::move(folder)), newest_(aside, std::move(wake)) {
    for (const auto& file : listFiles(folder_, ".flac"))
        next_number_ = std::max(next_number_, numberOf(file.filename().string()) + 1);
}

std::string TakeKeeper::keep(std::shared_ptr<const Pcm> take) {
    char name[40];
    std::snprintf(name, sizeof name, kName, next_number_++);
    waiting_.push_back({name, std::move(take)});
    writeFirst();
    return name;
}

void TakeKeeper::writeFirst() {
    if (writing_ || waiting_.empty()) return;
    writing_ = true;
    newest_.ask([folder = folder_, first = waiting_.front()] {
        return Written{first.name, write(folder, first.name, *first.take)};
    });
}

void TakeKeeper::takeIn(std::int64_t now_ms) {
    const std::optional<Written> written = newest_.take();
    if (!written) return;
    writing_ = false;
    problems_ = written->problems;
    if (problems_.empty())
        waiting_.pop_front();
    else
        again_at_ms_ = now_ms + kAgainMs;
}

void TakeKeeper::step(std::int64_t now_ms) {
    takeIn(now_ms);
    if (problems_.empty() || now_ms >= again_at_ms_) writeFirst();
}

void TakeKeeper::finish() {
    for (bool went_well = true; went_well && !waiting_.empty();) {
        writeFirst();
        newest_.wait();
        takeIn(0);
        went_well = problems_.empty();
    }
}

Result<Pcm> TakeKeeper::take(const std::string& name) const {
    for (const Waiting& one : waiting_)
        if (one.name == name) return *one.take;
    return readTake(folder_ / name);
}

}  // namespace wrenlet::desk
