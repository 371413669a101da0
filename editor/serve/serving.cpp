#include "editor/serve/serving.hpp"

#include <utility>

#include "content/common/files.hpp"

namespace wrenlet::desk {

namespace {

constexpr auto kStep = std::chrono::milliseconds(100);
constexpr std::uint64_t kMostPemBytes = 1 << 20;

}  // namespace

Result<std::unique_ptr<Serving>> Serving::start(const pack::Classroom& classroom,
                                                ServingOptions options, Parts parts) {
    const auto list = pack::openClassList(classroom);
    if (!list.ok()) return list.problems();
    auto page = PageFiles::read(options.page);
    if (!page.ok()) return page.problems();
    if (options.certificate.empty() != options.key.empty())
        return Problem{"The school's certificate", "A certificate and its key go together.",
                       "Name both files, or neither."};
    if (!options.certificate.empty()) {
        for (const auto& [from, to] : {std::pair{options.certificate, &options.server.certificate},
                                       std::pair{options.key, &options.server.key}}) {
            auto pem = readWhole(from, kMostPemBytes);
            if (!pem.ok()) return pem.problems();
            *to = std::move(pem.value());
        }
    }
    std::unique_ptr<Serving> serving(new Serving());
    serving->clock_ = &parts.clock;
    serving->page_ = std::move(page.value());
    serving->addresses_ = std::move(parts.addresses);
    auto reception = Reception::open(classroom, {parts.clock, parts.entropy, parts.changed});
    if (!reception.ok()) return reception.problems();
    serving->reception_ = std::move(reception.value());
    auto server = Server::start(serving->page_, *serving->reception_, std::move(options.server));
    if (!server.ok()) return server.problems();
    serving->server_ = std::move(server.value());
    serving->keeper_ = std::thread([raw = serving.get()] { raw->keepGoing(); });
    return serving;
}

Serving::~Serving() {
    {
        const std::lock_guard lock(mutex_);
        stopping_ = true;
    }
    wake_.notify_all();
    if (keeper_.joinable()) keeper_.join();
    server_.reset();
    reception_.reset();
}

// Handing in writes to the disk that tablets' answers wait for, so a rest follows each.
void Serving::keepGoing() {
    constexpr int kRestSteps = 4;
    int rest = 0;
    std::unique_lock lock(mutex_);
    while (!stopping_) {
        lock.unlock();
        server_->closeSlow();
        if (rest > 0)
            --rest;
        else if (reception_->handInOne(clock_->unixMillis()))
            rest = kRestSteps;
        lock.lock();
        wake_.wait_for(lock, kStep, [this] { return stopping_; });
    }
}

std::string Serving::address() const {
    const std::string host = addresses_.empty() ? "127.0.0.1" : addresses_.front();
    return std::string(isSecure() ? "https" : "http") + "://" + host + ":" +
           std::to_string(port()) + "/";
}

}  // namespace wrenlet::desk
