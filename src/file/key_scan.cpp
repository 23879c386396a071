// SPDX-License-Identifier: MIT
#include "file/key_scan.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace doorcard {
namespace {

constexpr auto nowhere = std::string_view::npos;

Place place_at(std::string_view bytes, std::size_t offset) {
    const std::string_view before = bytes.substr(0, offset);
    const std::size_t line_start = before.rfind('\n') == nowhere ? 0 : before.rfind('\n') + 1;
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const auto starts_code_point = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
    const auto columns =
        std::count_if(before.begin() + static_cast<std::ptrdiff_t>(line_start), before.end(), starts_code_point);
    return {static_cast<std::uint32_t>(lines + 1), static_cast<std::uint32_t>(columns + 1)};
}

/// Behind the string that begins at `at`: one of four kinds; the end of the text where it is not closed.
std::size_t behind_string(std::string_view bytes, std::size_t at) {
    const char quote = bytes[at];
    const bool long_string = at + 2 < bytes.size() && bytes[at + 1] == quote && bytes[at + 2] == quote;
    const std::size_t width = long_string ? 3 : 1;
    for (std::size_t i = at + width; i < bytes.size(); ++i) {
        if (bytes[i] == '\\' && quote == '"') {
            ++i;
        } else if (bytes[i] == '\n' && !long_string) {
            return i;
        } else if (bytes[i] == quote && (!long_string || bytes.substr(i, 3) == bytes.substr(at, 3))) {
            return i + width;
        }
    }
    return bytes.size();
}

class KeyScan {
public:
    explicit KeyScan(std::string_view bytes) : bytes_(bytes) {}

    std::optional<Complaint> run() {
        std::size_t at = 0;
        while (at < bytes_.size() && !found_) at = step(at);
        return found_;
    }

private:
    std::size_t step(std::size_t at) {
        const char c = bytes_[at];
        if (c == '"' || c == '\'') return behind_string(bytes_, at);
        if (c == '#') return std::min(bytes_.find('\n', at), bytes_.size());
        if (c == '.') {
            count_dot(at);
        } else if (c == '\n') {
            dots_ = 0;
        } else if (c == '=' || c == ',') {
            count_value(at);
        } else if (c == '[' || c == '{') {
            count_value(at);
            open(at);
        } else if (c == ']' || c == '}') {
            close();
        }
        return at + 1;
    }
    void count_dot(std::size_t at) {
        if (++dots_ > most_dots)
            refuse(at, fmt::format("a key with more than {} dots", most_dots),
                   "no key of a survey has more than one or two");
    }
    void count_value(std::size_t at) {
        dots_ = 0;
        if (++values_ > most_values)
            refuse(at, fmt::format("more than {} values and lists", most_values),
                   "a survey has some thousands to some million");
    }
    void open(std::size_t at) {
        if (++depth_ > most_nesting)
            refuse(at, fmt::format("brackets nested more than {} deep", most_nesting),
                   "nothing in a survey nests deeper than 3");
    }
    void close() {
        dots_ = 0;
        depth_ = std::max(0, depth_ - 1);
    }
    void refuse(std::size_t at, std::string wrong, std::string right) {
        found_ = Complaint{place_at(bytes_, at), std::move(wrong), std::move(right)};
    }

    std::string_view bytes_;
    int dots_ = 0;
    int depth_ = 0;
    int values_ = 0;
    std::optional<Complaint> found_;
};

}  // namespace

std::optional<Complaint> refused_before_parsing(std::string_view bytes) {
    if (bytes.size() > most_bytes)
        return Complaint{{}, "the file is larger than 64 MiB", "a survey is a text of some kilobytes to megabytes"};
    return KeyScan(bytes).run();
}

}  // namespace doorcard
