// SPDX-License-Identifier: MIT
#include "desk/moment_typed.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <optional>

#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

/// Numbers between signs, at the begin of a text, which are taken off: `2026-5-14`.
template <std::size_t N>
std::optional<std::array<int, N>> take_numbers(std::string_view& text, char sign, std::size_t least = N) {
    std::array<int, N> numbers{};
    for (std::size_t i = 0; i < N; ++i) {
        if (i > 0 && !text.starts_with(sign)) return i >= least ? std::optional(numbers) : std::nullopt;
        if (i > 0) text.remove_prefix(1);
        const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), numbers[i]);
        if (fault != std::errc() || numbers[i] < 0) return std::nullopt;
        text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    }
    return numbers;
}

tl::unexpected<std::vector<Complaint>> no_moment(std::string_view typed, bool needs_time) {
    return refused(fmt::format("\"{}\" is no {}", typed, needs_time ? "date and time" : "date"),
                   needs_time ? "write it as 2026-05-14 09:30" : "write it as 2026-05-14");
}

}  // namespace

Outcome<std::string> moment_typed(std::string_view typed, bool needs_time) {
    constexpr int least_year = 1000;  // four digits: a year of two is a day for some
    std::string_view text = trimmed(typed);
    const auto day = take_numbers<3>(text, '-');
    if (!day || (*day)[0] < least_year) return no_moment(typed, needs_time);
    const std::string date = fmt::format("{:04}-{:02}-{:02}", (*day)[0], (*day)[1], (*day)[2]);
    if (text.empty() && !needs_time) return date;
    if (!text.starts_with(' ') && !text.starts_with('T')) return no_moment(typed, needs_time);
    text = trimmed(text.substr(1));
    const auto clock = take_numbers<3>(text, ':', 2);
    if (!clock) return no_moment(typed, needs_time);
    return fmt::format("{}T{:02}:{:02}:{:02}{}", date, (*clock)[0], (*clock)[1], (*clock)[2], text);
}

}  // namespace doorcard
