#include "tests/touch/x_server.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <unistd.h>
#include <xf86-input-inputtest-protocol.h>

#include <csignal>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <sstream>

#include "content/common/files.hpp"

namespace wrenlet::touch {

namespace {

constexpr double kAxis = 65'535;  // of the driver, either way
constexpr unsigned kTouchBegin = 18, kTouchUpdate = 19, kTouchEnd = 20;  // of XI2's events
constexpr int kMillisToStart = 30'000, kSecondsToAnswer = 10;

/// No device and no card of this machine is touched. A pointer and a keyboard that nobody moves
/// keep the server from looking for some.
constexpr const char* kConfiguration = R"(Section "ServerFlags"
    Option "AutoAddDevices" "false"
    Option "AutoAddGPU" "false"
    Option "DontVTSwitch" "true"
EndSection
Section "ServerLayout"
    Identifier "layout"
    Screen "screen"
    InputDevice "pointer" "CorePointer"
    InputDevice "keys" "CoreKeyboard"
    InputDevice "touch"
EndSection
Section "InputDevice"
    Identifier "pointer"
    Driver "inputtest"
    Option "DeviceType" "Pointer"
    Option "SocketPath" "@FOLDER@/pointer"
EndSection
Section "InputDevice"
    Identifier "keys"
    Driver "inputtest"
    Option "DeviceType" "Keyboard"
    Option "SocketPath" "@FOLDER@/keys"
EndSection
Section "InputDevice"
    Identifier "touch"
    Driver "inputtest"
    Option "DeviceType" "Touch"
    Option "TouchCount" "10"
    Option "SocketPath" "@FOLDER@/touch"
EndSection
Section "Monitor"
    Identifier "monitor"
    HorizSync 10-100
    VertRefresh 30-100
    Modeline "1280x800" 83.50 1280 1352 1480 1680 800 803 809 831
EndSection
Section "Device"
    Identifier "card"
    Driver "dummy"
    VideoRam 16384
EndSection
Section "Screen"
    Identifier "screen"
    Device "card"
    Monitor "monitor"
    DefaultDepth 24
    SubSection "Display"
        Depth 24
        Modes "1280x800"
    EndSubSection
EndSection
)";

std::string configuration(const std::filesystem::path& folder) {
    const std::string mark = "@FOLDER@";
    std::string text = kConfiguration;
    for (std::size_t at; (at = text.find(mark)) != std::string::npos;)
        text.replace(at, mark.size(), folder.string());
    return text;
}

template <class T>
bool sendAll(int to, const T& value) {
    return ::send(to, &value, sizeof value, MSG_NOSIGNAL) == static_cast<ssize_t>(sizeof value);
}

/// Reads what the driver answers; false when it is no answer of this type.
bool answers(int from, xf86ITResponseType type) {
    xf86ITResponseAny response{};
    auto* bytes = reinterpret_cast<char*>(&response);
    std::size_t have = 0, want = sizeof response.header;
    while (have < want) {
        const ssize_t got = read(from, bytes + have, want - have);
        if (got <= 0) return false;
        have += static_cast<std::size_t>(got);
        if (have == sizeof response.header) want = response.header.length;
        if (want > sizeof response) return false;
    }
    return response.header.type == type;
}

template <class T>
T event(xf86ITEventType type) {
    T made{};
    made.header.length = sizeof made;
    made.header.type = type;
    return made;
}

/// What it writes when it is ready: its display's number. Nothing when it ends before that.
std::string numberFrom(int end) {
    std::string number;
    for (char byte = 0;;) {
        pollfd waits{end, POLLIN, 0};
        if (poll(&waits, 1, kMillisToStart) <= 0 || read(end, &byte, 1) != 1) return "";
        if (byte == '\n') return number;
        number += byte;
    }
}

std::string endOf(const std::filesystem::path& log) {
    constexpr std::size_t kMost = 2'000;
    const auto text = readWhole(log, 1 << 20);
    if (!text.ok()) return "it wrote no log";
    return text.value().substr(text.value().size() - std::min(kMost, text.value().size()));
}

}  // namespace

XServer::XServer(const std::filesystem::path& folder) : folder_(folder) {
    if (!start())
        trouble_ = "the X server did not start; its log ends:\n" + endOf(folder_ / "log");
    else if (!connect())
        trouble_ =
            "the X server's touch screen does not answer; its log ends:\n" + endOf(folder_ / "log");
}

XServer::~XServer() {
    if (socket_ >= 0) close(socket_);
    if (process_ <= 0) return;
    kill(process_, SIGTERM);
    waitpid(process_, nullptr, 0);
}

bool XServer::start() {
    const std::string config = (folder_ / "xorg.conf").string(), log = (folder_ / "log").string();
    std::filesystem::create_directories(folder_ / "no-more");
    const std::string none = (folder_ / "no-more").string();
    std::ofstream(config) << configuration(folder_);
    int ends[2];
    if (pipe(ends) != 0) return false;
    process_ = fork();
    if (process_ == 0) {
        close(ends[0]);
        const std::string ready = std::to_string(ends[1]);
        if (std::freopen("/dev/null", "w", stderr) == nullptr) _exit(127);
        execl(WRENLET_XORG, WRENLET_XORG, "-displayfd", ready.c_str(), "-noreset", "-nolisten",
              "tcp", "-config", config.c_str(), "-configdir", none.c_str(), "-logfile", log.c_str(),
              static_cast<char*>(nullptr));
        _exit(127);
    }
    close(ends[1]);
    const std::string number = numberFrom(ends[0]);
    close(ends[0]);
    display_ = ":" + number;
    return !number.empty();
}

// One connection is all that the driver takes in a server's life.
bool XServer::connect() {
    const std::string path = (folder_ / "touch").string();
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    if (path.size() >= sizeof address.sun_path) return false;
    std::memcpy(address.sun_path, path.c_str(), path.size() + 1);
    socket_ = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const timeval most{kSecondsToAnswer, 0};
    setsockopt(socket_, SOL_SOCKET, SO_RCVTIMEO, &most, sizeof most);
    if (::connect(socket_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0)
        return false;
    auto hello = event<xf86ITEventClientVersion>(XF86IT_EVENT_CLIENT_VERSION);
    hello.major = XF86IT_PROTOCOL_VERSION_MAJOR;
    hello.minor = XF86IT_PROTOCOL_VERSION_MINOR;
    return sendAll(socket_, hello) && answers(socket_, XF86IT_RESPONSE_SERVER_VERSION);
}

bool XServer::send(unsigned id, unsigned kind, game::Point at) {
    auto touch = event<xf86ITEventTouch>(XF86IT_EVENT_TOUCH);
    touch.touchid = id;
    touch.touch_type = kind;
    touch.valuators.mask[0] = 0b11;  // x and y
    touch.valuators.valuators[0] = static_cast<double>(at.x) / kWidth * kAxis;
    touch.valuators.valuators[1] = static_cast<double>(at.y) / kHeight * kAxis;
    const auto sync = event<xf86ITEventWaitForSync>(XF86IT_EVENT_WAIT_FOR_SYNC);
    return sendAll(socket_, touch) && sendAll(socket_, sync) &&
           answers(socket_, XF86IT_RESPONSE_SYNC_FINISHED);
}

bool XServer::down(unsigned id, game::Point at) {
    return send(id, kTouchBegin, at);
}

bool XServer::move(unsigned id, game::Point at) {
    return send(id, kTouchUpdate, at);
}

bool XServer::up(unsigned id, game::Point at) {
    return send(id, kTouchEnd, at);
}

}  // namespace wrenlet::touch
