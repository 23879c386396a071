// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace doorcard {

/// A list of things in file order, shared until changed: a copy costs one pointer, and two tables with the same pointer
/// compare equal at once. Things that have an `id` are found by it. To change one, take `rows()`, change it, make a new
/// table.
template <class T>
class Table {
public:
    Table() : Table(std::vector<T>{}) {}
    explicit Table(std::vector<T> rows) : body_(std::make_shared<const Body>(std::move(rows))) {}

    const std::vector<T>& rows() const { return body_->rows; }
    auto begin() const { return rows().begin(); }
    auto end() const { return rows().end(); }
    std::size_t size() const { return rows().size(); }
    bool empty() const { return rows().empty(); }
    const T& operator[](std::size_t index) const { return rows()[index]; }

    /// The first thing of that id, or null.
    const T* find(std::string_view id) const {
        const auto found = body_->index.find(id);
        return found == body_->index.end() ? nullptr : &rows()[found->second];
    }
    /// Its position; size() where there is none.
    std::size_t position(std::string_view id) const {
        const auto found = body_->index.find(id);
        return found == body_->index.end() ? size() : found->second;
    }
    bool contains(std::string_view id) const { return find(id) != nullptr; }

    /// The same list with one row changed; it remembers which, so that comparing the two is quick.
    Table with_row(std::size_t at, T row) const {
        std::vector<T> changed = rows();
        changed[at] = std::move(row);
        Table table;
        table.body_ = std::make_shared<const Body>(std::move(changed), body_, at);
        return table;
    }
    /// The row that was changed, where this list was made of the other one by `with_row`.
    std::optional<std::size_t> changed_row_of(const Table& other) const {
        return body_->made_of.lock() == other.body_ ? std::optional(body_->changed) : std::nullopt;
    }

    /// One and the same list, not only an equal one.
    bool is_same(const Table& other) const { return body_ == other.body_; }
    bool operator==(const Table& other) const { return body_ == other.body_ || rows() == other.rows(); }

private:
    struct Body {
        std::vector<T> rows;
        std::unordered_map<std::string_view, std::size_t> index;  // views into rows, which never move

        std::weak_ptr<const Body> made_of;
        std::size_t changed = 0;

        explicit Body(std::vector<T> given, std::weak_ptr<const Body> base = {}, std::size_t at = 0)
            : rows(std::move(given)), made_of(std::move(base)), changed(at) {
            if constexpr (requires(const T& thing) { thing.id; }) {
                index.reserve(rows.size());
                for (std::size_t i = 0; i < rows.size(); ++i) index.emplace(rows[i].id, i);
            }
        }
        Body(const Body&) = delete;
        Body& operator=(const Body&) = delete;
    };
    std::shared_ptr<const Body> body_;
};

}  // namespace doorcard
