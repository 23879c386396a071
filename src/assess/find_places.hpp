// SPDX-License-Identifier: MIT
#pragma once
#include "assess/find.hpp"

namespace doorcard {

/// Words that something says, split and folded, and how much it tells where they fit.
struct Telling {
    std::size_t thing = 0;  ///< of the place's things
    std::vector<std::string> words;
    double weight = 1;
    bool of_panel = false;  ///< says only in which panel: no place is found by that alone
    bool claimed = false;   ///< the old directory says it, whatever the breaker was proved to feed
};

/// A thing of a place and what it is called.
struct NamedThing {
    Address of;
    Message text;
};

/// A place as `find_in` may give it, with all that is said about it.
struct FindPlace {
    Match match;  ///< `of` and `text` are of the first thing
    std::vector<NamedThing> things;
    std::vector<Telling> tellings;
};

/// 'proved by switching', 'not proved: somebody said so' ...
Message sureness(const std::optional<Traced>&);

/// Every place of a survey: circuits on each of their breakers, breakers without, what hangs on none, panels.
std::vector<FindPlace> find_places(const Network&);

}  // namespace doorcard
