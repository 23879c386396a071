// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include "assess/voltage_drop.hpp"
#include "rules/lookups.hpp"

namespace doorcard {
namespace {

constexpr double feet_of_table = 1000;  // the tables give ohms per 1000 ft

std::optional<std::size_t> row_of(const RuleTable& table, const std::string& size) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, table.column("size")) == size) return row;
    return std::nullopt;
}

std::optional<double> printed(const RuleTable& table, const std::string& size, const std::string& column) {
    const auto row = row_of(table, size);
    if (!row) return std::nullopt;
    const double cell = table.number(*row, table.column(column));
    return cell == 0 ? std::nullopt : std::optional(cell);
}

std::optional<double> by_resistance(const RuleBook& book, const std::string& size, const std::string& metal) {
    const bool stranded = at_least_size(book, size, "8").value_or(true);
    return printed(book.table("nec-ch9-t8"), size, metal + (stranded ? "_stranded" : "_solid"));
}

std::optional<double> by_impedance(const Wire& wire, const std::string& metal, double angle_degrees,
                                   const RuleBook& book) {
    const std::string raceway = wire.raceway.value_or("pvc");
    const std::string conduit = raceway == "steel" ? "_steel" : raceway == "aluminum" ? "_alcond" : "_pvc";
    const RuleTable& table = book.table("nec-ch9-t9");
    const auto r = printed(table, *wire.size, metal + conduit);
    const auto x = printed(table, *wire.size, raceway == "steel" ? "x_steel" : "x_pvc_al");
    if (!r || !x) return std::nullopt;
    const double angle = angle_degrees * std::numbers::pi / 180;
    return *r * std::cos(angle) + *x * std::sin(angle);
}

}  // namespace

std::optional<OhmsPerFoot> conductor_impedance(const Wire& wire, double angle_degrees, const RuleBook& book) {
    if (!wire.size || !wire.metal) return std::nullopt;
    const std::string metal = *wire.metal == Metal::copper ? "cu" : "al";
    const bool large = at_least_size(book, *wire.size, "1/0").value_or(false);
    const auto ohms = large ? by_impedance(wire, metal, angle_degrees, book) : by_resistance(book, *wire.size, metal);
    if (!ohms) return std::nullopt;
    return OhmsPerFoot(*ohms / feet_of_table);
}

}  // namespace doorcard
