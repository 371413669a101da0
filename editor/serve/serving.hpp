// Serving a classroom to tablets on its network: page, reception and server together, kept going on
// a thread of their own from start to stop. The window and the command `serve` both hold one.
#pragma once

#include <condition_variable>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "content/common/clock.hpp"
#include "editor/serve/reception.hpp"
#include "editor/serve/server.hpp"

namespace wrenlet::desk {

struct ServingOptions {
    std::filesystem::path page;              // folder of the page's files
    std::filesystem::path certificate, key;  // PEM files; both or neither
    ServerOptions server = {};
};

class Serving {
  public:
    struct Parts {
        const Clock& clock;
        link::Entropy& entropy;
        std::function<void()> changed = {};       // on any thread
        std::vector<std::string> addresses = {};  // of this computer; see ownAddresses()
    };
    /// Errors, in a teacher's words: no page yet, the port is taken, the list of tablets cannot be
    /// read, another desk serves this classroom.
    static Result<std::unique_ptr<Serving>> start(const pack::Classroom& classroom,
                                                  ServingOptions options, Parts parts);
    /// Stops the server, then hands in what is left.
    ~Serving();

    Reception& reception() { return *reception_; }
    const Reception& reception() const { return *reception_; }
    std::uint16_t port() const { return server_->port(); }
    bool isSecure() const { return server_->isSecure(); }

    /// "http://192.168.1.20:8080/"; this computer's own when it is on no network.
    std::string address() const;
    bool isOnANetwork() const { return !addresses_.empty(); }
    /// What the QR code holds: the address with the code behind "#", which a browser never sends.
    std::string addressWith(std::string_view code) const {
        return address() + "#" + std::string(code);
    }

  private:
    Serving() = default;
    void keepGoing();

    const Clock* clock_ = nullptr;
    PageFiles page_;
    std::vector<std::string> addresses_;
    std::unique_ptr<Reception> reception_;
    std::unique_ptr<Server> server_;
    std::mutex mutex_;
    std::condition_variable wake_;
    bool stopping_ = false;
    std::thread keeper_;
};

}  // namespace wrenlet::desk
