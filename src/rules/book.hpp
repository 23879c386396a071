// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/message.hpp"
#include "base/outcome.hpp"
#include "base/quantity.hpp"

namespace doorcard {

/// Where a figure comes from: standard and edition, article or table. Never a maker. `practice` for figures without a
/// code source: they print as 'common practice'. Of a figure that local rules amend: the source that they name, and
/// what it amends.
struct Citation {
    std::string standard;  ///< "NEC 2023", "ANSI C84.1-2020"; of an amended figure "County ordinance 12-34"
    std::string place;     ///< "210.20(A)", "Table 310.16"; of an amended figure empty
    bool practice = false;
    std::string amends{};  ///< of an amended figure, the citation that it had: "NEC 2023 240.4(D)"
    std::string part{};    ///< and of a table, the rows that are amended: "size 12, metal cu"
    bool operator==(const Citation&) const = default;
    /// "NEC 2023 210.20(A)"; practice: "common practice"; "County ordinance 12-34, amending NEC 2023 240.4(D)".
    std::string text() const;
    /// The same, to be put into a language.
    Message message() const;
};

/// Which way a figure makes its rule laxer; where neither is said, that is not judged.
enum class Laxer { not_said, higher, lower };

using Cell = std::variant<double, std::string>;

/// A published table: rows of cells under named columns, with its citation and unit.
struct RuleTable {
    std::string id;
    std::string title;
    std::string unit;
    Citation source;
    std::vector<std::string> columns;
    std::vector<std::vector<Cell>> rows;
    Laxer laxer = Laxer::not_said;
    bool fixed = false;  ///< how the tables are read: local rules cannot amend it

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
    Laxer laxer = Laxer::not_said;
    bool fixed = false;                     ///< as of a table
    std::optional<double> least{}, most{};  ///< what local rules may make of it; absent: a twentieth, and twenty times
};

/// A reading open to dispute that local rules may choose, and what is chosen. Load totals take them from here.
struct RuleOption {
    std::string id;
    std::string title;
    std::vector<std::string> values;
    std::string usual;  ///< the value where nobody chooses
    std::string value;
    Citation source;
};

/// One figure that local rules changed, for results to show.
struct Amendment {
    std::string id;    ///< of a table, a fact or an option
    std::string part;  ///< of a table, the row: "size 12, metal cu"
    std::string title;
    Cell was, value;
    std::string unit;
    Citation source;
    std::string reason;
    bool laxer = false;  ///< makes the rule laxer than the code; false also where that is not judged
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
    /// What is chosen of an option: "pool-40".
    const std::string& option(std::string_view id) const;

    const std::map<std::string, RuleTable, std::less<>>& tables() const { return tables_; }
    const std::map<std::string, RuleFact, std::less<>>& facts() const { return facts_; }
    const std::map<std::string, Citation, std::less<>>& rules() const { return citations_; }  ///< [[rule]] alone
    const std::map<std::string, RuleOption, std::less<>>& options() const { return options_; }
    const std::vector<Amendment>& amendments() const { return amendments_; }  ///< in the order of the local rules

private:
    friend class BookReader;
    friend class LocalRules;
    std::string edition_;
    std::map<std::string, RuleTable, std::less<>> tables_;
    std::map<std::string, RuleFact, std::less<>> facts_;
    std::map<std::string, Citation, std::less<>> citations_;  // [[rule]]: an article a finding cites
    std::map<std::string, RuleOption, std::less<>> options_;
    std::vector<Amendment> amendments_;
};

/// Reads one text of tables over `base`; an id that stands in both is the text's from then on. No citation, no load:
/// every complaint has its line and column. Layout (docs/sources.md): `[book] editions` (absent: any edition),
/// `[[table]] id title unit source columns rows`, `[[fact]] id title value unit source`, `[[rule]] id source`,
/// `[[option]] id title values usual source`, `[[cite]] id source` (what `base` has under this id stands elsewhere in
/// this edition). The standard "NEC" is cited with the year of the edition.
/// Refuses: a text that is not for this edition, unknown and missing keys, ids that are not kebab-case or stand twice,
/// rows of another length than the columns or with text and numbers in one column, numbers that are not finite.
Outcome<RuleBook> read_book(std::string_view edition, std::string_view text, RuleBook base = {});

/// The editions that a text of tables says it is for; empty where it names none or cannot be read.
std::vector<std::string> editions_of(std::string_view text);

/// The book of an edition built into the library: what serves several editions, and over it what is of this one alone.
/// Nullopt for an edition that is not there.
std::optional<RuleBook> built_in_book(std::string_view edition);
std::vector<std::string> built_in_editions();

}  // namespace doorcard
