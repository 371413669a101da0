// How a tablet joins: it shows that it knows the code on the desk's screen, and is handed a name
// and a key that nobody else on the network learns. X25519 (RFC 7748) makes a key that a listener
// does not have; both public keys are vouched for under a key that Argon2id (RFC 9106) makes of the
// code, so that whoever stands between would have to find the code while it lives.
//
//   desk → tablet    offer      version, salt of this code
//   tablet → desk    request    version, its public key, that key vouched for
//   desk → tablet    answer     version, the desk's public key, both vouched for, and sealed with
//                               what the two now share: the tablet's name and key
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "content/link/bytes.hpp"

namespace wrenlet::link {

inline constexpr std::size_t kOfferBytes = 1 + 16, kRequestBytes = 1 + 32 + 32;
inline constexpr std::size_t kMostJoinAnswerBytes = 400;

/// The tablet's side, for one code.
class JoiningTablet {
  public:
    /// `code` as codeFromTyped() gives it. Takes some tenths of a second and 64 MiB, on purpose: so
    /// does each guess. Nothing when the offer is none of this version, or there is no such memory.
    static std::optional<JoiningTablet> begin(std::string_view code, std::string_view offer,
                                              Entropy& entropy);

    /// The same bytes each time: when the network took the answer away, ask again.
    const std::string& request() const { return request_; }

    /// Nothing when the answer is not from a desk that knows the code, or not to this request.
    std::optional<TabletIdentity> finish(std::string_view answer) const;

  private:
    JoiningTablet() = default;
    Key vouching_{}, secret_{};
    PublicKey public_{};
    Salt salt_{};
    std::string request_;
};

enum class JoinRefusal : std::uint8_t {
    no_request,  // not the bytes of one
    closed,      // the code is used up, too old, or was guessed at too often
    too_soon,    // after a wrong code the next one is not looked at for a while
    wrong_code,
};

struct Joined {
    std::string answer;
    bool again = false;  // this request was answered before, with this answer: nothing is new
};

/// The desk's side: one code, good for one tablet.
class JoinDoor {
  public:
    static constexpr std::int64_t kLivesMs = 5 * 60 * 1000;
    static constexpr int kMostWrong = 5;
    static constexpr std::int64_t kFirstWaitMs = 1000;  // after a wrong code; doubled by each more

    /// Takes the time and memory of one guess; nothing when there is no such memory.
    static std::optional<JoinDoor> open(std::string_view code, std::int64_t now_ms,
                                        Entropy& entropy);

    const std::string& code() const { return code_; }
    std::string offer() const;
    bool isOpen(std::int64_t now_ms) const;
    int wrong() const { return wrong_; }
    std::int64_t closesAt() const { return opened_ms_ + kLivesMs; }

    /// `identity` is what the tablet is to be given if it knows the code; it must be kept before
    /// the answer is sent. A request that was answered is answered alike while the code would live.
    std::variant<Joined, JoinRefusal> answer(std::string_view request, std::int64_t now_ms,
                                             const TabletIdentity& identity, Entropy& entropy);

  private:
    JoinDoor() = default;
    std::string code_;
    Key vouching_{};
    Salt salt_{};
    std::int64_t opened_ms_ = 0, next_look_ms_ = 0;
    int wrong_ = 0;
    std::string answered_, answer_;  // the request that was right, and what it was told
};

}  // namespace wrenlet::link
