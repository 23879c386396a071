// SPDX-License-Identifier: MIT
#pragma once
#include <nlohmann/json_fwd.hpp>

#include "base/words.hpp"
#include "network/network.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

/// The result of `card` as JSON (docs/schemas/card.schema.json), of the panels that the sheet holds.
nlohmann::ordered_json card_json(const Network&, const Sheet&, const Words&);

}  // namespace doorcard
