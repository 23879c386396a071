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

    /// The larger of calculated and measured; an absent one is less than any.
    std::optional<Amperes> most() const { return std::max(calculated, measured); }
    bool most_is_measured() const { return measured && measured == most(); }
    /// The larger one over the rating; nullopt where one of the two is not known.
    std::optional<double> share() const;
};

/// A neutral that rows of the face share.
struct RowNeutral {
    std::string id;
    std::optional<Amperes> amps;
    bool is_on_one_leg = false;  ///< two of its hots sit on the same leg: their currents add
    bool is_over = false;        ///< its amperes are past what its wire may carry
    bool is_danger() const { return is_on_one_leg || is_over; }
};

/// The worst of what was found on a row, and how many findings there are.
struct RowFinding {
    Severity severity = Severity::notice;
    Message text;
    std::size_t count = 0;
};

/// All that the face of one panel is drawn from. Made of the part of the survey around that panel, so that it costs
/// little in a large building.
struct FaceFacts {
    Network network;        ///< of the part
    std::size_t panel = 0;  ///< position in the part
    PanelDirectory directory;
    std::map<std::string, RowLoad> loads;        ///< by breaker's id
    std::map<std::string, RowNeutral> neutrals;  ///< by id
    std::map<std::string, RowFinding> findings;  ///< by breaker's id
    std::optional<RowFinding> panel_finding;     ///< of the panel itself

    const Panel& panel_of() const { return network.survey().panels[panel]; }
    const Breaker* breaker_of(const DirectoryRow& row) const {
        return row.breaker ? &network.survey().breakers[*row.breaker] : nullptr;
    }
    const RowLoad* load_of(const DirectoryRow&) const;  ///< null for what carries none: spares, handles that are off
    const RowFinding* finding_of(const DirectoryRow&) const;  ///< null where nothing was found
};

/// `panel` is the position in the whole survey.
FaceFacts face_facts(const Assessed&, std::size_t panel);

}  // namespace doorcard
