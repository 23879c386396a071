// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <nlohmann/json_fwd.hpp>

#include "assess/assessment.hpp"
#include "base/words.hpp"
#include "cli/terminal.hpp"

namespace doorcard {

/// What local rules changed, a line each; nothing where they changed nothing.
void write_rules_used(std::ostream&, const RulesUsed&, const Words&, const Terminal&);

/// Edition, amendments and options, for the results of commands.
nlohmann::ordered_json rules_used_json(const RulesUsed&);

}  // namespace doorcard
