// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/outcome.hpp"
#include "base/quantity.hpp"

namespace doorcard {

/// Where a figure comes from: standard and edition, article or table. Never a maker. `practice` for figures without a
/// code source: they print as 'common practice'.
struct Citation {
    std::string standard;  ///< "NEC 2023", "ANSI C84.1-2020"
    std::string place;     ///< "210.20(A)", "Table 310.16"
    bool practice = false;
    bool operator==(const Citation&) const = default;
    /// "NEC 2023 210.20(A)"; practice: "common practice".
    std::string text() const;
};

using Cell = std::variant<double, std::string>;

/// A published table: rows of cells under named columns, with its citation and unit.
struct RuleTable {
    std::string id;
    std::string title;
    std::string unit;
    Citation source;
    std::vector<std::string> columns;
    std::vector<std::vector<Cell>> rows;

    /// Position of a column; throws std::out_of_range for a column that the table has not (our own mistake).
    std::size_t column(std::string_view name) const;
    double number(std::size_t row, std::size_t column) const;  ///< throws std::bad_variant_access on text
    const std::string& text(std::size_t row, std::size_t column) const;
};

/// One published number (or a practice figure), with its citation.
struct RuleFact {
    std::string id;
    std::string title;
    std::string unit;
    Citation source;
    double value = 0;
};

/// The published values of one edition, as data: tables, single figures, and what an article is cited as.
/// Ids are lower case and kebab-case ("nec-310-16", "continuous-factor"); the same id is the same thing in every
/// edition. Asking for an id that is not there throws std::out_of_range: the calculators ask only for what the book
/// must have.
class RuleBook {
public:
    RuleBook() = default;
    const std::string& edition() const { return edition_; }  ///< "NEC-2023"
    const RuleTable& table(std::string_view id) const;
    const RuleFact& fact(std::string_view id) const;
    double figure(std::string_view id) const { return fact(id).value; }
    /// The citation of a rule, fact or table id.
    const Citation& cite(std::string_view id) const;
    bool has(std::string_view id) const;  ///< a table, fact or rule

    const std::map<std::string, RuleTable, std::less<>>& tables() const { return tables_; }
    const std::map<std::string, RuleFact, std::less<>>& facts() const { return facts_; }
    const std::map<std::string, Citation, std::less<>>& rules() const { return citations_; }  ///< [[rule]] alone

private:
    friend class BookReader;
    std::string edition_;
    std::map<std::string, RuleTable, std::less<>> tables_;
    std::map<std::string, RuleFact, std::less<>> facts_;
    std::map<std::string, Citation, std::less<>> citations_;  // [[rule]]: an article a finding cites
};

/// Reads one text of tables over `base`; an id that stands in both is the text's from then on. No citation, no load:
/// every complaint has its line and column. Layout (docs/sources.md): `[book] editions` (absent: any edition),
/// `[[table]] id title unit source columns rows`, `[[fact]] id title value unit source`, `[[rule]] id source`.
/// The standard "NEC" is cited with the year of the edition.
/// Refuses: a text that is not for this edition, unknown and missing keys, ids that are not kebab-case or stand twice,
/// rows of another length than the columns or with text and numbers in one column, numbers that are not finite.
Outcome<RuleBook> read_book(std::string_view edition, std::string_view text, RuleBook base = {});

/// The editions that a text of tables says it is for; empty where it names none or cannot be read.
std::vector<std::string> editions_of(std::string_view text);

/// The book built into the library: "NEC-2023". Nullopt for an edition that is not there.
std::optional<RuleBook> built_in_book(std::string_view edition);
std::vector<std::string> built_in_editions();

}  // namespace doorcard
