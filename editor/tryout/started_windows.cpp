#include <windows.h>

#include <algorithm>
#include <string_view>

#include "editor/tryout/started.hpp"

namespace wrenlet::desk {

namespace {

constexpr UINT kKilled = static_cast<UINT>(-1);

struct CloseHandleOf {
    using pointer = HANDLE;
    void operator()(HANDLE handle) const { CloseHandle(handle); }
};
using Handle = std::unique_ptr<HANDLE, CloseHandleOf>;

/// A word of a command line, in quotes, so that the program's C library takes it apart again:
/// backslashes count as themselves unless a quote comes after them.
std::wstring inQuotes(std::wstring_view word) {
    std::wstring out = L"\"";
    std::size_t backslashes = 0;
    for (const wchar_t c : word) {
        if (c == L'"') out.append(backslashes + 1, L'\\');
        backslashes = c == L'\\' ? backslashes + 1 : 0;
        out += c;
    }
    out.append(backslashes, L'\\');
    return out + L'"';
}

struct Windows {
    DWORD process;
    bool any;
};

BOOL CALLBACK closeIfOf(HWND window, LPARAM wanted) {
    auto& windows = *reinterpret_cast<Windows*>(wanted);
    DWORD process = 0;
    GetWindowThreadProcessId(window, &process);
    if (process == windows.process && IsWindowVisible(window))
        windows.any = PostMessageW(window, WM_CLOSE, 0, 0) != 0 || windows.any;
    return TRUE;
}

}  // namespace

struct Started::Process {
    Handle handle, from;
    DWORD number = 0;
};

Started::Started(const std::filesystem::path& program, const std::vector<std::string>& words)
    : process_(std::make_unique<Process>()) {
    SECURITY_ATTRIBUTES inherited{sizeof inherited, nullptr, TRUE};
    HANDLE reading = nullptr, writing = nullptr;
    if (!CreatePipe(&reading, &writing, &inherited, 0)) return;
    process_->from.reset(reading);
    const Handle to(writing);
    const Handle nothing(CreateFileW(L"NUL", GENERIC_READ, FILE_SHARE_READ | FILE_SHARE_WRITE,
                                     &inherited, OPEN_EXISTING, 0, nullptr));
    // This end would keep the pipe open in the program, and in another one started meanwhile.
    SetHandleInformation(reading, HANDLE_FLAG_INHERIT, 0);
    std::wstring call = inQuotes(program.native());
    for (const std::string& word : words)
        call += L' ' + inQuotes(std::filesystem::u8path(word).native());
    SIZE_T size = 0;
    InitializeProcThreadAttributeList(nullptr, 1, 0, &size);
    std::string room(size, '\0');
    STARTUPINFOEXW how{};
    how.StartupInfo.cb = sizeof how;
    how.StartupInfo.dwFlags = STARTF_USESTDHANDLES;
    how.StartupInfo.hStdInput = nothing.get();
    how.StartupInfo.hStdOutput = to.get();
    how.StartupInfo.hStdError = nothing.get();
    how.lpAttributeList = reinterpret_cast<LPPROC_THREAD_ATTRIBUTE_LIST>(room.data());
    HANDLE handed[] = {nothing.get(), to.get()};
    if (!InitializeProcThreadAttributeList(how.lpAttributeList, 1, 0, &size)) return;
    UpdateProcThreadAttribute(how.lpAttributeList, 0, PROC_THREAD_ATTRIBUTE_HANDLE_LIST, handed,
                              sizeof handed, nullptr, nullptr);
    PROCESS_INFORMATION about{};
    if (CreateProcessW(program.c_str(), call.data(), nullptr, nullptr, TRUE,
                       CREATE_NO_WINDOW | EXTENDED_STARTUPINFO_PRESENT, nullptr, nullptr,
                       &how.StartupInfo, &about)) {
        CloseHandle(about.hThread);
        process_->handle.reset(about.hProcess);
        process_->number = about.dwProcessId;
    }
    DeleteProcThreadAttributeList(how.lpAttributeList);
}

Started::~Started() = default;

bool Started::isThere() const {
    return process_->handle != nullptr;
}

bool Started::read(std::string& text, std::size_t most_bytes,
                   std::optional<std::chrono::seconds> longest) {
    using Clock = std::chrono::steady_clock;
    constexpr DWORD kStepMs = 5;
    const Clock::time_point begun = Clock::now();
    char block[4096];
    for (;;) {
        // A pipe can't be waited at for a time.
        DWORD there = 0;
        while (longest &&
               PeekNamedPipe(process_->from.get(), nullptr, 0, nullptr, &there, nullptr) &&
               there == 0) {
            if (Clock::now() - begun > *longest) return false;
            Sleep(kStepMs);
        }
        DWORD got = 0;
        if (!ReadFile(process_->from.get(), block, sizeof block, &got, nullptr))
            return GetLastError() == ERROR_BROKEN_PIPE;
        text.append(block, got);
        if (text.size() > most_bytes) return false;
    }
}

int Started::wait() {
    DWORD code = kKilled;
    WaitForSingleObject(process_->handle.get(), INFINITE);
    GetExitCodeProcess(process_->handle.get(), &code);
    return std::max(-1, static_cast<int>(code));  // one that crashed has a code below 0
}

void Started::askToEnd() {
    Windows windows{process_->number, false};
    EnumWindows(closeIfOf, reinterpret_cast<LPARAM>(&windows));
    if (!windows.any) kill();
}

void Started::kill() {
    TerminateProcess(process_->handle.get(), kKilled);
}

}  // namespace wrenlet::desk
