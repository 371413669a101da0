#include "content/link/join.hpp"

#include <algorithm>
#include <initializer_list>

#include <sodium.h>

#include "content/link/sealed.hpp"
#include "content/practice/response_row.hpp"

namespace wrenlet::link {
namespace {

static_assert(sizeof(Salt) == crypto_pwhash_SALTBYTES);
static_assert(sizeof(Key) == crypto_scalarmult_SCALARBYTES);

constexpr char kVersionSign = static_cast<char>(kVersion);

template <std::size_t N>
std::string_view view(const std::array<std::uint8_t, N>& bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), N};
}

template <std::size_t N>
std::array<std::uint8_t, N> take(std::string_view bytes, std::size_t at) {
    std::array<std::uint8_t, N> taken{};
    std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), N, taken.begin());
    return taken;
}

/// Argon2id with libsodium's limits for someone who waits.
std::optional<Key> vouchingKey(std::string_view code, const Salt& salt) {
    Key key{};
    if (sodium_init() < 0 ||
        crypto_pwhash(key.data(), key.size(), code.data(), code.size(), salt.data(),
                      crypto_pwhash_OPSLIMIT_INTERACTIVE, crypto_pwhash_MEMLIMIT_INTERACTIVE,
                      crypto_pwhash_ALG_ARGON2ID13) != 0)
        return std::nullopt;
    return key;
}

/// Keyed BLAKE2b of what it is for and of parts whose lengths never change.
Key keyed(const Key& key, std::string_view what_for,
          std::initializer_list<std::string_view> parts) {
    Key out{};
    crypto_generichash_state state;
    crypto_generichash_init(&state, key.data(), key.size(), out.size());
    const auto add = [&](std::string_view bytes) {
        crypto_generichash_update(&state, reinterpret_cast<const unsigned char*>(bytes.data()),
                                  bytes.size());
    };
    add(what_for);
    for (const std::string_view part : parts) add(part);
    crypto_generichash_final(&state, out.data(), out.size());
    return out;
}

constexpr std::string_view kByTablet = "wrenlet 1 join: the tablet ";
constexpr std::string_view kByDesk = "wrenlet 1 join: the desk   ";
constexpr std::string_view kShared = "wrenlet 1 join: they share ";

struct Pair {
    Key secret{};
    PublicKey shown{};
};

Pair makePair(Entropy& entropy) {
    Pair pair;
    entropy.fill(pair.secret);
    crypto_scalarmult_base(pair.shown.data(), pair.secret.data());
    return pair;
}

/// Nothing for a public key that would make the secret known to all.
std::optional<Key> sharedKey(const Key& vouching, const Key& secret, const PublicKey& other,
                             const PublicKey& tablet, const PublicKey& desk, const Salt& salt) {
    Key product{};
    if (crypto_scalarmult(product.data(), secret.data(), other.data()) != 0) return std::nullopt;
    return keyed(vouching, kShared, {view(product), view(tablet), view(desk), view(salt)});
}

std::string written(const TabletIdentity& identity) {
    return std::string(view(identity.key)) + identity.tablet;
}

std::optional<TabletIdentity> identityFrom(std::string_view plain) {
    TabletIdentity identity;
    if (plain.size() < identity.key.size()) return std::nullopt;
    identity.key = take<32>(plain, 0);
    identity.tablet = plain.substr(identity.key.size());
    if (!practice::isTabletName(identity.tablet)) return std::nullopt;
    return identity;
}

bool isVouched(const Key& vouching, std::string_view by,
               std::initializer_list<std::string_view> parts, const Key& claimed) {
    const Key right = keyed(vouching, by, parts);
    return sodium_memcmp(right.data(), claimed.data(), right.size()) == 0;
}

}  // namespace

std::optional<JoiningTablet> JoiningTablet::begin(std::string_view code, std::string_view offer,
                                                  Entropy& entropy) {
    if (offer.size() != kOfferBytes || offer[0] != kVersionSign) return std::nullopt;
    JoiningTablet tablet;
    tablet.salt_ = take<16>(offer, 1);
    const auto vouching = vouchingKey(code, tablet.salt_);
    if (!vouching) return std::nullopt;
    tablet.vouching_ = *vouching;
    const Pair pair = makePair(entropy);
    tablet.secret_ = pair.secret;
    tablet.public_ = pair.shown;
    const Key vouched = keyed(*vouching, kByTablet, {view(tablet.salt_), view(pair.shown)});
    tablet.request_ = kVersionSign;
    tablet.request_ += view(pair.shown);
    tablet.request_ += view(vouched);
    return tablet;
}

std::optional<TabletIdentity> JoiningTablet::finish(std::string_view answer) const {
    constexpr std::size_t kHead = 1 + 32 + 32;
    if (answer.size() < kHead + kSealBytes || answer.size() > kMostJoinAnswerBytes ||
        answer[0] != kVersionSign)
        return std::nullopt;
    const PublicKey desk = take<32>(answer, 1);
    const Key vouched = take<32>(answer, 33);
    if (!isVouched(vouching_, kByDesk, {view(salt_), view(public_), view(desk)}, vouched))
        return std::nullopt;
    const auto shared = sharedKey(vouching_, secret_, desk, public_, desk, salt_);
    if (!shared) return std::nullopt;
    const auto plain = link::open(*shared, answer.substr(0, kHead), answer.substr(kHead));
    if (!plain) return std::nullopt;
    return identityFrom(*plain);
}

std::optional<JoinDoor> JoinDoor::open(std::string_view code, std::int64_t now_ms,
                                       Entropy& entropy) {
    JoinDoor door;
    door.code_ = code;
    door.opened_ms_ = now_ms;
    entropy.fill(door.salt_);
    const auto vouching = vouchingKey(code, door.salt_);
    if (!vouching) return std::nullopt;
    door.vouching_ = *vouching;
    return door;
}

std::string JoinDoor::offer() const {
    return kVersionSign + std::string(view(salt_));
}

bool JoinDoor::isOpen(std::int64_t now_ms) const {
    return answered_.empty() && wrong_ < kMostWrong && now_ms < closesAt();
}

std::variant<Joined, JoinRefusal> JoinDoor::answer(std::string_view request, std::int64_t now_ms,
                                                   const TabletIdentity& identity,
                                                   Entropy& entropy) {
    if (request.size() != kRequestBytes || request[0] != kVersionSign)
        return JoinRefusal::no_request;
    if (!answered_.empty() && request == answered_ && now_ms < closesAt())
        return Joined{answer_, true};
    if (!isOpen(now_ms)) return JoinRefusal::closed;
    if (now_ms < next_look_ms_) return JoinRefusal::too_soon;
    const PublicKey tablet = take<32>(request, 1);
    const Key vouched = take<32>(request, 33);
    const Pair pair = makePair(entropy);
    const auto shared = sharedKey(vouching_, pair.secret, tablet, tablet, pair.shown, salt_);
    if (!isVouched(vouching_, kByTablet, {view(salt_), view(tablet)}, vouched) || !shared) {
        next_look_ms_ = now_ms + (kFirstWaitMs << wrong_);
        ++wrong_;
        return JoinRefusal::wrong_code;
    }
    const Key by_desk = keyed(vouching_, kByDesk, {view(salt_), view(tablet), view(pair.shown)});
    answer_ = kVersionSign;
    answer_ += view(pair.shown);
    answer_ += view(by_desk);
    answer_ += seal(*shared, answer_, written(identity), entropy);
    answered_ = request;
    return Joined{answer_, false};
}

}  // namespace wrenlet::link
