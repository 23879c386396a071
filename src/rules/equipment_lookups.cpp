// SPDX-License-Identifier: MIT
#include "rules/equipment_lookups.hpp"

#include <algorithm>
#include <cctype>

namespace doorcard {
namespace {

std::optional<std::size_t> row_of(const RuleTable& table, std::string_view key) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, 0) == key) return row;
    return std::nullopt;
}

int whole(const RuleTable& table, std::size_t row, std::string_view column) {
    return static_cast<int>(table.number(row, table.column(column)));
}

/// Lower case, hyphens as spaces.
std::string plain_words(std::string_view words) {
    std::string plain;
    for (const char c : words)
        plain += c == '-' || c == '_' ? ' ' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return plain;
}

std::optional<PlaceGuard> guard_in(const RuleBook& book, const char* id, std::string_view place, Guard guard) {
    const RuleTable& table = book.table(id);
    const auto row = row_of(table, place);
    if (!row) return std::nullopt;
    return PlaceGuard{guard, whole(table, *row, "since"), id};
}

}  // namespace

std::optional<std::string> guard_place(const RuleBook& book, std::string_view words) {
    const RuleTable& table = book.table("place-words");
    const std::string plain = plain_words(words);
    std::optional<std::size_t> row = row_of(table, plain);
    if (!row && plain.ends_with('s')) row = row_of(table, plain.substr(0, plain.size() - 1));
    if (!row) return std::nullopt;
    return table.text(*row, 1);
}

std::optional<PlaceGuard> ground_guard_at(const RuleBook& book, std::string_view place, bool dwelling) {
    return guard_in(book, dwelling ? "nec-210-8-a" : "nec-210-8-b", place, Guard::ground);
}

std::optional<PlaceGuard> arc_guard_in(const RuleBook& book, std::string_view place) {
    return guard_in(book, "nec-210-12-b", place, Guard::arc);
}

std::vector<RequiredCircuit> required_circuits(const RuleBook& book) {
    const RuleTable& table = book.table("nec-210-11-c");
    const RuleTable& places = book.table("required-circuit-places");
    std::vector<RequiredCircuit> all;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        RequiredCircuit one{table.text(row, 0),
                            whole(table, row, "count"),
                            Amperes(table.number(row, table.column("amps"))),
                            whole(table, row, "since"),
                            {}};
        for (std::size_t at = 0; at < places.rows.size(); ++at)
            if (places.text(at, 0) == one.kind) one.places.push_back(places.text(at, 1));
        all.push_back(std::move(one));
    }
    return all;
}

std::optional<RuledOutPlace> ruled_out_place(const RuleBook& book, std::string_view place) {
    const RuleTable& table = book.table("nec-240-24");
    const auto row = row_of(table, place);
    if (!row) return std::nullopt;
    Citation source = table.source;
    source.place += table.text(*row, table.column("paragraph"));
    return RuledOutPlace{source, whole(table, *row, "since")};
}

bool is_small_aluminum(const RuleBook& book, const Wire& wire) {
    return wire.metal == Metal::aluminum && wire.size && row_of(book.table("small-aluminum"), *wire.size);
}

}  // namespace doorcard
