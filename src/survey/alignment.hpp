// SPDX-License-Identifier: MIT
#pragma once
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace doorcard {

/// For each of `after` the one of `before` that it is in the longest common run of both; `same(b, a)` says whether two
/// are alike. What both have at the beginning and at the end is matched at once; a middle of more than some thousand by
/// some thousand is matched by walking down both, which may miss a longer run.
template <class Same>
std::vector<std::optional<std::size_t>> alignment(std::size_t before, std::size_t after, Same same) {
    std::vector<std::optional<std::size_t>> was(after);
    std::size_t first = 0;
    for (; first < before && first < after && same(first, first); ++first) was[first] = first;
    for (; before > first && after > first && same(before - 1, after - 1); --before, --after)
        was[after - 1] = before - 1;
    const std::size_t rows = before - first, columns = after - first;
    constexpr std::size_t most_cells = 4'000'000;
    if (rows * columns > most_cells) {
        for (std::size_t b = first, a = first; a < after; ++a) {
            std::size_t found = b;
            while (found < before && found < b + 1000 && !same(found, a)) ++found;
            if (found < before && found < b + 1000) was[a] = found, b = found + 1;
        }
        return was;
    }
    std::vector<std::uint32_t> length((rows + 1) * (columns + 1));  // of the longest run from there on
    const auto cell = [&](std::size_t b, std::size_t a) -> std::uint32_t& { return length[b * (columns + 1) + a]; };
    for (std::size_t b = rows; b-- > 0;)
        for (std::size_t a = columns; a-- > 0;)
            cell(b, a) = same(first + b, first + a) ? cell(b + 1, a + 1) + 1 : std::max(cell(b + 1, a), cell(b, a + 1));
    for (std::size_t b = 0, a = 0; b < rows && a < columns;) {
        if (same(first + b, first + a))
            was[first + a++] = first + b++;
        else if (cell(b + 1, a) >= cell(b, a + 1))
            ++b;
        else
            ++a;
    }
    return was;
}

}  // namespace doorcard
