// SPDX-License-Identifier: MIT
#include "network/leg_sums.hpp"

#include <algorithm>
#include <numbers>
#include <numeric>

namespace doorcard {
namespace {

Phasor direction(const PanelSupply& supply, char leg) {
    const Phasor volts = supply.to_neutral.at(leg);
    return volts / std::abs(volts);
}

Phasor cubed(Phasor direction) { return direction * direction * direction; }  // three times the angle

bool stands_on(const LoadCurrent& load, const PanelSupply& supply) {
    return std::ranges::all_of(load.legs, [&](char leg) { return supply.to_neutral.contains(leg); });
}

/// A load whose legs a panel does not have (a survey that contradicts itself): its leg is not known there.
LoadCurrent on_any_leg_of(const PanelSupply& supply, LoadCurrent load) {
    load.legs = supply.legs;
    load.legs_known = false;
    if (supply.legs.size() == 1) load.placing = Placing::line_to_neutral;
    return load;
}

/// The share of a load's VA that a leg it uses takes.
double va_share(const LoadCurrent& load) {
    switch (load.placing) {
        case Placing::line_to_neutral:
            return 1;
        case Placing::line_to_line:
            return 0.5;
        case Placing::halves:
            return 0.5;
        case Placing::three_phase:
            return 1.0 / 3;
    }
    return 1;
}

}  // namespace

void LegSums::add(const LoadCurrent& load, const PanelSupply& supply, double count, double scale) {
    if (stands_on(load, supply))
        add_here(load, supply, count, scale);
    else if (!supply.to_neutral.empty())
        add_here(on_any_leg_of(supply, load), supply, count, scale);
}

void LegSums::add_here(const LoadCurrent& load, const PanelSupply& supply, double count, double scale) {
    for (const char leg : load.legs)
        if (load.va) va_[place(leg)] += load.va->value * count * va_share(load);
    if (!load.known()) return;
    any_known_ = true;
    if (load.va) volt_amperes_ += load.va->value * count * scale * unit_phasor(load.lag_degrees);
    const double first = load.fundamental->value * count * scale;
    const double third = load.third.value * count * scale;
    switch (load.placing) {
        case Placing::line_to_neutral:
        case Placing::halves:
            add_to_neutral(load, supply, first, third);
            break;
        case Placing::line_to_line:
            add_line_to_line(load, supply, first, third);
            break;
        case Placing::three_phase:
            for (const char leg : load.legs)
                all_[place(leg)].first += first * supply.middle_direction(leg) * unit_phasor(-load.lag_degrees);
            break;
    }
}

void LegSums::add_to_neutral(const LoadCurrent& load, const PanelSupply& supply, double first, double third) {
    const bool placed = load.legs_known;
    for (const char leg : load.legs) {
        const Phasor one = first * direction(supply, leg) * unit_phasor(-load.lag_degrees);
        const Phasor three = third * cubed(direction(supply, leg));
        for (Legs* legs : {&all_, &to_neutral_}) {
            (*legs)[place(leg)].first += one;
            (*legs)[place(leg)].third += three;
        }
        if (!placed) continue;
        placed_[place(leg)].first += one;
        placed_[place(leg)].third += three;
        neutral_.first += one;
        neutral_.third += three;
    }
    if (placed) return;
    unplaced_first_ += first;
    unplaced_third_ += third;
}

void LegSums::add_line_to_line(const LoadCurrent& load, const PanelSupply& supply, double first, double third) {
    if (load.legs_known) {
        const char a = load.legs[0];
        const char b = load.legs[1];
        const Phasor along = supply.line_direction(a, b);
        const Phasor one = first * along * unit_phasor(-load.lag_degrees);
        const Phasor three = third * cubed(along);
        all_[place(a)].first += one;
        all_[place(b)].first -= one;
        all_[place(a)].third += three;
        all_[place(b)].third -= three;
        return;
    }
    for (const char leg : load.legs) {
        all_[place(leg)].first += first * direction(supply, leg) * unit_phasor(-load.lag_degrees);
        all_[place(leg)].third += third * cubed(direction(supply, leg));
    }
}

void LegSums::add(const LegSums& other) {
    const auto join = [](Legs& mine, const Legs& theirs) {
        for (std::size_t i = 0; i < mine.size(); ++i) {
            mine[i].first += theirs[i].first;
            mine[i].third += theirs[i].third;
        }
    };
    join(all_, other.all_);
    join(to_neutral_, other.to_neutral_);
    join(placed_, other.placed_);
    for (std::size_t i = 0; i < va_.size(); ++i) va_[i] += other.va_[i];
    neutral_.first += other.neutral_.first;
    neutral_.third += other.neutral_.third;
    volt_amperes_ += other.volt_amperes_;
    unplaced_first_ += other.unplaced_first_;
    unplaced_third_ += other.unplaced_third_;
    any_known_ = any_known_ || other.any_known_;
}

double LegSums::angle_degrees() const {
    return volt_amperes_ == Phasor(0) ? 0 : std::arg(volt_amperes_) * 180 / std::numbers::pi;
}

Amperes LegSums::neutral_amps() const {
    return Amperes(std::hypot(std::abs(neutral_.first) + unplaced_first_, std::abs(neutral_.third) + unplaced_third_));
}

std::optional<double> imbalance_percent(const std::vector<Amperes>& legs) {
    if (legs.size() < 2) return std::nullopt;
    const Amperes mean = std::accumulate(legs.begin(), legs.end(), Amperes(0)) / static_cast<double>(legs.size());
    if (mean.value == 0) return 0.0;
    Amperes largest(0);
    for (const Amperes leg : legs) largest = std::max(largest, abs(leg - mean));
    return 100 * (largest / mean);
}

}  // namespace doorcard
