#include "editor/serve/refusals.hpp"

#include <algorithm>
#include <ctime>
#include <fstream>
#include <system_error>

#include "content/common/files.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::int64_t kMinuteMs = 60'000;
constexpr std::size_t kMostAddresses = 1024;

std::string utcTime(std::int64_t at_ms) {
    const auto seconds = static_cast<std::time_t>(at_ms / 1000);
    std::tm utc{};
#ifdef _WIN32
    gmtime_s(&utc, &seconds);
#else
    gmtime_r(&seconds, &utc);
#endif
    char text[32] = "";
    std::strftime(text, sizeof text, "%Y-%m-%d %H:%M:%S UTC", &utc);
    return text;
}

}  // namespace

Refusals::Refusals(std::filesystem::path file) : file_(std::move(file)) {}

void Refusals::note(std::string_view from, std::string what, std::int64_t now_ms, Weight weight) {
    const std::lock_guard lock(mutex_);
    ++count_;
    if (by_address_.size() >= kMostAddresses && by_address_.find(from) == by_address_.end())
        by_address_.erase(std::min_element(
            by_address_.begin(), by_address_.end(),
            [](const auto& a, const auto& b) { return a.second.began_ms < b.second.began_ms; }));
    Minute& minute = by_address_[std::string(from)];
    if (now_ms - minute.began_ms >= kMinuteMs) minute = {now_ms, 0};
    if (weight == Weight::guess) ++minute.refused;
    newest_.push_front({now_ms, std::string(from), std::move(what)});
    write(newest_.front());
    if (newest_.size() > kMostKept) newest_.pop_back();
}

bool Refusals::isBarred(std::string_view from, std::int64_t now_ms) const {
    const std::lock_guard lock(mutex_);
    const auto found = by_address_.find(from);
    return found != by_address_.end() && found->second.refused >= kMostInAMinute &&
           now_ms - found->second.began_ms < kMinuteMs;
}

std::vector<Refusal> Refusals::newest() const {
    const std::lock_guard lock(mutex_);
    return {newest_.begin(), newest_.end()};
}

std::uint64_t Refusals::count() const {
    const std::lock_guard lock(mutex_);
    return count_;
}

void Refusals::write(const Refusal& refusal) {
    if (refusal.at_ms / 1000 != second_) {
        second_ = refusal.at_ms / 1000;
        lines_ = 0;
    }
    if (++lines_ > kMostLinesASecond) {
        ++untold_;
        return;
    }
    std::error_code error;
    const auto size = std::filesystem::file_size(file_, error);
    if (!error && size > kMostFileBytes) {
        const auto bytes = readWhole(file_, size + kMostFileBytes);
        if (bytes.ok()) {
            const std::size_t half = bytes.value().find('\n', bytes.value().size() / 2);
            (void)writeWhole(file_, half == std::string::npos
                                        ? std::string_view()
                                        : std::string_view(bytes.value()).substr(half + 1));
        }
    }
    std::ofstream out(file_, std::ios::app);  // a log that cannot be written stops nothing
    if (untold_ > 0) out << utcTime(refusal.at_ms) << "  and " << untold_ << " more\n";
    untold_ = 0;
    out << utcTime(refusal.at_ms) << "  " << refusal.from << "  " << refusal.what << "\n";
}

}  // namespace wrenlet::desk
