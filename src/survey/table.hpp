// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <memory>
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

    bool operator==(const Table& other) const { return body_ == other.body_ || rows() == other.rows(); }

private:
    struct Body {
        std::vector<T> rows;
        std::unordered_map<std::string_view, std::size_t> index;  // views into rows, which never move

        explicit Body(std::vector<T> given) : rows(std::move(given)) {
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
