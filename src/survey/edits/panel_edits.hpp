// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_panel(const Panel&);
/// Everything of it may be changed but its id.
Edit change_panel(const Panel&);
Edit remove_panel(std::string id, Mentions = Mentions::refuse);
/// What feeds it; empty: not known.
Edit feed_panel(std::string id, const Ids& fed_by);

}  // namespace doorcard
