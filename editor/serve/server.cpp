#include "editor/serve/server.hpp"

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <optional>
#include <utility>
#include <vector>

#include <microhttpd.h>

#include "content/link/over_http.hpp"
#include "content/link/talk.hpp"
#include "editor/serve/connections.hpp"
#include "editor/serve/sockets.hpp"

namespace wrenlet::desk {

namespace {

using Clock = std::chrono::steady_clock;
using link::Status;

constexpr std::size_t kHeaderBytes = 16 * 1024;  // of a connection; its question's head is in them

/// What is known of a question while it comes in.
struct Asked {
    enum class Kind : std::uint8_t { page, offer, join, talk };
    Kind kind = Kind::page;
    std::string path, body;
    bool is_too_long = false;
};

std::string addressOf(MHD_Connection* connection) {
    const auto* info = MHD_get_connection_info(connection, MHD_CONNECTION_INFO_CLIENT_ADDRESS);
    return addressText(info != nullptr ? info->client_addr : nullptr);
}

std::optional<int> socketOf(MHD_Connection* connection) {
    const auto* info = MHD_get_connection_info(connection, MHD_CONNECTION_INFO_CONNECTION_FD);
    if (info == nullptr) return std::nullopt;
    return static_cast<int>(info->connect_fd);
}

std::string header(MHD_Connection* connection, const char* name) {
    const char* value = MHD_lookup_connection_value(connection, MHD_HEADER_KIND, name);
    return value != nullptr ? value : "";
}

/// What a browser may do with what is served: run what comes from here, and nothing else. Older
/// Safaris know no other word than 'unsafe-eval' for WebAssembly.
void addRules(MHD_Response* response) {
    MHD_add_response_header(response, "X-Content-Type-Options", "nosniff");
    MHD_add_response_header(response, "Referrer-Policy", "no-referrer");
    MHD_add_response_header(response, "X-Frame-Options", "DENY");
    MHD_add_response_header(
        response, "Content-Security-Policy",
        "default-src 'self'; script-src 'self' 'unsafe-inline' "
        "'wasm-unsafe-eval' 'unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self' "
        "data: blob:; media-src 'self' blob:; connect-src 'self' blob: data:; "
        "worker-src 'self'; object-src 'none'; base-uri 'none'; form-action "
        "'none'; frame-ancestors 'none'");
}

/// `bytes` are copied unless they stay until the server has gone.
MHD_Response* responseOf(std::string_view bytes, bool they_stay) {
    // The library does not write into them, whatever its parameter's type says.
    return MHD_create_response_from_buffer(
        bytes.size(), const_cast<char*>(bytes.data()),
        they_stay ? MHD_RESPMEM_PERSISTENT : MHD_RESPMEM_MUST_COPY);
}

/// A name in a log: what may come from anybody, short and without signs that are not seen.
std::string tidy(std::string_view text) {
    constexpr std::size_t kMost = 60;
    std::string out;
    for (const char c : text.substr(0, kMost))
        out +=
            static_cast<unsigned char>(c) >= 0x20 && static_cast<unsigned char>(c) < 0x7f ? c : '?';
    return text.size() > kMost ? out + "\u2026" : out;
}

/// What browsers ask for by themselves is no attack.
bool isCustomary(std::string_view path) {
    return path == "/favicon.ico" || path == "/robots.txt" ||
           path.substr(0, 17) == "/apple-touch-icon" || path.substr(0, 13) == "/.well-known/";
}

}  // namespace

struct Server::State {
    State(const PageFiles& page_served, Reception& with, ServerOptions set)
        : page(page_served), reception(with), options(std::move(set)) {}

    const PageFiles& page;
    Reception& reception;
    ServerOptions options;
    Connections connections;
    MHD_Daemon* daemon = nullptr;

    MHD_Result begin(MHD_Connection* connection, std::string_view path, std::string_view method,
                     void** memory);
    MHD_Result whole(MHD_Connection* connection, Asked& asked);
    MHD_Result sendPage(MHD_Connection* connection, const std::string& path);
    MHD_Result send(MHD_Connection* connection, const Reply& reply);
    MHD_Result queue(MHD_Connection* connection, Status status, MHD_Response* response);
};

MHD_Result Server::State::queue(MHD_Connection* connection, Status status, MHD_Response* response) {
    if (response == nullptr) return MHD_NO;
    addRules(response);
    if (const auto socket = socketOf(connection)) connections.answering(*socket, Clock::now());
    const MHD_Result queued =
        MHD_queue_response(connection, static_cast<unsigned>(status), response);
    MHD_destroy_response(response);
    return queued;
}

MHD_Result Server::State::send(MHD_Connection* connection, const Reply& reply) {
    MHD_Response* const response = responseOf(reply.body, false);
    if (response == nullptr) return MHD_NO;
    MHD_add_response_header(response, "Content-Type", "application/octet-stream");
    MHD_add_response_header(response, "Cache-Control", "no-store");
    if (reply.wait_s > 0)
        MHD_add_response_header(response, "Retry-After", std::to_string(reply.wait_s).c_str());
    return queue(connection, reply.status, response);
}

MHD_Result Server::State::sendPage(MHD_Connection* connection, const std::string& path) {
    const PageFile* const file = page.at(path);
    if (file == nullptr) {
        if (!isCustomary(path))
            reception.refused(addressOf(connection), "a path that is not here: " + tidy(path),
                              Refusals::Weight::none);
        return send(connection, {Status::not_here, {}, 0});
    }
    if (header(connection, "If-None-Match") == '"' + file->tag + '"') {
        MHD_Response* const same = responseOf({}, true);
        if (same == nullptr) return MHD_NO;
        return queue(connection, static_cast<Status>(MHD_HTTP_NOT_MODIFIED), same);
    }
    const std::string takes = header(connection, "Accept-Encoding");
    const bool brotli = !file->brotli.empty() && takes.find("br") != takes.npos;
    const bool gzip = !brotli && !file->gzip.empty() && takes.find("gzip") != takes.npos;
    MHD_Response* const response = responseOf(brotli ? file->brotli
                                              : gzip ? file->gzip
                                                     : file->bytes,
                                              true);
    if (response == nullptr) return MHD_NO;
    MHD_add_response_header(response, "Content-Type", file->type.c_str());
    MHD_add_response_header(response, "ETag", ('"' + file->tag + '"').c_str());
    MHD_add_response_header(response, "Cache-Control", "no-cache");
    MHD_add_response_header(response, "Vary", "Accept-Encoding");
    if (brotli) MHD_add_response_header(response, "Content-Encoding", "br");
    if (gzip) MHD_add_response_header(response, "Content-Encoding", "gzip");
    return queue(connection, Status::well, response);
}

MHD_Result Server::State::begin(MHD_Connection* connection, std::string_view path,
                                std::string_view method, void** memory) {
    const bool is_get = method == MHD_HTTP_METHOD_GET || method == MHD_HTTP_METHOD_HEAD;
    const bool is_post = method == MHD_HTTP_METHOD_POST;
    Asked asked;
    asked.path = path;
    if (is_get)
        asked.kind = path == link::kJoinPath ? Asked::Kind::offer : Asked::Kind::page;
    else if (is_post && path == link::kJoinPath)
        asked.kind = Asked::Kind::join;
    else if (is_post && path == link::kTalkPath)
        asked.kind = Asked::Kind::talk;
    else {
        reception.refused(addressOf(connection), "a question of a kind that is not answered: " +
                                                     tidy(method) + " " + tidy(path));
        return send(connection, {Status::not_here, {}, 0});
    }
    const std::string length = header(connection, "Content-Length");
    if (std::strtoull(length.c_str(), nullptr, 10) > link::kMostTalkBytes) {
        reception.refused(addressOf(connection), "a message that is too long");
        return send(connection, {Status::too_long, {}, 0});
    }
    *memory = new Asked(std::move(asked));  // given back in completed()
    return MHD_YES;
}

MHD_Result Server::State::whole(MHD_Connection* connection, Asked& asked) {
    if (asked.is_too_long) {
        reception.refused(addressOf(connection), "a message that is too long");
        return send(connection, {Status::too_long, {}, 0});
    }
    switch (asked.kind) {
        case Asked::Kind::offer:
            return send(connection, reception.offer());
        case Asked::Kind::join:
            return send(connection, reception.join(addressOf(connection), asked.body));
        case Asked::Kind::talk:
            return send(connection, reception.talk(addressOf(connection), asked.body));
        case Asked::Kind::page:
            break;
    }
    return sendPage(connection, asked.path);
}

namespace {

// What the library calls: C functions that find their server again.
/// A path is looked up as it was sent: none of the page's has anything to unescape.
std::size_t asItIs(void*, MHD_Connection*, char* text) {
    return std::strlen(text);
}

MHD_Result handle(void* self, MHD_Connection* connection, const char* url, const char* method,
                  const char*, const char* upload, std::size_t* upload_size, void** memory) {
    auto& state = *static_cast<Server::State*>(self);
    if (*memory == nullptr) return state.begin(connection, url, method, memory);
    auto& asked = *static_cast<Asked*>(*memory);
    if (*upload_size == 0) return state.whole(connection, asked);
    if (asked.body.size() + *upload_size > link::kMostTalkBytes ||
        asked.kind == Asked::Kind::page || asked.kind == Asked::Kind::offer) {
        asked.is_too_long = true;
        asked.body.clear();
    } else if (!asked.is_too_long) {
        asked.body.append(upload, *upload_size);
    }
    *upload_size = 0;
    return MHD_YES;
}

void completed(void* self, MHD_Connection* connection, void** memory, MHD_RequestTerminationCode) {
    auto& state = *static_cast<Server::State*>(self);
    delete static_cast<Asked*>(*memory);
    *memory = nullptr;
    if (const auto socket = socketOf(connection)) state.connections.answered(*socket, Clock::now());
}

void connected(void* self, MHD_Connection* connection, void**,
               MHD_ConnectionNotificationCode what) {
    auto& state = *static_cast<Server::State*>(self);
    const auto socket = socketOf(connection);
    if (!socket) return;
    if (what == MHD_CONNECTION_NOTIFY_STARTED)
        state.connections.opened(*socket, addressOf(connection), Clock::now());
    else
        state.connections.closed(*socket);
}

}  // namespace

Result<std::unique_ptr<Server>> Server::start(const PageFiles& page, Reception& reception,
                                              ServerOptions options) {
    auto state = std::make_unique<State>(page, reception, std::move(options));
    const ServerOptions& set = state->options;
    const bool is_secure = !set.certificate.empty();
    if (is_secure && MHD_is_feature_supported(MHD_FEATURE_TLS) != MHD_YES)
        return Problem{"The tablets' network", "This desk was built without https.",
                       "Serve without a certificate, or build it with a libmicrohttpd that has TLS."};
    std::vector<MHD_OptionItem> items{
        {MHD_OPTION_NOTIFY_COMPLETED, reinterpret_cast<intptr_t>(&completed), state.get()},
        {MHD_OPTION_UNESCAPE_CALLBACK, reinterpret_cast<intptr_t>(&asItIs), nullptr},
        {MHD_OPTION_NOTIFY_CONNECTION, reinterpret_cast<intptr_t>(&connected), state.get()},
        {MHD_OPTION_CONNECTION_MEMORY_LIMIT, static_cast<intptr_t>(2 * kHeaderBytes), nullptr},
        {MHD_OPTION_CONNECTION_LIMIT, set.most_connections, nullptr},
        {MHD_OPTION_PER_IP_CONNECTION_LIMIT, set.most_from_one_address, nullptr},
        {MHD_OPTION_CONNECTION_TIMEOUT, set.idle_s, nullptr},
        {MHD_OPTION_THREAD_POOL_SIZE, set.threads, nullptr},
        {MHD_OPTION_STRICT_FOR_CLIENT, 1, nullptr}};
    if (is_secure) {
        items.push_back({MHD_OPTION_HTTPS_MEM_KEY, 0, const_cast<char*>(set.key.c_str())});
        items.push_back({MHD_OPTION_HTTPS_MEM_CERT, 0, const_cast<char*>(set.certificate.c_str())});
    }
    items.push_back({MHD_OPTION_END, 0, nullptr});
    unsigned flags = MHD_USE_AUTO_INTERNAL_THREAD;
    if (is_secure) flags |= MHD_USE_TLS;
    state->daemon = MHD_start_daemon(flags, set.port, nullptr, nullptr, &handle, state.get(),
                                     MHD_OPTION_ARRAY, items.data(), MHD_OPTION_END);
    if (state->daemon == nullptr) {
        const std::string port = std::to_string(set.port);
        if (is_secure)
            return Problem{
                "The tablets' network",
                "Nothing can be served with this certificate and key at port " + port + ".",
                "See that both are PEM files that belong together, and that the port "
                "is free."};
        return Problem{"The tablets' network",
                       "Port " + port + " of this computer is in use by something else.",
                       "Choose another port, or stop the other Wrenlet desk that serves."};
    }
    return std::make_unique<Server>(std::move(state));
}

Server::Server(std::unique_ptr<State> state) : state_(std::move(state)) {}

Server::~Server() {
    MHD_stop_daemon(state_->daemon);
}

std::uint16_t Server::port() const {
    const auto* info = MHD_get_daemon_info(state_->daemon, MHD_DAEMON_INFO_BIND_PORT);
    return info != nullptr ? info->port : 0;
}

bool Server::isSecure() const {
    return !state_->options.certificate.empty();
}

void Server::closeSlow() {
    const ServerOptions& set = state_->options;
    for (const std::string& from :
         state_->connections.endSlow(std::chrono::seconds(set.asking_s),
                                     std::chrono::seconds(set.answering_s), Clock::now()))
        state_->reception.refused(from, "a question that took too long to come");
}

}  // namespace wrenlet::desk
