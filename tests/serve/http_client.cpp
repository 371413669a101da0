#include "tests/serve/http_client.hpp"

#ifndef _WIN32
#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>
#else
#include <winsock2.h>
#include <ws2tcpip.h>
#define poll WSAPoll
#endif

#include <cstdlib>

namespace wrenlet::desk::samples {
namespace {

#ifndef _WIN32
using Socket = int;
constexpr int kNoSignal = MSG_NOSIGNAL;
void end(Socket socket) {
    ::close(socket);
}
#else
using Socket = SOCKET;
constexpr int kNoSignal = 0;
void end(Socket socket) {
    closesocket(socket);
}
#endif

sockaddr_in addressOf(const std::string& host, std::uint16_t port) {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    inet_pton(AF_INET, host.c_str(), &address.sin_addr);
    return address;
}

bool canRead(int socket, int ms) {
    pollfd watched{static_cast<Socket>(socket), POLLIN, 0};
    return poll(&watched, 1, ms) > 0;
}

}  // namespace

HttpClient::HttpClient(std::uint16_t port, std::string from)
    : port_(port), from_(std::move(from)) {}

HttpClient::~HttpClient() {
    close();
}

bool HttpClient::connect() {
    close();
    socket_ = static_cast<int>(::socket(AF_INET, SOCK_STREAM, 0));
    const int on = 1;
    setsockopt(socket_, IPPROTO_TCP, TCP_NODELAY, reinterpret_cast<const char*>(&on), sizeof on);
    const sockaddr_in own = addressOf(from_, 0), desk = addressOf("127.0.0.1", port_);
    if (bind(socket_, reinterpret_cast<const sockaddr*>(&own), sizeof own) == 0 &&
        ::connect(socket_, reinterpret_cast<const sockaddr*>(&desk), sizeof desk) == 0)
        return true;
    close();
    return false;
}

void HttpClient::close() {
    if (socket_ >= 0) end(static_cast<Socket>(socket_));
    socket_ = -1;
    kept_.clear();
}

bool HttpClient::write(std::string_view bytes) {
    while (!bytes.empty()) {
        const auto sent = send(socket_, bytes.data(), bytes.size(), kNoSignal);
        if (sent <= 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
    return true;
}

std::optional<HttpAnswer> HttpClient::read(int most_ms, bool has_body) {
    std::size_t wanted = 0;
    for (;;) {
        const std::size_t end = kept_.find("\r\n\r\n");
        if (end != kept_.npos && wanted == 0) {
            const std::size_t at = kept_.find("Content-Length: ");
            const std::size_t length =
                has_body && at < end ? std::strtoull(kept_.c_str() + at + 16, nullptr, 10) : 0;
            wanted = end + 4 + length;
        }
        if (wanted > 0 && kept_.size() >= wanted) {
            HttpAnswer answer;
            answer.status = std::atoi(kept_.c_str() + 9);  // behind "HTTP/1.1 "
            answer.head = kept_.substr(0, end);
            answer.body = kept_.substr(end + 4, wanted - end - 4);
            kept_.erase(0, wanted);
            return answer;
        }
        char bytes[16384];
        if (!canRead(socket_, most_ms)) return std::nullopt;
        const auto got = recv(socket_, bytes, sizeof bytes, 0);
        if (got <= 0) return std::nullopt;
        kept_.append(bytes, static_cast<std::size_t>(got));
    }
}

std::optional<HttpAnswer> HttpClient::ask(std::string_view method, std::string_view path,
                                          std::string_view body, std::string_view headers) {
    std::string question = std::string(method) + " " + std::string(path) +
                           " HTTP/1.1\r\nHost: desk\r\n" + std::string(headers);
    if (method == "POST") question += "Content-Length: " + std::to_string(body.size()) + "\r\n";
    question += "\r\n" + std::string(body);
    for (int time = 0; time < 2; ++time) {
        if (socket_ < 0 && !connect()) return std::nullopt;
        (void)write(question);  // an answer may come before all of it was taken
        if (auto answer = read(5000, method != "HEAD")) {
            if (answer->head.find("Connection: close") != answer->head.npos) close();
            return answer;
        }
        close();
    }
    return std::nullopt;
}

bool HttpClient::isClosedWithin(int ms) {
    char byte = 0;
    return canRead(socket_, ms) && recv(socket_, &byte, 1, MSG_PEEK) <= 0;
}

}  // namespace wrenlet::desk::samples
