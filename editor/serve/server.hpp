// The web server on the classroom's network, over libmicrohttpd: the page's files by GET, the link
// by /join and /talk, and nothing else. Sizes, times and connections are bounded, all together and
// for one address.
#pragma once

#include <cstdint>
#include <memory>
#include <string>

#include "content/common/result.hpp"
#include "editor/serve/page_files.hpp"
#include "editor/serve/reception.hpp"

namespace wrenlet::desk {

struct ServerOptions {
    std::uint16_t port = 8080;     // 0: any that is free
    std::string certificate, key;  // PEM texts; both or neither: then over TLS
    int threads = 2;
    int most_connections = 400;
    int most_from_one_address = 16;
    int idle_s = 10;        // a connection on which nothing comes; below asking_s
    int asking_s = 20;      // from its beginning, or the last answer, to a whole question
    int answering_s = 300;  // until the answer is taken
};

class Server {
  public:
    /// Listens on every address of this computer. `page` and `reception` outlive it. Errors: the
    /// port is taken, a certificate that cannot be read.
    static Result<std::unique_ptr<Server>> start(const PageFiles& page, Reception& reception,
                                                 ServerOptions options);
    /// Stops listening and closes what is open.
    ~Server();

    std::uint16_t port() const;
    bool isSecure() const;
    /// Closes connections that take too long over their question; to be called every second or so.
    void closeSlow();

    struct State;
    explicit Server(std::unique_ptr<State> state);

  private:
    std::unique_ptr<State> state_;
};

}  // namespace wrenlet::desk
