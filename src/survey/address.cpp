// SPDX-License-Identifier: MIT
#include "survey/address.hpp"

#include <algorithm>
#include <array>

namespace doorcard {
namespace {

struct KindName {
    ThingKind kind;
    std::string_view name;
    bool has_legs;
};

// Contract 1, 'Addresses'.
constexpr std::array<KindName, 9> kinds = {{{ThingKind::source, "source", true},
                                            {ThingKind::panel, "panel", true},
                                            {ThingKind::breaker, "breaker", true},
                                            {ThingKind::circuit, "circuit", true},
                                            {ThingKind::neutral, "neutral", false},
                                            {ThingKind::outlet, "outlet", false},
                                            {ThingKind::load, "load", false},
                                            {ThingKind::ground, "ground", false},
                                            {ThingKind::survey, "survey", false}}};

/// "A", "AB" ... "ABC", each letter once, in any order; or "N".
bool are_legs(std::string_view legs) {
    if (legs == "N") return true;
    const auto letter_once = [&](char c) { return c >= 'A' && c <= 'C' && std::ranges::count(legs, c) == 1; };
    return !legs.empty() && std::ranges::all_of(legs, letter_once);
}

std::optional<Address> with_legs(Address address, std::string_view legs) {
    if (!are_legs(legs)) return std::nullopt;
    address.legs = legs;
    std::ranges::sort(address.legs);
    return address;
}

}  // namespace

std::string_view name_of(ThingKind kind) { return kinds[static_cast<std::size_t>(kind)].name; }

std::string Address::text() const {
    std::string text = std::string(name_of(kind)) + ":" + id;
    return legs.empty() ? text : text + "/" + legs;
}

std::optional<Address> parse_address(std::string_view text) {
    const std::size_t colon = text.find(':');
    const auto kind = std::ranges::find(kinds, text.substr(0, colon), &KindName::name);
    if (colon == std::string_view::npos || kind == kinds.end()) return std::nullopt;
    const std::string_view rest = text.substr(colon + 1);
    const std::size_t slash = rest.rfind('/');
    const std::string_view id = rest.substr(0, slash);
    if (id.empty() != (kind->kind == ThingKind::survey)) return std::nullopt;
    const Address address{kind->kind, std::string(id), ""};
    if (slash == std::string_view::npos) return address;
    return kind->has_legs ? with_legs(address, rest.substr(slash + 1)) : std::nullopt;
}

}  // namespace doorcard
