// SPDX-License-Identifier: MIT
#pragma once
#include <climits>
#include <cstdint>
#include <optional>
#include <string>

#include "base/message.hpp"
#include "rules/book.hpp"
#include "survey/address.hpp"

namespace doorcard {

enum class Severity { danger, warning, caution, notice };  ///< in this order of weight
enum class Basis { required, advised, practice, gap };
enum class Applies { new_work, existing, any };

/// Where a thing stands in a list by panel and space: the panel's position and the lowest space; things without a panel
/// come last.
struct Standing {
    std::size_t panel = SIZE_MAX;
    int space = INT_MAX;
    auto operator<=>(const Standing&) const = default;
};

/// One thing that a rule found. Figures are unrounded, in `unit` ("A", "V", "%", "count", "" where there is none).
struct Finding {
    std::string rule;  ///< kebab-case: the stable key in JSON, tests and docs
    Severity severity = Severity::notice;
    Basis basis = Basis::required;
    Applies applies = Applies::any;
    Address of;    ///< one address, no legs
    Message text;  ///< what was found
    std::optional<double> value;
    std::optional<double> limit;
    std::string unit;
    std::vector<Citation> sources;  ///< at least one
    Message remedy;                 ///< what would put it right
    Standing standing;              ///< of what it is of; known once it is sorted into the list
    bool operator==(const Finding&) const = default;
};

/// A default that was used: listed in results and on sheets.
struct Assumption {
    std::string of;  ///< address
    std::string key;
    std::string value;
    bool operator==(const Assumption&) const = default;
};

std::string_view name_of(Severity);  ///< "danger" ...
std::string_view name_of(Basis);
std::string_view name_of(Applies);  ///< "new-work", "existing", "any"

}  // namespace doorcard
