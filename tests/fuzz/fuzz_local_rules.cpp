// SPDX-License-Identifier: MIT
// Local rules from any bytes: either a book whose figures can be reckoned with, or 1 to 50 complaints with places.
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "rules/amend.hpp"

namespace {

using namespace doorcard;

void demand(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "fuzz_local_rules: broken: %s\n", what);
    std::abort();
}

const RuleBook& code() {
    static const RuleBook book = built_in_book("NEC-2023").value();
    return book;
}

void demand_same_shape(const RuleTable& table, const RuleTable& before) {
    demand(table.columns == before.columns && table.rows.size() == before.rows.size(), "the shape of a table");
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        demand(table.rows[row].front() == before.rows[row].front(), "what a row is found by");
        for (std::size_t column = 0; column < table.columns.size(); ++column)
            if (const double* figure = std::get_if<double>(&before.rows[row][column]))
                demand(std::isfinite(table.number(row, column)) && (table.number(row, column) == 0) == (*figure == 0),
                       "a cell is a figure, a dash stays a dash");
    }
}

void demand_sound(const RuleBook& book) {
    demand(book.tables().size() == code().tables().size() && book.facts().size() == code().facts().size(), "all ids");
    for (const auto& [id, table] : book.tables()) demand_same_shape(table, code().table(id));
    for (const auto& [id, fact] : book.facts())
        demand(std::isfinite(fact.value) && fact.value > 0 && (!fact.least || fact.value >= *fact.least) &&
                   (!fact.most || fact.value <= *fact.most),
               "a figure within its bounds");
    for (const auto& [id, option] : book.options())
        demand(std::ranges::find(option.values, option.value) != option.values.end(),
               "an option has one of its values");
    for (const Amendment& amendment : book.amendments())
        demand(!amendment.source.standard.empty() && !amendment.source.amends.empty(), "an amendment is cited");
}

void demand_complaints(const std::vector<Complaint>& complaints) {
    demand(!complaints.empty() && complaints.size() <= 50, "1 to 50 complaints");
    demand(std::ranges::is_sorted(complaints, {}, &Complaint::place), "complaints by place");
    for (const Complaint& complaint : complaints)
        demand(complaint.place.line >= 1 && complaint.place.column >= 1 && !complaint.wrong.empty() &&
                   !complaint.right.empty(),
               "a complaint's place and words");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto book = amend(code(), {reinterpret_cast<const char*>(data), size});
    if (book)
        demand_sound(*book);
    else
        demand_complaints(book.error());
    return 0;
}
