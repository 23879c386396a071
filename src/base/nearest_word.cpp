// SPDX-License-Identifier: MIT
#include "base/nearest_word.hpp"

#include <algorithm>
#include <array>

namespace doorcard {
namespace {

constexpr std::size_t longest = 96;  // words beyond it are compared by their first letters

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::size_t slips_forgiven(std::size_t letters) {
    if (letters < 2) return 0;
    if (letters <= 7) return 1;
    return letters <= 12 ? 2 : 3;
}

}  // namespace

std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t most) {
    a = a.substr(0, longest);
    b = b.substr(0, longest);
    if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most) return most + 1;
    using Row = std::array<std::size_t, longest + 1>;
    Row before_last{}, last{}, row{};
    for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = lower(a[i - 1]) == lower(b[j - 1]);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (same ? 0 : 1)});
            const bool swapped =
                i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]);
            if (swapped) row[j] = std::min(row[j], before_last[j - 2] + 1);
            least = std::min(least, row[j]);
        }
        if (least > most) return most + 1;
        before_last = last;
        last = row;
    }
    return std::min(last[b.size()], most + 1);
}

void NearestWord::offer(std::string_view word) {
    if (nearest_ && distance_ == 0) return;
    const std::size_t distance = edit_distance(written_, word, nearest_ ? distance_ - 1 : longest);
    if (nearest_ && distance >= distance_) return;
    distance_ = distance;
    nearest_ = word;
}

std::optional<std::string_view> NearestWord::meant() const {
    if (!nearest_ || distance_ > slips_forgiven(std::max(written_.size(), nearest_->size()))) return std::nullopt;
    return nearest_;
}

std::optional<std::string_view> nearest_word(std::string_view written, std::span<const std::string_view> known) {
    NearestWord search(written);
    for (const std::string_view word : known) search.offer(word);
    return search.meant();
}

}  // namespace doorcard
