#include "tests/serve/page_tablet.hpp"

#include <algorithm>

#include "content/link/join.hpp"
#include "content/link/join_code.hpp"
#include "content/link/over_http.hpp"
#include "content/link/talk.hpp"

namespace wrenlet::desk::samples {
namespace {

constexpr int kWell = static_cast<int>(link::Status::well);

}  // namespace

PageTablet::PageTablet(std::uint16_t port, std::string from, std::uint64_t seed)
    : http_(std::in_place, port, from), from_(from), entropy_(seed) {}

void PageTablet::movedTo(std::uint16_t port) {
    http_.emplace(port, from_);
}

bool PageTablet::join(const std::string& typed) {
    const auto code = link::codeFromTyped(typed);
    const auto offer = http_->ask("GET", link::kJoinPath);
    if (!code || !offer || offer->status != kWell) return false;
    const auto joining = link::JoiningTablet::begin(*code, offer->body, entropy_);
    if (!joining) return false;
    const auto answer = http_->ask("POST", link::kJoinPath, joining->request());
    if (!answer || answer->status != kWell) return false;
    const auto identity = joining->finish(answer->body);
    if (!identity) return false;
    identity_ = *identity;
    number_ = 0;
    return true;
}

std::string PageTablet::nextMessage(const link::Ask& ask) {
    return link::sealAsk(identity_, ++number_, link::writeAsk(ask), entropy_);
}

std::optional<link::Answer> PageTablet::say(const link::Ask& ask) {
    for (int time = 0; time < 2; ++time) {
        const auto answer = http_->ask("POST", link::kTalkPath, nextMessage(ask));
        if (!answer || answer->status != kWell) return std::nullopt;
        const auto plain = link::openAnswer(identity_, number_, answer->body);
        if (!plain) return std::nullopt;
        const auto read = link::readAnswer(*plain);
        const auto* const behind = read ? std::get_if<link::Behind>(&*read) : nullptr;
        if (behind == nullptr) return read;
        number_ = std::max(number_, behind->number);
    }
    return std::nullopt;
}

bool PageTablet::hello(bool playing) {
    const link::Hello hello{clock_ms, static_cast<std::int64_t>(outbox_.size()), playing,
                            pack_.empty() ? std::string() : link::hashOf(pack_)};
    const auto answer = say(hello);
    if (!answer || !std::holds_alternative<link::Welcome>(*answer)) return false;
    welcome_ = std::get<link::Welcome>(*answer);
    return true;
}

std::optional<std::string> PageTablet::fetchPack() {
    std::string bytes;
    while (bytes.size() < welcome_.pack_bytes) {
        const auto answer = say(link::WantPiece{welcome_.pack_hash, bytes.size()});
        if (!answer) return std::nullopt;
        const auto* const piece = std::get_if<link::Piece>(&*answer);
        if (piece == nullptr || piece->bytes.empty() || piece->from != bytes.size())
            return std::nullopt;
        bytes += piece->bytes;
    }
    if (link::hashOf(bytes) != welcome_.pack_hash) return std::nullopt;
    pack_ = bytes;
    return bytes;
}

void PageTablet::answers(const practice::Response& response) {
    outbox_.push_back(response);
    outbox_.back().sequence = ++sequence_;
}

bool PageTablet::sendAll() {
    while (!outbox_.empty()) {
        const std::size_t count = link::fitting(outbox_);
        const auto answer = say(link::Responses{
            {outbox_.begin(), outbox_.begin() + static_cast<std::ptrdiff_t>(count)}, {}});
        const auto* const kept = answer ? std::get_if<link::Kept>(&*answer) : nullptr;
        if (kept == nullptr || kept->kept.empty()) return false;
        std::erase_if(outbox_, [&](const practice::Response& response) {
            return std::count(kept->kept.begin(), kept->kept.end(), response.sequence) > 0;
        });
    }
    return true;
}

}  // namespace wrenlet::desk::samples
