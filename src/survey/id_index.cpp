// SPDX-License-Identifier: MIT
#include "survey/id_index.hpp"

#include <algorithm>
#include <functional>

namespace doorcard {
namespace {

constexpr std::size_t usual_part = 64, longest_part = 512;

}  // namespace

std::uint32_t IdIndex::hash(std::string_view id) {
    return static_cast<std::uint32_t>(std::hash<std::string_view>()(id) >> 16);
}

IdIndex::IdIndex(std::vector<Entry> entries) : size_(entries.size()) {
    std::vector<Part> parts(size_ / usual_part + 1);
    parts_.resize(parts.size());
    for (Part& part : parts) part.reserve(parts.size() > 1 ? usual_part * 3 / 2 : size_);
    for (const Entry& entry : entries) parts[part_of(entry.hash)].push_back(entry);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        std::ranges::sort(parts[i]);
        parts_[i] = std::make_shared<const Part>(std::move(parts[i]));
    }
}

IdIndex IdIndex::with(Entry entry) const {
    if (size_ + 1 > parts_.size() * longest_part) {
        std::vector<Entry> all = {entry};
        for (const auto& part : parts_) all.insert(all.end(), part->begin(), part->end());
        return IdIndex(std::move(all));
    }
    IdIndex index = *this;
    auto& place = index.part_for(entry.hash);
    Part part = *place;
    part.insert(std::ranges::lower_bound(part, entry), entry);
    place = std::make_shared<const Part>(std::move(part));
    ++index.size_;
    return index;
}

IdIndex IdIndex::without(Entry entry) const {
    IdIndex index = *this;
    auto& place = index.part_for(entry.hash);
    Part part = *place;
    std::erase(part, entry);
    place = std::make_shared<const Part>(std::move(part));
    --index.size_;
    return index;
}

IdIndex IdIndex::closed_up(Entry entry) const {
    IdIndex index = without(entry);
    for (auto& place : index.parts_) {
        Part part = *place;
        for (Entry& other : part)
            if (other.at > entry.at) --other.at;
        place = std::make_shared<const Part>(std::move(part));
    }
    return index;
}

std::span<const IdIndex::Entry> IdIndex::of(std::uint32_t hash) const {
    if (parts_.empty()) return {};
    const Part& part = *parts_[part_of(hash)];
    return std::ranges::equal_range(part, hash, {}, &Entry::hash);
}

}  // namespace doorcard
