// SPDX-License-Identifier: MIT
#include "network/load_current.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "rules/lookups.hpp"

namespace doorcard {
namespace {

constexpr double sqrt3 = std::numbers::sqrt3;

/// Nearer, by ratio, to the line-to-neutral nominal than to the line-to-line one.
bool nearer_to_neutral(Volts marked, const PanelSupply& supply) {
    const auto neutral = supply.volts_to_neutral(supply.neutral_legs().empty() ? ' ' : supply.neutral_legs().front());
    const auto line = supply.volts_line_to_line();
    if (!neutral) return false;
    if (!line) return true;
    return std::abs(std::log(marked / *neutral)) < std::abs(std::log(marked / *line));
}

/// "AN+BN" -> "AB", "BA" -> "AB".
std::string leg_letters(const std::string& legs) {
    std::string letters;
    for (const char c : legs)
        if (c >= 'A' && c <= 'C') letters += c;
    std::sort(letters.begin(), letters.end());
    return letters;
}

std::string low_legs(const LoadPlace& place) {
    std::string low = place.legs;
    std::erase(low, place.supply->high_leg);
    return low.empty() ? place.legs : low;
}

/// Sets placing, legs and whether they are known.
void place_load(const Load& load, const LoadPlace& place, LoadCurrent& current) {
    const auto put = [&](Placing placing, std::string legs, bool known) {
        current.placing = placing;
        current.legs = std::move(legs);
        current.legs_known = known;
    };
    if (place.legs.size() == 1) return put(Placing::line_to_neutral, place.legs, true);
    if (load.phases == 3 || load.legs == "ABC") return put(Placing::three_phase, place.legs, true);
    if (load.legs) {
        const std::string letters = leg_letters(*load.legs);
        const bool there =
            std::ranges::all_of(letters, [&](char l) { return place.legs.find(l) != std::string::npos; });
        const Placing placing = load.legs->find('N') != std::string::npos && letters.size() > 1 ? Placing::halves
                                : letters.size() > 1                                            ? Placing::line_to_line
                                                     : Placing::line_to_neutral;
        return put(placing, there ? letters : place.legs, there);
    }
    if (load.volts && nearer_to_neutral(*load.volts, *place.supply)) {
        const std::string low = low_legs(place);
        return put(Placing::line_to_neutral, low, low.size() == 1);
    }
    put(Placing::line_to_line, place.legs, place.legs.size() == 2);
}

std::optional<Volts> nominal_volts(const LoadCurrent& current, const PanelSupply& supply) {
    if (current.placing == Placing::line_to_neutral || current.placing == Placing::halves)
        return supply.volts_to_neutral(current.legs.front());
    return supply.volts_line_to_line();
}

double power_factor(const Load& load) { return load.power_factor.value_or(load.hp ? 0.8 : 1.0); }

bool hp_alone(const Load& load) { return load.hp && !load.amps && !load.va && !load.watts; }

/// The current that hp states by itself; where nothing else makes the current known, that of the minimum circuit
/// ampacity.
std::optional<Amperes> stated_current(const Load& load, const LoadCurrent& current, const RuleBook& book) {
    if (load.va || load.watts || load.amps) return std::nullopt;
    std::optional<Amperes> stated;
    if (hp_alone(load) && current.nominal)
        stated = motor_current(book, *load.hp, *current.nominal, current.placing == Placing::three_phase ? 3 : 1);
    return stated ? stated : load.min_circuit_a;
}

std::optional<VoltAmperes> va_of_one(const Load& load, const LoadCurrent& current, const RuleBook& book) {
    if (load.va) return load.va;
    if (load.watts) return *load.watts / PowerFactor(power_factor(load));
    const double phases = current.placing == Placing::three_phase || load.phases == 3 ? sqrt3 : 1.0;
    if (load.amps) {
        const std::optional<Volts> volts = load.volts ? load.volts : current.nominal;
        if (!volts || current.placing == Placing::halves) return std::nullopt;
        return *load.amps * *volts * phases;
    }
    const auto stated = stated_current(load, current, book);
    if (!stated || !current.nominal) return std::nullopt;
    return *stated * *current.nominal * phases;
}

std::optional<Amperes> amperes_of_one(const Load& load, const LoadCurrent& current, const RuleBook& book) {
    if (const auto stated = stated_current(load, current, book)) return stated;
    if (!current.va || !current.nominal) return std::nullopt;
    const Volts nominal = *current.nominal;
    if (current.placing == Placing::halves) return *current.va / 2.0 / nominal;
    const double phases = current.placing == Placing::three_phase ? sqrt3 : 1.0;
    const Volts marked = load.volts.value_or(nominal);
    if (marked > nominal && is_resistive(load.duty_or_general()))
        return *current.va / (marked * phases) * (nominal / marked);
    return *current.va / (std::min(nominal, marked) * phases);
}

}  // namespace

bool is_resistive(Duty duty) {
    constexpr std::array resistive = {Duty::heating, Duty::water_heater, Duty::range,
                                      Duty::cooktop, Duty::oven,         Duty::dryer};
    return std::ranges::find(resistive, duty) != resistive.end();
}

LoadCurrent current_of(const Load& load, const LoadPlace& place, const RuleBook& book) {
    LoadCurrent current;
    const bool placed = place.supply && place.supply->system && !place.legs.empty();
    if (placed) {
        place_load(load, place, current);
        current.nominal = nominal_volts(current, *place.supply);
        const bool says_conductors = load.legs || load.phases == 3 || load.volts;
        if (place.on_panel && !says_conductors) current.nominal.reset();
    }
    current.va = va_of_one(load, current, book);
    if (!placed) return current;
    const auto total = amperes_of_one(load, current, book);
    if (!total) return current;
    const double h = current.placing == Placing::three_phase ? 0.0 : load.third_harmonic.value_or(0.0);
    const bool by_hp = hp_alone(load) && current.nominal &&
                       motor_current(book, *load.hp, *current.nominal, current.placing == Placing::three_phase ? 3 : 1);
    const bool third_on_top = !load.va && !load.amps && (load.watts || by_hp);
    const Amperes fundamental = third_on_top ? *total : *total / std::sqrt(1 + h * h);
    current.fundamental = fundamental;
    current.third = fundamental * h;
    const double lag = std::acos(power_factor(load)) * 180 / std::numbers::pi;
    current.lag_degrees = load.leading.value_or(false) ? -lag : lag;
    return current;
}

}  // namespace doorcard
