// SPDX-License-Identifier: MIT
#pragma once
#include "base/message.hpp"
#include "network/network.hpp"

namespace doorcard {

/// What a composed text says beside rooms, kinds and equipment: each only where texts would be alike without it.
struct Detail {
    bool room = false;       ///< of equipment
    bool floor = false;      ///< where all of its rooms are on one
    std::size_t labels = 0;  ///< so many labels of its outlets
};

/// What the directory says of a circuit: its `purpose`, else composed from its outlets and loads (rooms, kinds, notable
/// equipment), else, where the old directory alone tells of it, its breaker's old label. Empty where nothing is known.
/// Nothing that ages (`keep_on`) goes in.
Message circuit_text(const Network&, std::size_t circuit, const Detail& = {});

/// Texts of these circuits, each unlike the others: with room, floor or labels, in the end with a number. A `purpose`
/// stays as it was written. In the order of `circuits`.
std::vector<Message> distinct_texts(const Network&, const std::vector<std::size_t>& circuits);

/// What the catalogue calls a source: its title, else its kind.
Message source_name(const Source&);
/// The panel's title, else its id.
Message panel_name(const Panel&);

/// For comparing texts: English, lower case, without punctuation, one space between words.
std::string plain_form(const Message&);

}  // namespace doorcard
