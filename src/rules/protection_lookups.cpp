// SPDX-License-Identifier: MIT
#include "rules/protection_lookups.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>

namespace doorcard {
namespace {

constexpr double equality = 1e-9;           // contract 3: equal within 1e-9 of the value
constexpr double rounding_of_areas = 1e-3;  // the table gives them to four digits
constexpr double mils_of_kcmil = 1000;
constexpr double least_kcmil = 250;  // below it a number is a gauge

const char* column_letters(Metal metal) { return metal == Metal::copper ? "cu" : "al"; }

std::optional<double> kcmil(std::string_view size) {
    double value = 0;
    const auto [end, error] = std::from_chars(size.data(), size.data() + size.size(), value);
    if (error != std::errc() || end != size.data() + size.size() || value < least_kcmil) return std::nullopt;
    return value;
}

std::string lower(std::string_view text) {
    std::string plain;
    for (const char c : text) plain += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return plain;
}

}  // namespace

std::optional<double> circular_mils(const RuleBook& book, std::string_view size) {
    if (const auto number = kcmil(size)) return *number * mils_of_kcmil;
    const RuleTable& table = book.table("nec-ch9-t8");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, 0) == size) return table.number(row, table.column("cmil"));
    return std::nullopt;
}

std::optional<std::string> ground_wire_size(const RuleBook& book, Amperes device, Metal metal) {
    const RuleTable& table = book.table("nec-250-122");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.number(row, 0) >= device.value - equality * device.value)
            return table.text(row, table.column(column_letters(metal)));
    return std::nullopt;
}

std::optional<std::string> grown_size(const RuleBook& book, std::string_view size, std::string_view least,
                                      std::string_view fitted) {
    const auto own = circular_mils(book, size), from = circular_mils(book, least), to = circular_mils(book, fitted);
    if (!own || !from || !to) return std::nullopt;
    const double area = *own * std::max(1.0, *to / *from);
    const RuleTable& sizes = book.table("nec-310-16");
    for (std::size_t row = 0; row < sizes.rows.size(); ++row)
        if (const auto mils = circular_mils(book, sizes.text(row, 0)); mils && *mils >= area * (1 - rounding_of_areas))
            return sizes.text(row, 0);
    return std::nullopt;
}

std::optional<std::string> electrode_conductor_size(const RuleBook& book, std::string_view service_size,
                                                    Metal service_metal, int sets, Metal metal) {
    const RuleTable& table = book.table("nec-250-66");
    const auto one = circular_mils(book, service_size);
    if (!one) return std::nullopt;
    const double area = *one * sets;
    const std::size_t limit = table.column(service_metal == Metal::copper ? "service_cu_up_to" : "service_al_up_to");
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const auto most = circular_mils(book, table.text(row, limit));
        if (!most || area <= *most * (1 + equality)) return table.text(row, table.column(column_letters(metal)));
    }
    return std::nullopt;
}

std::optional<std::string> electrode_limit(const RuleBook& book, std::string_view electrode, Metal metal) {
    const std::string name = lower(electrode);
    if (name.find("water") != std::string::npos) return std::nullopt;
    const RuleTable& table = book.table("electrode-limits");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (name.find(table.text(row, 0)) != std::string::npos)
            return table.text(row, table.column(column_letters(metal)));
    return std::nullopt;
}

std::optional<ReceptacleRange> receptacle_range(const RuleBook& book, Amperes circuit) {
    const RuleTable& table = book.table("nec-210-21-b-3");
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        if (table.number(row, 0) != circuit.value) continue;
        const double most = table.number(row, table.column("most_a"));
        return ReceptacleRange{Amperes(table.number(row, table.column("least_a"))),
                               most > 0 ? std::optional(Amperes(most)) : std::nullopt};
    }
    return std::nullopt;
}

}  // namespace doorcard
