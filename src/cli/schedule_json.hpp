// SPDX-License-Identifier: MIT
#pragma once
#include <nlohmann/json_fwd.hpp>

#include "assess/schedule.hpp"
#include "base/words.hpp"

namespace doorcard {

/// The result of `schedule` (contract 7). Empty `panels`: all.
nlohmann::ordered_json schedule_json(const Network&, const std::vector<PanelSchedule>&,
                                     const std::vector<std::string>& panels, const Words&);

}  // namespace doorcard
