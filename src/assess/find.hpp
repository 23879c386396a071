// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "assess/directory.hpp"

namespace doorcard {

/// A place where something hangs that was looked for: a circuit on a breaker, a breaker alone, an outlet or load whose
/// circuit is not known, a panel.
struct Match {
    Address of;    ///< the thing whose words fit best
    Message text;  ///< what it is called
    Message on;    ///< what the directory calls its circuit; empty where that is `text`
    std::optional<std::size_t> circuit;
    std::optional<std::size_t> breaker;  ///< of a panel the one that feeds it; nullopt: not known, or a source
    std::optional<std::size_t> panel;
    std::vector<Position> positions;
    std::optional<std::string> traced;     ///< how, as the survey file says it
    bool proved = false;                   ///< by switching, test load or sight
    Message sure;                          ///< how sure it is that this breaker feeds it
    std::vector<std::size_t> also_fed_by;  ///< further breakers: off only when all are
};

/// A word of the question that stands nowhere, and the one that was taken for it.
struct Slip {
    std::string wanted, taken;
    bool operator==(const Slip&) const = default;
};

/// What was found, the best first. Near misses are looked for only where nothing fits as it was written.
struct FindResult {
    std::vector<Match> matches;
    std::vector<Slip> slips;
};

/// Every word must fit somewhere on one place: the words of its circuit, outlets, rooms, loads, old labels, notes and
/// panel. Case and accents do not matter; English and Spanish find each other. Pure.
FindResult find_in(const Network&, std::string_view question);

}  // namespace doorcard
