// SPDX-License-Identifier: MIT
#pragma once
#include <array>

#include "network/load_current.hpp"

namespace doorcard {

/// Phasor sums of loads, leg by leg and in the neutral: fundamentals and thirds apart (reckoning, 'Amperes of a leg').
/// Where a load's leg is not known it counts in full on every leg it may use, and in the neutral by its size.
class LegSums {
public:
    /// Adds `count` of a load, its current scaled by `scale`. A load without a known current adds only its VA; one on
    /// legs that the supply does not have counts on every leg of it.
    void add(const LoadCurrent&, const PanelSupply&, double count, double scale = 1.0);
    void add(const LegSums&);

    bool any_known() const { return any_known_; }
    /// Angle by which the sum of the volt-amperes lags, in degrees; 0 where there is none.
    double angle_degrees() const;
    /// hypot(|sum I1|, |sum I3|) of a leg.
    Amperes amps(char leg) const { return size(leg, all_); }
    /// The same of the line-to-neutral loads alone.
    Amperes neutral_part(char leg) const { return size(leg, to_neutral_); }
    VoltAmperes va(char leg) const { return VoltAmperes(va_[place(leg)]); }
    /// The current of the neutral that carries these loads, and its thirds.
    Amperes neutral_amps() const;
    Amperes triplen_amps() const { return Amperes(std::abs(neutral_.third) + unplaced_third_); }

    /// Fundamental and third of one leg, as phasors.
    struct Pair {
        Phasor first = 0;
        Phasor third = 0;
    };
    const Pair& leg(char leg) const { return all_[place(leg)]; }
    /// Line-to-neutral phasors of a leg; of loads whose leg is known only where `placed_only`.
    const Pair& placed_to_neutral(char leg) const { return placed_[place(leg)]; }
    double unplaced_first() const { return unplaced_first_; }
    double unplaced_third() const { return unplaced_third_; }

private:
    using Legs = std::array<Pair, 3>;
    static std::size_t place(char leg) { return static_cast<std::size_t>(leg - 'A'); }
    static Amperes size(char leg, const Legs& legs) {
        return Amperes(std::hypot(std::abs(legs[place(leg)].first), std::abs(legs[place(leg)].third)));
    }
    void add_here(const LoadCurrent&, const PanelSupply&, double count, double scale);
    void add_to_neutral(const LoadCurrent&, const PanelSupply&, double first, double third);
    void add_line_to_line(const LoadCurrent&, const PanelSupply&, double first, double third);

    Legs all_, to_neutral_, placed_;
    std::array<double, 3> va_ = {};
    Pair neutral_;
    Phasor volt_amperes_ = 0;
    double unplaced_first_ = 0, unplaced_third_ = 0;
    bool any_known_ = false;
};

/// 100 x the largest deviation from the mean, over that mean; all idle 0; fewer than two figures: nullopt.
std::optional<double> imbalance_percent(const std::vector<Amperes>& legs);

}  // namespace doorcard
