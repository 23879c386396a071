// SPDX-License-Identifier: MIT
#include "base/place.hpp"

#include <fmt/format.h>

namespace doorcard {

std::string complaint_line(const std::string& file, const Complaint& complaint) {
    return fmt::format("{}:{}:{}: {}; {}", file, complaint.place.line, complaint.place.column, complaint.wrong,
                       complaint.right);
}

}  // namespace doorcard
