// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"

namespace doorcard {

struct Room {
    std::string id;
    std::optional<std::string> title;
    std::optional<std::string> floor;
    std::optional<std::string> place;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Room&) const = default;
};

enum class OutletKind { receptacle, lighting, equipment, switch_, box };

struct Outlet {
    std::string id;
    Ids circuits;  ///< several: fed by all at once; empty: unknown, or inherited through `upstream`
    std::optional<std::string> upstream;  ///< an outlet's id or "home-run"; absent: order unknown
    std::optional<Length> run;            ///< one way, from upstream to here
    std::optional<std::string> room;      ///< a room's id or plain text
    std::optional<OutletKind> kind;
    std::optional<std::string> label;
    std::optional<std::string> config;  ///< NEMA configuration
    std::optional<Amperes> amps;
    std::optional<int> receptacles;  ///< = 2 for a receptacle
    std::optional<int> yokes;        ///< = 1
    std::optional<std::string> strap;
    std::optional<std::string> box;
    std::optional<Ids> switched_by;
    Guards guards;
    std::optional<std::string> wired;      ///< ok | reversed | open-ground | open-neutral | neutral-as-ground
    std::optional<std::string> terminals;  ///< screw | push-in | pigtail
    std::optional<std::string> place;
    std::optional<Ids> old_breakers;
    std::optional<std::string> keep_on;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Outlet&) const = default;
};

}  // namespace doorcard
