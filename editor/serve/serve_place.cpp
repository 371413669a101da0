#include "editor/serve/serve_place.hpp"

#include <algorithm>
#include <system_error>
#include <utility>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::int64_t kLookMs = 1000;
constexpr std::int64_t kGatherMs = 3000;  // no oftener, and less often where it takes long
constexpr std::int64_t kGatherRest = 10;  // times what the last one took
constexpr std::int64_t kClockOffMs = 10 * 60'000;

}  // namespace

ServePlace::ServePlace(pack::Classroom classroom, Parts parts)
    : classroom_(std::move(classroom)),
      parts_(std::move(parts)),
      gathered_(parts_.aside, parts_.wake),
      made_code_(parts_.aside, parts_.wake) {}

ServePlace::~ServePlace() {
    made_code_.wait();
    gathered_.wait();
}

void ServePlace::start() {
    problems_.clear();
    ServingOptions options;
    options.page = parts_.page;
    options.server = parts_.server;
    std::error_code error;
    if (!parts_.own.empty() && std::filesystem::exists(parts_.own / "certificate.pem", error)) {
        options.certificate = parts_.own / "certificate.pem";
        options.key = parts_.own / "key.pem";
    }
    auto started =
        Serving::start(classroom_, std::move(options),
                       {parts_.clock,
                        parts_.entropy,
                        {},
                        parts_.addresses ? parts_.addresses() : std::vector<std::string>()});
    problems_ = started.problems();
    if (!started.ok()) return;
    serving_ = std::move(started.value());
    handed_in_ = 0;
    refused_count_ = 0;
    refused_last_.reset();
    removed_.clear();
    askCode();
    look(parts_.clock.unixMillis());
}

void ServePlace::stop() {
    made_code_.wait();
    serving_.reset();
    // What was handed in at the very end is gathered too.
    code_.reset();
    qr_.reset();
    qr_of_.clear();
    tablets_.clear();
    problems_.clear();
    making_ = false;
    gather(parts_.clock.unixMillis());
}

void ServePlace::askCode() {
    if (!serving_ || making_) return;
    making_ = true;
    made_code_.ask([serving = serving_.get()] {
        const auto code = serving->reception().openCode();
        return code.ok() ? std::vector<Problem>() : code.problems();
    });
}

void ServePlace::remove(const std::string& tablet) {
    if (!serving_) return;
    const auto done = serving_->reception().remove(tablet);
    problems_ = done.problems();
    if (done.ok()) removed_ = tablet;
    look(parts_.clock.unixMillis());
}

void ServePlace::letBack() {
    if (!serving_ || removed_.empty()) return;
    const auto done = serving_->reception().letBack(removed_);
    problems_ = done.problems();
    if (done.ok()) removed_.clear();
    look(parts_.clock.unixMillis());
}

void ServePlace::look(std::int64_t now_ms) {
    looked_ms_ = now_ms;
    if (!serving_) return;
    const Reception& reception = serving_->reception();
    tablets_ = reception.tablets();
    code_ = reception.code();
    const std::string wanted = code_ ? serving_->addressWith(code_->code) : serving_->address();
    if (wanted != qr_of_) {
        qr_of_ = wanted;
        qr_ = qrCodeOf(wanted);
    }
    refused_count_ = reception.refusals().count();
    const auto refused = reception.refusals().newest();
    if (!refused.empty()) refused_last_ = refused.front();
    if (auto problems = reception.problems(); !problems.empty()) problems_ = std::move(problems);
    const std::uint64_t handed_in = reception.handedIn();
    if (handed_in != handed_in_ && now_ms >= gather_again_ms_ && !gathered_.isBusy()) {
        handed_in_ = handed_in;
        gather(now_ms);
    }
}

void ServePlace::gather(std::int64_t now_ms) {
    if (!parts_.open_class) return;
    gather_again_ms_ = now_ms + kGatherMs;
    gathered_.ask([open = parts_.open_class, folder = classroom_.folder, &clock = parts_.clock] {
        const std::int64_t began = clock.unixMillis();
        auto made = std::make_shared<Gathered>();
        made->opened = open(folder);
        made->took_ms = clock.unixMillis() - began;
        return made;
    });
}

void ServePlace::step(std::int64_t now_ms) {
    if (auto problems = made_code_.take()) {
        making_ = false;
        if (!problems->empty()) problems_ = std::move(*problems);
        look(now_ms);
    }
    if (now_ms - looked_ms_ >= kLookMs || now_ms < looked_ms_) look(now_ms);
    if (auto gathered = gathered_.take()) {
        gather_again_ms_ = now_ms + std::max(kGatherMs, kGatherRest * std::max<std::int64_t>(
                                                                          0, (*gathered)->took_ms));
        class_ = std::move((*gathered)->opened);
    }
}

std::optional<std::int64_t> ServePlace::due() const {
    if (!serving_) return std::nullopt;
    return looked_ms_ + kLookMs;
}

std::string ServePlace::address() const {
    if (!serving_) return {};
    std::string address = serving_->address();
    address.pop_back();  // nobody types the last stroke
    return address;
}

std::optional<OpenedClass> ServePlace::takeClass() {
    return std::exchange(class_, std::nullopt);
}

std::string stateInWords(const SeenTablet& tablet, std::int64_t now_ms) {
    constexpr std::int64_t kMinuteMs = 60'000;
    switch (tablet.state) {
        case SeenTablet::State::playing:
            return "playing";
        case SeenTablet::State::waiting:
            return "waiting";
        case SeenTablet::State::away:
            break;
    }
    if (tablet.seen_ms == 0) return "has not come yet";
    const std::int64_t minutes = std::max<std::int64_t>(1, (now_ms - tablet.seen_ms) / kMinuteMs);
    if (minutes < 60) return "not seen for " + wording::counted(minutes, "minute");
    if (minutes < 48 * 60) return "not seen for " + wording::counted(minutes / 60, "hour");
    return "not seen for " + wording::counted(minutes / (24 * 60), "day");
}

std::string clockInWords(const SeenTablet& tablet) {
    const bool is_ahead = tablet.clock_off_ms > 0;
    const std::int64_t off = is_ahead ? tablet.clock_off_ms : -tablet.clock_off_ms;
    if (off < kClockOffMs) return {};
    const std::int64_t minutes = off / 60'000;
    const std::string how = minutes < 120       ? wording::counted(minutes, "minute")
                            : minutes < 48 * 60 ? wording::counted(minutes / 60, "hour")
                                                : wording::counted(minutes / (24 * 60), "day");
    return "its clock is " + how + (is_ahead ? " ahead" : " behind");
}

}  // namespace wrenlet::desk
