// SPDX-License-Identifier: MIT
#pragma once
#include <compare>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

namespace doorcard {

/// At which places of a list an id may stand, found by its hash; the ids themselves stay in the list. A value that
/// shares with the one it was made of all but what differs. Lists are shorter than four thousand million.
class IdIndex {
public:
    struct Entry {
        std::uint32_t hash, at;
        auto operator<=>(const Entry&) const = default;
    };
    static std::uint32_t hash(std::string_view id);

    IdIndex() = default;
    explicit IdIndex(std::vector<Entry>);
    IdIndex with(Entry) const;
    IdIndex without(Entry) const;
    /// Without that entry, and all that stand behind it one place nearer.
    IdIndex closed_up(Entry) const;

    /// All of that hash, the first place first.
    std::span<const Entry> of(std::uint32_t hash) const;

private:
    using Part = std::vector<Entry>;  // by hash, then by place

    std::size_t part_of(std::uint32_t hash) const { return std::uint64_t{hash} * parts_.size() >> 32; }
    std::shared_ptr<const Part>& part_for(std::uint32_t hash) { return parts_[part_of(hash)]; }

    std::vector<std::shared_ptr<const Part>> parts_;  // each has an equal share of all hashes
    std::size_t size_ = 0;
};

}  // namespace doorcard
