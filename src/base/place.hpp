// SPDX-License-Identifier: MIT
#pragma once
#include <compare>
#include <cstdint>
#include <string>
#include <vector>

namespace doorcard {

/// Where in a text: 1-based line and column; columns count code points, a tab is one.
struct Place {
    std::uint32_t line = 1;
    std::uint32_t column = 1;
    auto operator<=>(const Place&) const = default;
};

/// What is wrong at a place of somebody's file, and what would be right.
struct Complaint {
    Place place;
    std::string wrong;
    std::string right;
    bool operator==(const Complaint&) const = default;
};

/// `FILE:LINE:COLUMN: what is wrong; what would be right`
std::string complaint_line(const std::string& file, const Complaint&);

}  // namespace doorcard
