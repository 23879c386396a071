// SPDX-License-Identifier: MIT
#pragma once
#include <array>
#include <string>
#include <vector>

#include "assess/assessment.hpp"
#include "base/words.hpp"

namespace doorcard {

/// How a finding came about, for whoever opens it: what was reckoned, a line each, with figures rounded for reading.
struct FindingDetail {
    std::vector<Message> arithmetic;
};
FindingDetail detail_of(const Finding&, const Survey&, const Assessment&);

/// "1 danger, 2 warnings, 14 notices" of counts by severity; 'nothing found ...' where all are 0.
std::string counts_of_findings(const std::array<long, 4>& by_severity, const Words&);

}  // namespace doorcard
