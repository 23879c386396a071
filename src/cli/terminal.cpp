// SPDX-License-Identifier: MIT
#include "cli/terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <sstream>

namespace doorcard {
namespace {

bool begins_code_point(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

/// The first `width` code points.
std::string first_of(const std::string& text, int width) {
    std::size_t end = 0;
    for (int count = 0; end < text.size(); ++end)
        if (begins_code_point(text[end]) && count++ == width) break;
    return text.substr(0, end);
}

}  // namespace

Terminal Terminal::of_stdout() {
    Terminal terminal;
    winsize size{};
    const bool is_terminal = isatty(STDOUT_FILENO) != 0;
    if (is_terminal && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0)
        terminal.columns = std::max<int>(size.ws_col, 40);
    const char* no_color = std::getenv("NO_COLOR");
    terminal.color = is_terminal && !(no_color && *no_color);
    return terminal;
}

int width_of(const std::string& text) {
    return static_cast<int>(std::count_if(text.begin(), text.end(), begins_code_point));
}

std::string padded(const std::string& text, int width) {
    return text + std::string(static_cast<std::size_t>(std::max(0, width - width_of(text))), ' ');
}

std::string padded_left(const std::string& text, int width) {
    return std::string(static_cast<std::size_t>(std::max(0, width - width_of(text))), ' ') + text;
}

std::string clipped(const std::string& text, int width) {
    if (width_of(text) <= width) return text;
    return first_of(text, width - 1) + "\u2026";
}

std::vector<std::string> wrapped(const std::string& text, int width) {
    std::vector<std::string> lines(1);
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        if (!lines.back().empty() && width_of(lines.back()) + 1 + width_of(word) > width) lines.emplace_back();
        lines.back() += (lines.back().empty() ? "" : " ") + word;
    }
    return lines;
}

std::string colored(const std::string& word, Severity severity, const Terminal& terminal) {
    if (!terminal.color) return word;
    constexpr const char* codes[] = {"\033[1;97;41m", "\033[30;48;5;208m", "\033[30;103m", "\033[97;44m"};
    return codes[static_cast<std::size_t>(severity)] + word + "\033[0m";
}

}  // namespace doorcard
