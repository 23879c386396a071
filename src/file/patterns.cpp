// SPDX-License-Identifier: MIT
#include "file/patterns.hpp"

#include <algorithm>
#include <array>

namespace doorcard {
namespace {

/// The next code point of valid UTF-8, which is taken off.
char32_t take_code_point(std::string_view& text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    const std::size_t length = std::min<std::size_t>(first < 0x80   ? 1
                                                     : first < 0xE0 ? 2
                                                     : first < 0xF0 ? 3
                                                                    : 4,
                                                     text.size());
    char32_t code = length == 1 ? first : first & (0xFFu >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) code = (code << 6) | (byte(i) & 0x3Fu);
    text.remove_prefix(length);
    return code;
}

struct Range {
    char32_t first, last;
};
bool in_any(char32_t code, std::span<const Range> ranges) {
    return std::ranges::any_of(ranges, [=](Range r) { return code >= r.first && code <= r.last; });
}

// From memory of the Unicode character database: control, format, separator characters and noncharacters.
constexpr std::array<Range, 11> unprintable = {{{0, 0x1F},
                                                {0x7F, 0x9F},
                                                {0xAD, 0xAD},
                                                {0x200B, 0x200F},
                                                {0x2028, 0x202E},
                                                {0x2060, 0x206F},
                                                {0xD800, 0xDFFF},
                                                {0xFDD0, 0xFDEF},
                                                {0xFEFF, 0xFEFF},
                                                {0xFFF9, 0xFFFB},
                                                {0xFFFE, 0xFFFF}}};
constexpr std::array<Range, 6> blank = {
    {{' ', ' '}, {0xA0, 0xA0}, {0x2000, 0x200A}, {0x202F, 0x202F}, {0x205F, 0x205F}, {0x3000, 0x3000}}};

bool allowed_in_id(char32_t code) { return code != '/' && code != '"' && code != '\'' && !in_any(code, unprintable); }

bool is_id(std::string_view text) {
    int length = 0;
    char32_t code = ' ';
    while (!text.empty()) {
        code = take_code_point(text);
        const bool blank_start = length == 0 && in_any(code, blank);
        if (blank_start || !allowed_in_id(code) || ++length > 64) return false;
    }
    return length > 0 && !in_any(code, blank);
}

bool is_panel_id(std::string_view text) { return is_id(text) && text.find_first_of(":+") == std::string_view::npos; }

bool digits(std::string_view text) {
    return !text.empty() && text.size() <= 9 && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

/// Two parts about a mark, both of digits.
bool digits_about(std::string_view text, char mark) {
    const std::size_t at = text.find(mark);
    return at != std::string_view::npos && digits(text.substr(0, at)) && digits(text.substr(at + 1));
}

bool is_hp(std::string_view text) {
    const bool over_zero =
        digits_about(text, '/') && text.find_first_not_of('0', text.find('/') + 1) == std::string_view::npos;
    return digits(text) || digits_about(text, '.') || (digits_about(text, '/') && !over_zero);
}

bool is_letter(char c) { return c >= 'A' && c <= 'C'; }
bool are_letters(std::string_view text) {
    return !text.empty() && text.size() <= 64 && std::ranges::all_of(text, is_letter);
}
bool are_letters_once(std::string_view text) {
    return are_letters(text) && std::ranges::all_of(text, [&](char c) { return std::ranges::count(text, c) == 1; });
}
bool are_load_legs(std::string_view text) {
    const bool halves = text.size() == 5 && text.substr(1, 2) == "N+" && text[4] == 'N';
    if (halves) return is_letter(text[0]) && is_letter(text[3]) && text[0] != text[3];
    return are_letters_once(text);
}

bool is_slash_volts(std::string_view text) { return digits(text) || digits_about(text, '/'); }

}  // namespace

const Pattern id_pattern = {
    &is_id, "text of 1 to 64 printable characters, no \"/\", quote or control character, no space at either end"};
const Pattern panel_id_pattern = {
    &is_panel_id,
    "text of 1 to 64 printable characters, no \":\", \"+\", \"/\", quote or control character, no space at either end"};
const Pattern hp_pattern = {&is_hp, "number, or a text such as \"3/4\""};
const Pattern leg_letters = {&are_letters, "letters of legs, such as \"AB\""};
const Pattern load_legs = {&are_load_legs, "legs, such as \"A\", \"AB\", \"ABC\" or \"AN+BN\""};
const Pattern slash_volts = {&is_slash_volts, "volts as marked, such as \"120/240\""};

}  // namespace doorcard
