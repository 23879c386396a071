// SPDX-License-Identifier: MIT
#include "sheet/plain_lines.hpp"

#include <glib.h>

#include <algorithm>
#include <utility>

namespace doorcard {
namespace {

// The first characters of a text.
std::string cut_off(const std::string& text, std::size_t width) {
    const char* end = g_utf8_offset_to_pointer(text.c_str(), static_cast<glong>(std::min(width, characters(text))));
    return text.substr(0, static_cast<std::size_t>(end - text.c_str()));
}

}  // namespace

std::size_t characters(const std::string& text) {
    return static_cast<std::size_t>(g_utf8_strlen(text.c_str(), static_cast<gssize>(text.size())));
}

std::string padded(const std::string& text, std::size_t width) {
    const std::size_t has = characters(text);
    return has < width ? text + std::string(width - has, ' ') : text;
}

std::string padded_left(const std::string& text, std::size_t width) {
    const std::size_t has = characters(text);
    return has < width ? std::string(width - has, ' ') + text : text;
}

std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = std::min(text.find(' ', at), text.size());
        std::string word = text.substr(at, space - at);
        at = space + 1;
        if (!line.empty() && characters(line) + 1 + characters(word) > width) lines.push_back(std::exchange(line, ""));
        while (characters(word) > width) {
            const std::string part = cut_off(word, width);
            lines.push_back(part);
            word.erase(0, part.size());
        }
        line += (line.empty() || word.empty() ? "" : " ") + word;
    }
    if (!line.empty()) lines.push_back(line);
    return lines;
}

}  // namespace doorcard
