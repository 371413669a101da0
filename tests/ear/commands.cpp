#include "tests/ear/commands.hpp"

#include <cstdio>

namespace wrenlet::ear {

std::string outputOf(const std::string& command) {
    FILE* pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) return {};
    std::string output;
    char buffer[1 << 14];
    for (std::size_t got; (got = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;)
        output.append(buffer, got);
    return pclose(pipe) == 0 ? output : std::string();
}

bool hasProgram(const std::string& program) {
    return !outputOf("command -v '" + program + "' 2>/dev/null").empty();
}

}  // namespace wrenlet::ear
