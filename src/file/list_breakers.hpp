// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <set>
#include <tuple>

#include "file/list_entries.hpp"

namespace doorcard {

/// The rows of a list put into the spaces of panels: rows joined to breakers of two and three poles, empty spaces, and
/// what cannot be.
class ListBreakers {
public:
    explicit ListBreakers(std::optional<int> spaces) : most_(spaces) {}

    /// The complaint, where the entry does not fit what stands there already; then nothing of it is kept.
    std::optional<Complaint> add(const ListEntry&);
    /// After the last entry: a breaker of more poles than were listed takes the next spaces of its side where they are
    /// free; else it is taken out again with a complaint.
    std::vector<Complaint> finish();

    const std::vector<ListEntry>& breakers() const { return breakers_; }
    const std::map<std::string, std::set<int>>& empty_spaces() const { return empty_; }
    const std::map<std::string, std::string>& panel_notes() const { return notes_; }
    /// In the order of the list.
    const std::vector<std::string>& panels() const { return panels_; }

private:
    using Key = std::tuple<std::string, int, char>;
    struct Taken {
        Place place;
        std::optional<std::size_t> breaker;
    };

    std::optional<Complaint> unfit(const ListEntry&) const;
    std::optional<Complaint> joined(const ListEntry&, std::size_t above);
    std::optional<std::size_t> open_above(const ListEntry&) const;
    const Taken* taken(const std::string& panel, ListSpace) const;
    void take(const ListEntry&, std::optional<std::size_t> breaker);
    bool extended(std::size_t breaker);
    void keep_empty(const ListEntry&);

    std::optional<int> most_;
    std::vector<ListEntry> breakers_;
    std::map<std::string, std::set<int>> empty_;
    std::map<std::string, std::string> notes_;
    std::vector<std::string> panels_;
    std::map<Key, Taken> taken_;
};

}  // namespace doorcard
