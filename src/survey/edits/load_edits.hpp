// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_load(const Load&);
/// Everything of it may be changed but its id.
Edit change_load(const Load&);
Edit remove_load(std::string id, Mentions = Mentions::refuse);
/// Hangs it on one of an outlet, a circuit or a panel; what it hung on before is forgotten.
Edit hang_load_on_outlet(std::string id, const std::string& outlet);
Edit hang_load_on_circuit(std::string id, const std::string& circuit);
Edit hang_load_on_panel(std::string id, const std::string& panel);

}  // namespace doorcard
