// SPDX-License-Identifier: MIT
#pragma once
#include "base/message.hpp"
#include "survey/survey.hpp"

// What rooms and loads are called, wherever something is described.
namespace doorcard {

/// A title within a sentence: 'Hall' after another room is 'hall'; names of more than one capital stay as they are.
std::string in_sentence(std::string title);
Message in_sentence(Message);

/// The listed room of an outlet; null where it has none, or one in plain text.
const Room* room_of(const Survey&, const Outlet&);
/// The room's title or plain text, else its place; empty where nobody noted one.
Message room_name(const Survey&, const Outlet&);
/// The same for every outlet of one room.
std::string room_key(const Outlet&);

/// The load's title, else what its duty is called; may be empty.
Message load_name(const Load&);
/// True for equipment that a person would look for by name: ranges, dryers, all that is fixed; lamps are not.
bool is_notable(const Load&);

}  // namespace doorcard
