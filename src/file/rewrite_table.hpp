// SPDX-License-Identifier: MIT
#pragma once
#include "file/rewrite_keys.hpp"
#include "survey/difference.hpp"

namespace doorcard {

/// Splices what is different between two surveys into their text, table by table.
class TableRewriter {
public:
    TableRewriter(Splices&, const TomlOutline&, const Survey& before, const Survey& after);
    /// `[survey]`, `[grounding]`, `[mapping]`.
    void rewrite_one(const KeyTable&);
    void rewrite_many(const KeyTable&, const TableDifference&);

private:
    struct Entry {
        EntryScope scope;
        std::vector<Span> blocks;  ///< with their comments; of an element of a list, that element
    };
    struct Placed {
        std::size_t at;
        bool before_what_is_there;
    };

    // entries as they stand
    const std::vector<std::vector<std::size_t>>* headed(const KeyTable&) const;
    const Statement* root_value(const KeyTable&) const;
    Entry headed_entry(const std::vector<std::size_t>& sections) const;
    EntryScope scope_of_one(const KeyTable&) const;

    void rewrite_headed(const KeyTable&, const TableDifference&);
    void rewrite_listed(const KeyTable&, const TableDifference&, const Statement& list);
    void rewrite_anew(const KeyTable&);
    void change_keys(const KeyTable&, EntryScope, std::size_t row_before, std::size_t row_after);
    void remove_entry(const Entry&);
    std::string cut_entry(const Entry&);
    Placed place_of_first(const KeyTable&) const;
    void put_blocks(const KeyTable&, Placed, const std::vector<std::string>& blocks);
    std::string new_entry(const KeyTable&, std::size_t row_after) const;
    std::string blank_lines(const KeyTable&) const;
    LineStyle style_near(const KeyTable&) const;
    void make_headers_lists(const KeyTable&);
    void demand_entries(const KeyTable&, std::size_t count) const;

    Splices& splices_;
    std::string_view text_;
    const TomlOutline& outline_;
    const Survey& before_;
    const Survey& after_;
    std::vector<Statement> root_;
    std::string newline_;
};

}  // namespace doorcard
