// SPDX-License-Identifier: MIT
#pragma once
#include <algorithm>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <memory>
#include <mutex>
#include <utility>
#include <vector>

namespace doorcard {

/// Rows in blocks that several lists share: another list with one row changed, added or taken out has a block of its
/// own and all others in common. Never empty blocks; the first of each is counted, so that a row is found by its place.
template <class T>
class RowBlocks {
    /// Some rows, and marks of what stands in them, looked for once.
    struct Block {
        explicit Block(std::vector<T> given) : rows(std::move(given)) {}
        template <class MarksOf>
        bool has(std::uint32_t mark, MarksOf marks_of) const {
            std::call_once(looked, [&] {
                for (const T& row : rows) marks_of(row, marks);
                std::ranges::sort(marks);
            });
            return std::ranges::binary_search(marks, mark);
        }
        std::vector<T> rows;
        mutable std::once_flag looked;
        mutable std::vector<std::uint32_t> marks;
    };
    static constexpr std::size_t most = 32;  // rows in a block

public:
    class Iterator {
    public:
        using iterator_category = std::random_access_iterator_tag;
        using value_type = T;
        using difference_type = std::ptrdiff_t;
        using pointer = const T*;
        using reference = const T&;

        Iterator() = default;
        Iterator(const RowBlocks* rows, std::size_t at) : rows_(rows), at_(at) { find(); }
        const T& operator*() const { return *row_; }
        const T* operator->() const { return row_; }
        const T& operator[](difference_type n) const { return *(*this + n); }
        Iterator& operator++() {
            ++at_;
            if (++row_ == block_end_) find();
            return *this;
        }
        Iterator& operator--() { return *this += -1; }
        Iterator operator++(int) { return std::exchange(*this, *this + 1); }
        Iterator operator--(int) { return std::exchange(*this, *this - 1); }
        Iterator& operator+=(difference_type n) { return *this = Iterator(rows_, at_ + static_cast<std::size_t>(n)); }
        Iterator& operator-=(difference_type n) { return *this += -n; }
        friend Iterator operator+(Iterator it, difference_type n) { return it += n; }
        friend Iterator operator+(difference_type n, Iterator it) { return it += n; }
        friend Iterator operator-(Iterator it, difference_type n) { return it -= n; }
        friend difference_type operator-(const Iterator& a, const Iterator& b) {
            return static_cast<difference_type>(a.at_) - static_cast<difference_type>(b.at_);
        }
        bool operator==(const Iterator& other) const { return at_ == other.at_; }
        std::strong_ordering operator<=>(const Iterator& other) const { return at_ <=> other.at_; }

    private:
        void find() {
            if (at_ >= rows_->size()) return;
            const std::size_t b = rows_->block_of(at_);
            const std::vector<T>& block = rows_->blocks_[b]->rows;
            row_ = block.data() + (at_ - rows_->first_[b]);
            block_end_ = block.data() + block.size();
        }

        const RowBlocks* rows_ = nullptr;
        std::size_t at_ = 0;
        const T* row_ = nullptr;
        const T* block_end_ = nullptr;
    };

    explicit RowBlocks(std::vector<T> rows) {
        for (std::size_t at = 0; at < rows.size(); at += most) {
            const auto begin = rows.begin() + static_cast<std::ptrdiff_t>(at);
            const auto end = begin + static_cast<std::ptrdiff_t>(std::min(most, rows.size() - at));
            append(std::vector<T>(std::move_iterator(begin), std::move_iterator(end)));
        }
    }

    std::size_t size() const { return first_.back(); }
    Iterator begin() const { return {this, 0}; }
    Iterator end() const { return {this, size()}; }
    const T& operator[](std::size_t at) const {
        const std::size_t b = block_of(at);
        return blocks_[b]->rows[at - first_[b]];
    }

    RowBlocks with(std::size_t at, T row) const {
        RowBlocks rows = *this;
        const std::size_t b = block_of(at);
        std::vector<T> block = blocks_[b]->rows;
        block[at - first_[b]] = std::move(row);
        rows.blocks_[b] = std::make_shared<const Block>(std::move(block));
        return rows;
    }

    RowBlocks with_added(T row) const {
        RowBlocks rows = *this;
        std::vector<T> block;
        if (!blocks_.empty() && blocks_.back()->rows.size() < most) {
            block.reserve(blocks_.back()->rows.size() + 1);
            block = blocks_.back()->rows;
            rows.blocks_.pop_back();
            rows.first_.pop_back();
        }
        block.push_back(std::move(row));
        rows.append(std::move(block));
        return rows;
    }

    RowBlocks without(std::size_t at) const {
        RowBlocks rows = *this;
        const std::size_t b = block_of(at);
        const auto place = [b](auto& list) { return list.begin() + static_cast<std::ptrdiff_t>(b); };
        std::vector<T> block = blocks_[b]->rows;
        block.erase(block.begin() + static_cast<std::ptrdiff_t>(at - first_[b]));
        for (std::size_t i = b + 1; i < rows.first_.size(); ++i) --rows.first_[i];
        if (block.empty()) {
            rows.blocks_.erase(place(rows.blocks_));
            rows.first_.erase(place(rows.first_));
        } else {
            rows.blocks_[b] = std::make_shared<const Block>(std::move(block));
        }
        const bool is_sparse = rows.size() * 2 < rows.blocks_.size() * most && rows.blocks_.size() > 1;
        return is_sparse ? RowBlocks(std::vector<T>(rows.begin(), rows.end())) : rows;
    }

    /// Calls `visit(place, row)` for every row of the blocks in which some row has that mark. `marks_of(row, marks)`
    /// puts the marks of a row behind others: always the same ones.
    template <class MarksOf, class Visit>
    void each_near(std::uint32_t mark, MarksOf marks_of, Visit visit) const {
        for (std::size_t b = 0; b < blocks_.size(); ++b) {
            if (!blocks_[b]->has(mark, marks_of)) continue;
            std::size_t at = first_[b];
            for (const T& row : blocks_[b]->rows) visit(at++, row);
        }
    }

    std::size_t shared_first(const RowBlocks& other) const {
        std::size_t b = 0;
        while (b < blocks_.size() && b < other.blocks_.size() && blocks_[b] == other.blocks_[b]) ++b;
        return first_[b];
    }
    std::size_t shared_last(const RowBlocks& other) const {
        std::size_t n = 0;
        const std::size_t own = blocks_.size(), others = other.blocks_.size();
        while (n < own && n < others && blocks_[own - 1 - n] == other.blocks_[others - 1 - n]) ++n;
        return size() - first_[own - n];
    }

    bool operator==(const RowBlocks& other) const {
        if (first_ != other.first_) return size() == other.size() && std::equal(begin(), end(), other.begin());
        return std::equal(blocks_.begin(), blocks_.end(), other.blocks_.begin(),
                          [](const auto& one, const auto& two) { return one == two || one->rows == two->rows; });
    }

private:
    /// Blocks may be short of rows, never longer: the one wanted is there or behind.
    std::size_t block_of(std::size_t at) const {
        std::size_t b = at / most;
        while (first_[b + 1] <= at) ++b;
        return b;
    }
    void append(std::vector<T> block) {
        first_.push_back(first_.back() + block.size());
        blocks_.push_back(std::make_shared<const Block>(std::move(block)));
    }

    std::vector<std::shared_ptr<const Block>> blocks_;
    std::vector<std::size_t> first_ = {0};  // by block its first row, and at the end how many rows there are
};

}  // namespace doorcard
