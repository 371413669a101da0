// A client that speaks HTTP over a real socket, well or badly, from an address of its own on this
// computer: what tests and the benchmark of serving stand in for tablets and attackers with.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace wrenlet::desk::samples {

struct HttpAnswer {
    int status = 0;
    std::string head, body;
};

class HttpClient {
  public:
    /// `from` is any of 127.0.0.0/8, all of which are this computer on Linux.
    HttpClient(std::uint16_t port, std::string from = "127.0.0.1");
    ~HttpClient();
    HttpClient(const HttpClient&) = delete;
    HttpClient& operator=(const HttpClient&) = delete;

    /// Keeps its connection, and makes another when it was closed. Nothing: the server did not
    /// answer within five seconds.
    std::optional<HttpAnswer> ask(std::string_view method, std::string_view path,
                                  std::string_view body = {}, std::string_view headers = {});

    bool connect();
    void close();
    /// False when the server closed the connection.
    bool write(std::string_view bytes);
    /// What is between the connection's next bytes and an answer's end.
    std::optional<HttpAnswer> read(int most_ms = 5000, bool has_body = true);
    /// True iff the server has closed the connection, or does so within that time.
    bool isClosedWithin(int ms);

  private:
    std::uint16_t port_;
    std::string from_;
    int socket_ = -1;
    std::string kept_;  // read and not yet asked for
};

}  // namespace wrenlet::desk::samples
