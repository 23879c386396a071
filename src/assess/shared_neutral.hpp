// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

/// The current of one hot at one moment, from a reading: total RMS, lag of the fundamental in degrees, third over
/// fundamental.
struct HotReading {
    Hot hot;
    const PanelSupply* supply = nullptr;
    Amperes amps;
    double lag_degrees = 0;
    double third = 0;  ///< third harmonic over fundamental, RMS
};

/// One moment at which a neutral, or all its hots, were read together.
struct NeutralMoment {
    std::optional<Amperes> measured;  ///< of the neutral
    std::vector<HotReading> hots;     ///< one per hot, as in the neutral; empty unless every hot was read

    /// hypot(|sum I1|, |sum I3|) of the hots, each with its own power factor and thirds.
    std::optional<Amperes> explained() const;
    /// The same with the fundamentals at these lags instead, degrees.
    Amperes explained_at(const std::vector<double>& lags) const;
};

/// The moments in which this neutral, or each of its hots, was read.
std::vector<NeutralMoment> neutral_moments(const Reckoned&, const SharedNeutral&);

/// The highest neutral current over every choice of which hots are on, each hot with all its line-to-neutral loads,
/// scaled down to its device's rating where they exceed it (reckoning 'Neutrals'). Nullopt where no load is known.
std::optional<Amperes> worst_subset(const Reckoned&, const SharedNeutral&);

}  // namespace doorcard
