// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_outlet(const Outlet&);
/// Everything of it may be changed but its id.
Edit change_outlet(const Outlet&);
Edit remove_outlet(std::string id, Mentions = Mentions::refuse);
/// The circuits that feed it; empty: not known.
Edit assign_outlet(std::string id, const Ids& circuits);
/// The outlet that it is fed through, or "home-run"; nullopt: not known.
Edit chain_outlet(std::string id, const std::optional<std::string>& upstream);

}  // namespace doorcard
