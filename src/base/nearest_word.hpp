// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace doorcard {

/// How many letters must be left out, put in, changed or swapped with their neighbour to make one word of the other;
/// capitals and small letters are alike (ASCII). Stops above `most` and answers most + 1.
std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t most);

/// Collects the word nearest to the one somebody wrote; of several equally near, the first offered.
class NearestWord {
public:
    explicit NearestWord(std::string_view written) : written_(written) {}
    void offer(std::string_view word);
    /// Nullopt where none is near enough to be what was meant: one slip in up to 7 letters, 2 in up to 12, else 3; a
    /// single letter is never forgiven.
    std::optional<std::string_view> meant() const;
    /// The nearest, however far; nullopt where none was offered.
    std::optional<std::string_view> nearest() const { return nearest_; }

private:
    std::string_view written_;
    std::size_t distance_ = 64;
    std::optional<std::string_view> nearest_;
};

std::optional<std::string_view> nearest_word(std::string_view written, std::span<const std::string_view> known);

}  // namespace doorcard
