// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_source(const Source&);
/// Everything of it may be changed but its id.
Edit change_source(const Source&);
Edit remove_source(std::string id, Mentions = Mentions::refuse);

}  // namespace doorcard
