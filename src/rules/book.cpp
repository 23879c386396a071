// SPDX-License-Identifier: MIT
#include "rules/book.hpp"

#include <algorithm>
#include <stdexcept>

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
    if (!amends.empty()) return standard + ", amending " + amends + (part.empty() ? "" : " for " + part);
    return place.empty() ? standard : standard + " " + place;
}

Message Citation::message() const {
    if (practice) return {tr("common practice"), {}};
    if (amends.empty()) return verbatim(text());
    Message code = amends == Citation{"", "", true}.text() ? Message{amends, {}} : verbatim(amends);
    if (part.empty()) return {tr("{0}, amending {1}"), {standard, std::move(code)}};
    return {tr("{0}, amending {1} for {2}"), {standard, std::move(code), part}};
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

const std::string& RuleBook::option(std::string_view id) const { return thing(options_, id, "option", edition_).value; }

}  // namespace doorcard
