// SPDX-License-Identifier: MIT
#pragma once
#include <nlohmann/json_fwd.hpp>

#include "base/words.hpp"
#include "network/network.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

/// The result of `card` as JSON (docs/schemas/card.schema.json), of the panels that the sheet holds; `sides`: pages of
/// the sheet that make one card, 1 or 2.
nlohmann::ordered_json card_json(const Network&, const Sheet&, int sides, const Words&);

}  // namespace doorcard
