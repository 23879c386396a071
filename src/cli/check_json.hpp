// SPDX-License-Identifier: MIT
#pragma once
#include <nlohmann/json_fwd.hpp>

#include "assess/assessment.hpp"
#include "base/words.hpp"

namespace doorcard {

/// The result of `check` as JSON (docs/schemas/check.schema.json): unrounded, what is unknown is null.
nlohmann::ordered_json check_json(const Assessment&, const Words&);

/// Citations as one text: "NEC 2023 210.4(B); NEC 2023 240.15(B)(1)".
std::string sources_text(const std::vector<Citation>&);

}  // namespace doorcard
