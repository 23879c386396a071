// SPDX-License-Identifier: MIT
#include "file/complaints.hpp"

#include <algorithm>

namespace doorcard {

void Complaints::add(Place place, std::string wrong, std::string right) {
    if (!wants(place)) return;
    found_.push_back({place, std::move(wrong), std::move(right)});
    if (found_.size() >= 4 * most) keep_first();
}

void Complaints::keep_first() {
    std::ranges::stable_sort(found_, {}, &Complaint::place);
    if (found_.size() < most) return;
    found_.resize(most);
    full_ = true;
    last_wanted_ = found_.back().place;
}

std::vector<Complaint> Complaints::sorted() {
    keep_first();
    return found_;
}

}  // namespace doorcard
