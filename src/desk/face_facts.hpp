// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>

#include "assess/directory.hpp"
#include "assess/reassess.hpp"

namespace doorcard {

/// Of a row of the face: amperes of its highest leg, unrounded.
struct RowLoad {
    std::optional<Amperes> rating, calculated, measured;
    bool is_at_least = false;  ///< something of it is not known: the calculated is a floor
};

/// A neutral that rows of the face share.
struct RowNeutral {
    std::string id;
    std::optional<Amperes> amps;
    bool is_on_one_leg = false;  ///< two of its hots sit on the same leg: their currents add
};

/// All that the face of one panel is drawn from. Made of the part of the survey around that panel, so that it costs
/// little in a large building.
struct FaceFacts {
    Network network;        ///< of the part
    std::size_t panel = 0;  ///< position in the part
    PanelDirectory directory;
    std::map<std::string, RowLoad> loads;        ///< by breaker's id
    std::map<std::string, RowNeutral> neutrals;  ///< by id
    std::map<std::string, Severity> worst;       ///< of a breaker's row, by its id
    std::map<std::string, Message> worst_text;

    const Panel& panel_of() const { return network.survey().panels[panel]; }
};

/// `panel` is the position in the whole survey.
FaceFacts face_facts(const Assessed&, std::size_t panel);

}  // namespace doorcard
