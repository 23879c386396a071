// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string_view>

#include "base/place.hpp"

namespace doorcard {

constexpr std::size_t most_bytes = 64u << 20;  // of a survey file
constexpr int most_dots = 64;                  // in one key
constexpr int most_nesting = 64;               // of brackets and braces
constexpr int most_values = 8'000'000;         // and lists, and tables

/// What a TOML parser must not be asked to descend into: too many bytes or values, a key with too many dots, brackets
/// nested too deep. Knows strings and comments, and nothing else of TOML.
std::optional<Complaint> refused_before_parsing(std::string_view bytes);

}  // namespace doorcard
