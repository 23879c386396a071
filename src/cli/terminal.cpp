// SPDX-License-Identifier: MIT
#include "cli/terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <set>
#include <sstream>

namespace doorcard {
namespace {

bool begins_code_point(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

/// A word that stays with the number before it: "16 A", "80 %".
bool is_unit(const std::string& word) {
    static const std::set<std::string> units = {"A", "V", "VA", "%", "h", "kA", "mA", "\u00b0C"};
    const auto end = word.find_last_not_of(".,;:)");
    return end != std::string::npos && units.contains(word.substr(0, end + 1));
}

bool ends_in_digit(const std::string& word) { return !word.empty() && word.back() >= '0' && word.back() <= '9'; }

/// The words of a text, units with their numbers.
std::vector<std::string> unbroken_words(const std::string& text) {
    std::vector<std::string> found;
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        if (!found.empty() && ends_in_digit(found.back()) && is_unit(word))
            found.back() += " " + word;
        else
            found.push_back(word);
    }
    return found;
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

std::string first_columns(const std::string& text, int width) {
    std::size_t end = 0;
    for (int count = 0; end < text.size(); ++end)
        if (begins_code_point(text[end]) && count++ == width) break;
    return text.substr(0, end);
}

std::string clipped(const std::string& text, int width) {
    return width_of(text) <= width ? text : first_columns(text, width - 1) + "\u2026";
}

std::vector<std::string> wrapped(const std::string& text, int width) { return flowed(unbroken_words(text), 1, width); }

std::vector<std::string> flowed(const std::vector<std::string>& pieces, int gap, int width) {
    std::vector<std::string> lines(1);
    for (const std::string& piece : pieces) {
        if (!lines.back().empty() && width_of(lines.back()) + gap + width_of(piece) > width) lines.emplace_back();
        if (!lines.back().empty()) lines.back() += std::string(static_cast<std::size_t>(gap), ' ');
        lines.back() += piece;
    }
    return lines;
}

std::string colored(const std::string& word, Severity severity, const Terminal& terminal) {
    if (!terminal.color) return word;
    constexpr const char* codes[] = {"\033[1;97;41m", "\033[30;48;5;208m", "\033[30;103m", "\033[97;44m"};
    return codes[static_cast<std::size_t>(severity)] + word + "\033[0m";
}

}  // namespace doorcard
