// SPDX-License-Identifier: MIT
#pragma once
#include "file/list_cells.hpp"
#include "file/list_columns.hpp"

namespace doorcard {

/// What one row of a list, or one half of a two-sided row, says of its spaces, before rows are joined to breakers.
struct ListEntry {
    Place place;
    std::string panel;
    std::vector<ListSpace> spaces;
    std::string text;  ///< as written; empty: none
    std::optional<double> amps;
    std::optional<int> poles;
    std::vector<Guard> guards;          ///< empty: the list says none, which is not looked at
    std::optional<std::string> device;  ///< fuse | pullout
    std::optional<Wire> wire;
    std::optional<double> va, watts;
    std::string notes;
    bool spare = false;
    bool empty_space = false;
    bool ditto = false;  ///< its text is that of the row above

    bool says_nothing() const { return text.empty() && !amps && !poles && !va && !watts && !spare && !empty_space; }
};

/// Reads the rows of one side one after the other, since a ditto means the row above.
class ListSideReader {
public:
    ListSideReader(Side side, std::string panel) : side_(std::move(side)), panel_(std::move(panel)) {}

    /// Nullopt for a row that says nothing on this side, and for one of sums.
    tl::expected<std::optional<ListEntry>, Complaint> read(const ListRow&);

private:
    std::string cell(const ListRow&, Column);
    bool is_empty(const ListRow&) const;
    bool is_total(const ListRow&) const;
    Place place_of(const ListRow&, Column) const;
    std::optional<Complaint> read_ratings(const ListRow&, ListEntry&);
    std::optional<Complaint> read_load(const ListRow&, ListEntry&);
    void read_words(const ListRow&, ListEntry&);
    void add_notes(const ListRow&, ListEntry&);

    Side side_;
    std::string panel_;
    std::map<Column, std::string> above_;
};

}  // namespace doorcard
