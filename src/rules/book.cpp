// SPDX-License-Identifier: MIT
#include "rules/book.hpp"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "base/built_in.hpp"
#include "base/message.hpp"

namespace doorcard {
namespace {

template <class Things>
const auto& thing(const Things& things, std::string_view id, std::string_view kind, const std::string& edition) {
    const auto found = things.find(id);
    if (found == things.end())
        throw std::out_of_range("no " + std::string(kind) + " '" + std::string(id) + "' in the rule book " + edition);
    return found->second;
}

}  // namespace

std::string Citation::text() const {
    if (practice) return tr("common practice");
    return place.empty() ? standard : standard + " " + place;
}

std::size_t RuleTable::column(std::string_view name) const {
    const auto found = std::ranges::find(columns, name);
    if (found == columns.end()) throw std::out_of_range("no column '" + std::string(name) + "' in table " + id);
    return static_cast<std::size_t>(found - columns.begin());
}

double RuleTable::number(std::size_t row, std::size_t column) const {
    return std::get<double>(rows.at(row).at(column));
}

const std::string& RuleTable::text(std::size_t row, std::size_t column) const {
    return std::get<std::string>(rows.at(row).at(column));
}

const RuleTable& RuleBook::table(std::string_view id) const { return thing(tables_, id, "table", edition_); }
const RuleFact& RuleBook::fact(std::string_view id) const { return thing(facts_, id, "fact", edition_); }

const Citation& RuleBook::cite(std::string_view id) const {
    if (const auto table = tables_.find(id); table != tables_.end()) return table->second.source;
    if (const auto fact = facts_.find(id); fact != facts_.end()) return fact->second.source;
    return thing(citations_, id, "rule, fact or table", edition_);
}

bool RuleBook::has(std::string_view id) const {
    return tables_.contains(id) || facts_.contains(id) || citations_.contains(id);
}

std::vector<std::string> built_in_editions() {
    std::set<std::string> editions;
    for (const BuiltIn& file : built_in_rule_tables())
        for (std::string& edition : editions_of(file.bytes)) editions.insert(std::move(edition));
    return {editions.begin(), editions.end()};
}

std::optional<RuleBook> built_in_book(std::string_view edition) {
    std::optional<RuleBook> book;
    for (const BuiltIn& file : built_in_rule_tables()) {
        const std::vector<std::string> editions = editions_of(file.bytes);
        if (std::ranges::find(editions, edition) == editions.end()) continue;
        Outcome<RuleBook> read = read_book(edition, file.bytes, std::move(book).value_or(RuleBook()));
        if (!read) throw std::logic_error(complaint_line(std::string(file.name) + ".toml", read.error().front()));
        book = *std::move(read);
    }
    return book;
}

}  // namespace doorcard
