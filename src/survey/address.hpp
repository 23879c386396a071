// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace doorcard {

enum class ThingKind { source, panel, breaker, circuit, neutral, outlet, load, ground, survey };

/// What a reading, limit, trip or finding is of: `kind:ID` or `kind:ID/LEGS` (contract 1, 'Addresses').
/// `legs` is "" (the thing), letters of legs ("A", "AB" line to line), or "N" its neutral.
struct Address {
    ThingKind kind = ThingKind::survey;
    std::string id;
    std::string legs;
    bool operator==(const Address&) const = default;
    std::string text() const;
};

std::string_view name_of(ThingKind);
/// Nullopt where it is no address. The id runs to the end, or to a last '/' that legs or N follow on a kind that has
/// legs.
std::optional<Address> parse_address(std::string_view);

}  // namespace doorcard
