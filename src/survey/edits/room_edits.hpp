// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_room(const Room&);
/// Everything of it may be changed but its id.
Edit change_room(const Room&);
/// Outlets that name it keep the word: it is then the room's plain text.
Edit remove_room(std::string id);

}  // namespace doorcard
