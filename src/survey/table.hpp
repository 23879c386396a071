// SPDX-License-Identifier: MIT
#pragma once
#include <algorithm>
#include <cstddef>
#include <memory>
#include <string_view>
#include <utility>
#include <vector>

#include "survey/id_index.hpp"
#include "survey/row_blocks.hpp"

namespace doorcard {

template <class T>
concept HasId = requires(const T& thing) {
    std::string_view(thing.id);
};

/// A list of things in file order, shared until changed: a copy costs one pointer, one thing changed, added or taken
/// out costs its neighbours, and what two lists share compares equal at once. Things that have an `id` are found by it.
template <class T>
class Table {
public:
    Table() : Table(std::vector<T>{}) {}
    explicit Table(std::vector<T> rows) : body_(std::make_shared<const Body>(std::move(rows))) {}

    /// A copy of all, to change many of them and make a new table.
    std::vector<T> rows() const { return {begin(), end()}; }
    auto begin() const { return body_->rows.begin(); }
    auto end() const { return body_->rows.end(); }
    std::size_t size() const { return body_->rows.size(); }
    bool empty() const { return size() == 0; }
    const T& operator[](std::size_t at) const { return body_->rows[at]; }

    /// The first thing of that id, or null.
    const T* find(std::string_view id) const {
        const std::size_t at = position(id);
        return at == size() ? nullptr : &(*this)[at];
    }
    /// Its position; size() where there is none.
    std::size_t position(std::string_view id) const {
        if constexpr (HasId<T>)
            for (const auto& entry : body_->index.of(IdIndex::hash(id)))
                if ((*this)[entry.at].id == id) return entry.at;
        return size();
    }
    bool contains(std::string_view id) const { return position(id) != size(); }
    /// How many things have that id.
    std::size_t count(std::string_view id) const {
        const auto may_be = body_->index.of(IdIndex::hash(id));
        return static_cast<std::size_t>(
            std::ranges::count_if(may_be, [&](const auto& entry) { return (*this)[entry.at].id == id; }));
    }

    /// The same list with one row changed, with one more behind the others, without one.
    Table with_row(std::size_t at, T row) const {
        IdIndex index = body_->index;
        if constexpr (HasId<T>)
            if (row.id != (*this)[at].id) index = index.without(entry_of(at)).with(Body::entry(row, at));
        return Table(body_->rows.with(at, std::move(row)), std::move(index));
    }
    Table with_added(T row) const {
        IdIndex index = body_->index;
        if constexpr (HasId<T>) index = index.with(Body::entry(row, size()));
        return Table(body_->rows.with_added(std::move(row)), std::move(index));
    }
    Table without_row(std::size_t at) const {
        IdIndex index = body_->index;
        if constexpr (HasId<T>) index = index.closed_up(entry_of(at));
        return Table(body_->rows.without(at), std::move(index));
    }

    /// See RowBlocks.
    template <class MarksOf, class Visit>
    void each_near(std::uint32_t mark, MarksOf marks_of, Visit visit) const {
        body_->rows.each_near(mark, marks_of, visit);
    }

    /// How many rows at the beginning, and at the end, both lists share: they are alike, others may be.
    std::size_t shared_first(const Table& other) const { return body_->rows.shared_first(other.body_->rows); }
    std::size_t shared_last(const Table& other) const { return body_->rows.shared_last(other.body_->rows); }

    /// One and the same list, not only an equal one.
    bool is_same(const Table& other) const { return body_ == other.body_; }
    bool operator==(const Table& other) const { return body_ == other.body_ || body_->rows == other.body_->rows; }

private:
    struct Body {
        RowBlocks<T> rows;
        IdIndex index;

        explicit Body(std::vector<T> given) : rows(std::move(given)), index(index_of(rows)) {}
        Body(RowBlocks<T> blocks, IdIndex ids) : rows(std::move(blocks)), index(std::move(ids)) {}

        static IdIndex::Entry entry(const T& row, std::size_t at) {
            return {IdIndex::hash(row.id), static_cast<std::uint32_t>(at)};
        }
        static IdIndex index_of(const RowBlocks<T>& rows) {
            if constexpr (HasId<T>) {
                std::vector<IdIndex::Entry> entries;
                entries.reserve(rows.size());
                for (const T& row : rows) entries.push_back(entry(row, entries.size()));
                return IdIndex(std::move(entries));
            } else {
                return IdIndex();
            }
        }
    };

    Table(RowBlocks<T> rows, IdIndex index) : body_(std::make_shared<const Body>(std::move(rows), std::move(index))) {}
    IdIndex::Entry entry_of(std::size_t at) const { return Body::entry((*this)[at], at); }

    std::shared_ptr<const Body> body_;
};

}  // namespace doorcard
