// SPDX-License-Identifier: MIT
#include "network/panel_supply.hpp"

#include <algorithm>
#include <numbers>
#include <numeric>
#include <set>

namespace doorcard {
namespace {

std::string ascending(std::string letters) {
    std::sort(letters.begin(), letters.end());
    letters.erase(std::unique(letters.begin(), letters.end()), letters.end());
    return letters;
}

/// What one feed brings: its system, its letters in the order of the feeding spaces, and where they stand.
struct Incoming {
    std::optional<System> system;
    std::string letters;
    char high_leg = 0;
    std::map<char, Phasor> to_neutral;
};

/// Contract 2, 'Angles': volts to neutral of the legs of a system by their letters, rotation A-B-C.
std::map<char, Phasor> standing_legs(System system, const std::string& legs, char high_leg) {
    const SystemFacts& known = facts(system);
    std::map<char, Phasor> stands;
    if (known.wye) {
        const double volts =
            known.to_neutral.value != 0 ? known.to_neutral.value : known.line_to_line.value / std::numbers::sqrt3;
        for (const char leg : legs) stands[leg] = volts * unit_phasor(-120.0 * (leg - 'A'));
        return stands;
    }
    double next = 0;  // the first low leg at 0, the second opposite
    for (const char leg : legs) {
        if (system == System::high_leg_240 && leg == high_leg) continue;
        stands[leg] = known.to_neutral.value * unit_phasor(next);
        next += 180;
    }
    if (system == System::high_leg_240)
        stands[high_leg] = known.to_neutral.value * std::numbers::sqrt3 * unit_phasor(high_leg == 'B' ? -90 : 90);
    return stands;
}

class Resolver {
public:
    Resolver(const Survey& survey, const std::vector<std::size_t>& panel_of,
             const std::vector<std::vector<std::size_t>>& breakers_in)
        : survey_(survey), panel_of_(panel_of), breakers_in_(breakers_in) {
        found_.panels.resize(survey.panels.size());
        found_.breaker_legs.resize(survey.breakers.size());
        done_.resize(survey.panels.size());
        for (std::size_t i = 0; i < survey.panels.size(); ++i)
            found_.geometries.emplace_back(survey.panels[i], highest_used(i));
    }

    Supplies all() {
        for (std::size_t i = 0; i < survey_.panels.size(); ++i) resolve(i);
        return std::move(found_);
    }

private:
    int highest_used(std::size_t panel) const {
        int highest = 0;
        for (const std::size_t b : breakers_in_[panel])
            for (const int space : survey_.breakers[b].spaces) highest = std::max(highest, space);
        return highest;
    }

    void resolve(std::size_t panel) {
        if (done_[panel]) return;
        done_[panel] = true;
        found_.panels[panel] = supply_of(survey_.panels[panel]);
        for (const std::size_t b : breakers_in_[panel]) found_.breaker_legs[b] = legs_of(panel, survey_.breakers[b]);
    }

    Incoming from_source(const Source& source, const Panel& panel) const {
        Incoming in{source.system, "", 0, {}};
        if (!source.system) return in;
        in.letters = std::string("ABC").substr(0, static_cast<std::size_t>(facts(*source.system).legs));
        if (*source.system == System::high_leg_240) in.high_leg = panel.high_leg.value_or('B');
        in.to_neutral = standing_legs(*source.system, in.letters, in.high_leg);
        return in;
    }

    Incoming from_breaker(std::size_t breaker) {
        const std::size_t above = panel_of_[breaker];
        if (above >= survey_.panels.size()) return {};
        resolve(above);
        const PanelSupply& supply = found_.panels[above];
        const std::string& poles = found_.breaker_legs[breaker];
        Incoming in{cut_system(supply, poles), poles, 0, {}};
        if (poles.find(supply.high_leg) != std::string::npos) in.high_leg = supply.high_leg;
        for (const char leg : poles)
            if (const auto stands = supply.to_neutral.find(leg); stands != supply.to_neutral.end())
                in.to_neutral.insert(*stands);
        return in;
    }

    /// The first feed that is known: of several, one feeds at a time.
    Incoming incoming(const Panel& panel) {
        Incoming first;
        for (const std::string& feed : panel.fed_by) {
            Incoming in;
            if (const Source* source = survey_.sources.find(feed))
                in = from_source(*source, panel);
            else if (const std::size_t b = survey_.breakers.position(feed); b < survey_.breakers.size())
                in = from_breaker(b);
            if (in.system) return in;
            if (first.letters.empty()) first = in;
        }
        return first;
    }

    PanelSupply supply_of(const Panel& panel) {
        const Incoming in = incoming(panel);
        const bool own_letters = panel.transformer.has_value();
        PanelSupply supply;
        supply.system = panel.system ? panel.system : in.system;
        supply.down_given = panel.legs_down.has_value();
        if (supply.down_given) supply.down = *panel.legs_down;
        if (!supply.system) {  // the letters that come in are known all the same
            const std::string fed = ascending(in.letters);
            if (!own_letters && !fed.empty() && fed.front() != '?') {
                supply.legs = fed;
                supply.high_leg = in.high_leg;
                if (!supply.down_given) supply.down = fed.size() == 3 ? fed : in.letters;
            }
            return supply;
        }
        const std::size_t count = static_cast<std::size_t>(facts(*supply.system).legs);
        supply.legs = letters(supply, in, own_letters, count);
        const bool kept_high = !own_letters && in.high_leg != 0 && supply.has(in.high_leg);
        if (kept_high)
            supply.high_leg = in.high_leg;
        else if (*supply.system == System::high_leg_240)
            supply.high_leg = panel.high_leg.value_or('B');
        if (!supply.down_given) supply.down = down(supply, in, own_letters, count);
        const bool keeps = !own_letters && in.system == supply.system && ascending(in.letters) == supply.legs;
        supply.to_neutral = keeps && in.to_neutral.size() == count
                                ? in.to_neutral
                                : standing_legs(*supply.system, supply.legs, supply.high_leg);
        return supply;
    }

    static std::string letters(const PanelSupply& supply, const Incoming& in, bool own_letters, std::size_t count) {
        if (const std::string given = ascending(supply.down); supply.down_given && given.size() == count) return given;
        if (const std::string fed = ascending(in.letters); !own_letters && fed.size() == count && fed.front() != '?')
            return fed;
        return std::string("ABC").substr(0, count);
    }

    static std::string down(const PanelSupply& supply, const Incoming& in, bool own_letters, std::size_t count) {
        if (count == 3 || own_letters || ascending(in.letters) != supply.legs || in.letters.size() != count)
            return supply.legs;
        return in.letters;
    }

    std::string legs_of(std::size_t panel, const Breaker& breaker) const {
        const bool alternate = survey_.panels[panel].half_legs == "alternate";
        std::string legs;
        for (const std::size_t pole : poles_by_space(breaker)) {
            if (breaker.legs) {
                legs += pole < breaker.legs->size() ? (*breaker.legs)[pole] : '?';
                continue;
            }
            const char half = pole < breaker.halves.size() ? breaker.halves[pole] : ' ';
            legs += found_.geometries[panel].leg(found_.panels[panel], breaker.spaces[pole], half, alternate);
        }
        const PanelSupply& supply = found_.panels[panel];
        if (supply.system)  // letters that do not come in here are not known ones
            std::ranges::replace_if(
                legs, [&](char leg) { return !supply.has(leg); }, '?');
        return legs;
    }

    const Survey& survey_;
    const std::vector<std::size_t>& panel_of_;
    const std::vector<std::vector<std::size_t>>& breakers_in_;
    Supplies found_;
    std::vector<bool> done_;
};

}  // namespace

std::vector<std::size_t> poles_by_space(const Breaker& breaker) {
    std::vector<std::size_t> order(breaker.spaces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (breaker.spaces[a] != breaker.spaces[b]) return breaker.spaces[a] < breaker.spaces[b];
        return a < breaker.halves.size() && b < breaker.halves.size() && breaker.halves[a] < breaker.halves[b];
    });
    return order;
}

std::optional<System> cut_system(const PanelSupply& feeding, const std::string& pole_legs) {
    const std::string legs = ascending(pole_legs);
    if (!feeding.system || legs.empty() || legs.back() == '?' || legs.front() == '?') return std::nullopt;
    if (legs.size() != pole_legs.size()) return std::nullopt;
    for (const char leg : legs)
        if (!feeding.has(leg)) return std::nullopt;
    const System system = *feeding.system;
    if (legs.size() == feeding.legs.size()) return system;
    const bool with_high_leg = feeding.high_leg != 0 && legs.find(feeding.high_leg) != std::string::npos;
    if (legs.size() == 2 && system == System::wye_208) return System::network_120_208;
    if (legs.size() == 2 && system == System::high_leg_240 && !with_high_leg) return System::split_120_240;
    const auto volts = feeding.volts_to_neutral(legs.front());
    if (legs.size() == 1 && volts == facts(System::two_wire_120).to_neutral) return System::two_wire_120;
    return std::nullopt;
}

Supplies resolve_supplies(const Survey& survey, const std::vector<std::size_t>& panel_of,
                          const std::vector<std::vector<std::size_t>>& breakers_in) {
    return Resolver(survey, panel_of, breakers_in).all();
}

}  // namespace doorcard
