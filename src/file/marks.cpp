// SPDX-License-Identifier: MIT
#include "file/marks.hpp"

#include <algorithm>

namespace doorcard {

Marks::Marks() {
    for (const KeyTable& table : all_tables())
        tables_.push_back({{}, std::vector<std::vector<Mark>>(table.keys.size())});
}

std::span<const Mark> Marks::of(std::string_view table, std::string_view key) const {
    const KeyTable& named = table_named(table);
    const auto field = std::ranges::find(named.keys, key, &Field::name);
    return of(named).by_field[static_cast<std::size_t>(field - named.keys.begin())];
}

std::span<const Mark> of_row(std::span<const Mark> marks, std::size_t row) {
    const auto wanted = static_cast<std::uint32_t>(row);
    return {std::ranges::lower_bound(marks, wanted, {}, &Mark::row),
            std::ranges::upper_bound(marks, wanted, {}, &Mark::row)};
}

}  // namespace doorcard
