// SPDX-License-Identifier: MIT
#pragma once
#include "base/message.hpp"
#include "network/network.hpp"

namespace doorcard {

/// How much a composed text says, from the least up: each step is taken only where texts would be alike.
enum class Detail { plain, room, floor, label, number };

/// What the directory says of a circuit: its `purpose`, else composed from its outlets and loads (rooms, kinds, notable
/// equipment). Empty where nothing is known. `number` stands in the last step of detail. Nothing that ages
/// (`keep_on`) goes in.
Message circuit_text(const Network&, std::size_t circuit, Detail, int number = 0);

/// Texts of these circuits, made distinct from each other and from `taken`, which nothing may repeat. A `purpose` stays
/// as it was written. In the order of `circuits`.
std::vector<Message> distinct_texts(const Network&, const std::vector<std::size_t>& circuits,
                                    const std::vector<Message>& taken);

/// What the catalogue calls a source: its title, else its kind.
Message source_name(const Source&);
/// The panel's title, else its id.
Message panel_name(const Panel&);

/// For comparing texts: English, lower case, without punctuation, one space between words.
std::string plain_form(const Message&);

}  // namespace doorcard
