// A tablet as its page speaks to the desk, over a real socket and without a browser: it joins, says
// hello, fetches the pack and sends responses, and keeps what it was not told is kept.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "content/link/message.hpp"
#include "tests/link/seeded_entropy.hpp"
#include "tests/serve/http_client.hpp"

namespace wrenlet::desk::samples {

class PageTablet {
  public:
    PageTablet(std::uint16_t port, std::string from, std::uint64_t seed);

    bool join(const std::string& code);
    /// One that joined before.
    void is(const link::TabletIdentity& identity) { identity_ = identity; }
    const link::TabletIdentity& identity() const { return identity_; }

    /// Nothing when the desk cannot be reached or refuses. Goes on above the number that a desk
    /// says it is behind.
    std::optional<link::Answer> say(const link::Ask& ask);
    bool hello(bool playing = false);
    const link::Welcome& welcome() const { return welcome_; }
    /// The class's pack, its hash looked at; nothing when it does not come whole.
    std::optional<std::string> fetchPack();

    /// An answer of a child, into the outbox.
    void answers(const practice::Response& response);
    /// Sends what is in the outbox; true when all of it was let go.
    bool sendAll();
    const std::vector<practice::Response>& outbox() const { return outbox_; }
    std::int64_t sequence() const { return sequence_; }

    // For those who do it badly.
    std::string nextMessage(const link::Ask& ask);  // sealed, and not sent
    HttpClient& http() { return *http_; }
    void movedTo(std::uint16_t port);  // the desk was started anew

    std::int64_t clock_ms = 1'790'000'000'000;

  private:
    std::optional<HttpClient> http_;
    std::string from_;
    link::samples::SeededEntropy entropy_;
    link::TabletIdentity identity_;
    std::uint64_t number_ = 0;
    link::Welcome welcome_;
    std::vector<practice::Response> outbox_;
    std::int64_t sequence_ = 0;
    std::string pack_;
};

}  // namespace wrenlet::desk::samples
