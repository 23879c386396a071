// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <vector>

#include "survey/table.hpp"

namespace doorcard {

/// How the rows of a table before an edit stand to those after it: alike at both ends; in the middle row by row where
/// there are as many, else not at all.
class RowChanges {
public:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    template <class T>
    RowChanges(const Table<T>& before, const Table<T>& after) : before_(before.size()), after_(after.size()) {
        const std::size_t least = std::min(before_, after_);
        head_ = before.is_same(after) ? least : before.shared_first(after);
        while (head_ < least && before[head_] == after[head_]) ++head_;
        tail_ = std::min(before.shared_last(after), least - head_);
        while (tail_ < least - head_ && before[before_ - 1 - tail_] == after[after_ - 1 - tail_]) ++tail_;
        const auto is_changed = [&](std::size_t i) {
            return before_ != after_ || (&before[i] != &after[i] && !(before[i] == after[i]));
        };
        for (std::size_t i = head_; i < before_ - tail_; ++i)
            if (is_changed(i)) gone.push_back(i);
        for (std::size_t i = head_; i < after_ - tail_; ++i)
            if (is_changed(i)) come.push_back(i);
    }

    std::vector<std::size_t> gone;  ///< positions before the edit of rows that it changed or took
    std::vector<std::size_t> come;  ///< positions after the edit of rows that it changed or added
    bool any() const { return !gone.empty() || !come.empty(); }

    /// Where an unchanged row of after the edit stood before it; for a changed or new one without meaning.
    std::size_t stood_at(std::size_t after) const {
        if (after >= after_ - tail_) return after + before_ - after_;
        return after < before_ ? after : none;
    }

private:
    std::size_t before_, after_;
    std::size_t head_ = 0, tail_ = 0;
};

}  // namespace doorcard
