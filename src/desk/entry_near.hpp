// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "survey/survey.hpp"

namespace doorcard {

/// The entry of a table that belongs to a thing, for a key of it: the thing itself, the breaker of a circuit, the only
/// circuit of a breaker, a circuit of a neutral, a load of a circuit that lacks the key (or has it, where that is what
/// is wrong), a reading of it, the source that comes in there. Nullopt where there is none.
std::optional<std::string> entry_near(const Survey&, const Address&, std::string_view table, std::string_view key);

}  // namespace doorcard
