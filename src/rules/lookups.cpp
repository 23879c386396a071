// SPDX-License-Identifier: MIT
#include "rules/lookups.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <ranges>

namespace doorcard {
namespace {

constexpr double equality = 1e-9;  // contract 3: equal within 1e-9 of the value

bool at_least(double value, double limit) { return value >= limit - equality * std::abs(limit); }

/// Position of the first row whose text in the first column is `key`.
std::optional<std::size_t> row_of(const RuleTable& table, std::string_view key) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, 0) == key) return row;
    return std::nullopt;
}

/// Position of the first row whose number in the first column is at least `value`.
std::optional<std::size_t> row_at_least(const RuleTable& table, double value) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (at_least(table.number(row, 0), value)) return row;
    return std::nullopt;
}

const char* column_letters(Metal metal) { return metal == Metal::copper ? "cu" : "al"; }

std::string plain_letters(std::string_view letters) {
    std::string plain;
    for (const char c : letters)
        if (std::isspace(static_cast<unsigned char>(c)) == 0)
            plain += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return plain;
}

std::optional<double> insulation_cell(const RuleBook& book, std::string_view letters, std::string_view column) {
    const RuleTable& table = book.table("insulation-columns");
    const std::optional<std::size_t> row = row_of(table, plain_letters(letters));
    if (!row) return std::nullopt;
    return table.number(*row, table.column(column));
}

/// A positive plain number that fills the whole text.
std::optional<double> positive_number(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value) || value <= 0)
        return std::nullopt;
    return value;
}

/// "3/4", or a plain number.
std::optional<double> fraction_or_number(std::string_view text) {
    const std::size_t slash = text.find('/');
    if (slash == std::string_view::npos) return positive_number(text);
    const auto above = positive_number(text.substr(0, slash));
    const auto below = positive_number(text.substr(slash + 1));
    if (!above || !below) return std::nullopt;
    return *above / *below;
}

/// The current in a column of a motor table at a horsepower, or at the next larger one; 0 in the table: not printed.
std::optional<Amperes> motor_table_current(const RuleTable& table, std::string_view column, double hp) {
    const std::size_t current = table.column(column);
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (at_least(horsepower(table.text(row, 0)).value(), hp) && table.number(row, current) > 0)
            return Amperes(table.number(row, current));
    return std::nullopt;
}

}  // namespace

std::optional<Amperes> listed_ampacity(const RuleBook& book, std::string_view size, Metal metal, int column_c) {
    const RuleTable& table = book.table("nec-310-16");
    const std::optional<std::size_t> row = row_of(table, size);
    if (!row) return std::nullopt;
    const double amps = table.number(*row, table.column(fmt::format("{}{}", column_letters(metal), column_c)));
    if (amps <= 0) return std::nullopt;
    return Amperes(amps);
}

std::optional<int> insulation_column(const RuleBook& book, std::string_view letters) {
    const std::optional<double> column = insulation_cell(book, letters, "column");
    if (!column) return std::nullopt;
    return static_cast<int>(*column);
}

bool held_to_60(const RuleBook& book, std::string_view letters) {
    return insulation_cell(book, letters, "held_to").value_or(0) > 0;
}

double ambient_factor(const RuleBook& book, Celsius ambient, int column_c) {
    const RuleTable& table = book.table("nec-310-15-b-1");
    const std::size_t column = table.column(fmt::format("f{}", column_c));
    const std::optional<std::size_t> row = row_at_least(table, ambient.value);
    return row ? table.number(*row, column) : 0;
}

double bundling_factor(const RuleBook& book, int conductors) {
    const RuleTable& table = book.table("nec-310-15-c-1");
    double factor = table.number(0, 1);
    for (std::size_t row = 0; row < table.rows.size() && table.number(row, 0) <= conductors; ++row)
        factor = table.number(row, 1);
    return factor;
}

std::optional<Amperes> small_conductor_device(const RuleBook& book, std::string_view size, Metal metal) {
    const RuleTable& table = book.table("nec-240-4-d");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, 0) == size && table.text(row, 1) == column_letters(metal))
            return Amperes(table.number(row, 2));
    return std::nullopt;
}

std::optional<Amperes> standard_rating_at_least(const RuleBook& book, Amperes amps) {
    const RuleTable& table = book.table("nec-240-6-a");
    const std::optional<std::size_t> row = row_at_least(table, amps.value);
    if (!row) return std::nullopt;
    return Amperes(table.number(*row, 0));
}

std::optional<std::string> dwelling_service_size(const RuleBook& book, Metal metal, Amperes rating) {
    const RuleTable& table = book.table("nec-310-12");
    const std::optional<std::size_t> row = row_at_least(table, rating.value);
    if (!row || !at_least(rating.value, table.number(0, 0))) return std::nullopt;
    return table.text(*row, table.column(column_letters(metal)));
}

std::optional<bool> at_least_size(const RuleBook& book, std::string_view size, std::string_view other) {
    const RuleTable& table = book.table("nec-310-16");
    const std::optional<std::size_t> row = row_of(table, size), other_row = row_of(table, other);
    if (!row || !other_row) return std::nullopt;
    return *row >= *other_row;
}

std::optional<double> horsepower(std::string_view hp) {
    const std::size_t join = hp.find('-');
    if (join == std::string_view::npos) return fraction_or_number(hp);
    const auto whole = positive_number(hp.substr(0, join));
    const std::string_view rest = hp.substr(join + 1);
    const auto part = rest.find('/') == std::string_view::npos ? std::nullopt : fraction_or_number(rest);
    if (!whole || !part) return std::nullopt;
    return *whole + *part;
}

std::optional<Amperes> motor_current(const RuleBook& book, std::string_view hp, Volts nominal, int phases) {
    const std::optional<double> power = horsepower(hp);
    const RuleTable& columns = book.table("motor-columns");
    const RuleTable& motors = book.table(phases == 1 ? "nec-430-248" : "nec-430-250");
    for (std::size_t row = 0; power && row < columns.rows.size(); ++row) {
        const std::string& column = columns.text(row, 1);
        const bool printed = std::ranges::find(motors.columns, column) != motors.columns.end();
        if (columns.number(row, 0) == nominal.value && printed) return motor_table_current(motors, column, *power);
    }
    return std::nullopt;
}

double motor_device_percent(const RuleBook& book, bool fuse, int phases) {
    const RuleTable& table = book.table("nec-430-52");
    const std::size_t row = row_of(table, phases == 1 ? "single-phase" : "squirrel-cage").value();
    return table.number(row, table.column(fuse ? "time_delay_fuse" : "inverse_time"));
}

std::optional<VoltAmperes> range_demand(const RuleBook& book, VoltAmperes rating) {
    const double kva = rating.value / 1000;
    const double floor = book.figure("range-floor-kva"), top = book.figure("range-top-kva");
    if (at_least(floor, kva) || !at_least(top, kva)) return std::nullopt;
    const double over = std::max(0.0, kva - book.figure("range-table-kva"));
    const double steps = std::floor(over + 0.5 + equality);  // note 1: a fraction of half a kW and more counts as one
    return VoltAmperes(1000 * book.figure("range-demand-kva") * (1 + book.figure("range-step") * steps));
}

std::optional<Configuration> configuration(const RuleBook& book, std::string_view nema) {
    std::string name = plain_letters(nema);
    if (!name.empty() && (name.back() == 'R' || name.back() == 'P')) name.pop_back();
    const RuleTable& table = book.table("nema-configurations");
    const std::optional<std::size_t> row = row_of(table, name);
    if (!row) return std::nullopt;
    return Configuration{Volts(table.number(*row, 1)), Amperes(table.number(*row, 2))};
}

}  // namespace doorcard
