// SPDX-License-Identifier: MIT
#pragma once
#include "base/message.hpp"
#include "network/network.hpp"

namespace doorcard {

/// What is known of the handles that switch something off.
enum class HandleTrust {
    traced,      ///< proved by switching, test load or sight: the only one that may be called to be thrown
    claimed,     ///< only said
    not_traced,  ///< a circuit, or a breaker of it, is not known: treat as live
    kept_off,    ///< stays off: never a number to throw
    fire_alarm,  ///< stays on
    all_off,     ///< fed from several sides: only with everything off
};

/// One line of the directory by room: what it is, and all handles that must be off for it to be dead (with those of its
/// shared neutrals). Positions of breakers by panel and space.
struct RoomLine {
    Message what;
    HandleTrust trust = HandleTrust::not_traced;
    std::vector<std::size_t> breakers;  ///< none where not traced or kept off
    std::vector<std::size_t> kept_off;  ///< of its feeds, those that stay off
};

/// Under what heading lines stand.
enum class RoomHeading { room, no_room, circuits, panels };

struct RoomPart {
    RoomHeading heading = RoomHeading::room;
    Message name;  ///< of the room
    std::vector<RoomLine> lines;
};

/// What must stay on except in an emergency, and why: of breaker, outlet or load (`keep_on`).
struct LeaveOn {
    std::vector<std::size_t> breakers;  ///< its own, then the feeders above it; none where nobody knows
    HandleTrust trust = HandleTrust::traced;
    std::vector<std::string> why;
};

/// Where a RESET button is; one of both may be empty.
struct ResetPlace {
    Message room, label;
    bool operator==(const ResetPlace&) const = default;
};

/// The directory by room of what a panel and the panels below it feed. A room that they reach is told whole, with what
/// another panel feeds in it. Panels of another dwelling are no more than a line. Source: contract 4, card.
struct RoomDirectory {
    std::size_t panel = 0;
    std::vector<std::size_t> panels;  ///< whose handles are named: the panel itself first
    std::vector<RoomPart> parts;      ///< rooms in file order, outlets without, circuits without, panels
    std::vector<ResetPlace> resets;   ///< receptacles with a ground guard
    std::vector<LeaveOn> leave_on;
    std::vector<std::size_t> kept_off;  ///< handles that stay off, here and below, and in the lines
    int handles_not_traced = 0;         ///< of the panel and those below it
    int handles_in_use = 0;
};

RoomDirectory rooms_of(const Network&, std::size_t panel);

}  // namespace doorcard
