// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "base/place.hpp"

namespace doorcard {

/// Collects what is wrong with a file and keeps the first 50 by place, however many there are.
class Complaints {
public:
    static constexpr std::size_t most = 50;

    /// False where 50 earlier ones are known: the words need not be made.
    bool wants(Place place) const { return !full_ || place < last_wanted_; }
    void add(Place place, std::string wrong, std::string right);
    bool empty() const { return found_.empty(); }
    /// By place.
    std::vector<Complaint> sorted();

private:
    void keep_first();

    std::vector<Complaint> found_;
    bool full_ = false;
    Place last_wanted_;
};

}  // namespace doorcard
