// SPDX-License-Identifier: MIT
#include "assess/open_neutral.hpp"

#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

std::map<char, Phasor> leg_phasors(const Network& network, const SharedNeutral& neutral) {
    std::map<char, Phasor> volts;
    for (const Hot& hot : neutral.hots) {
        const auto& to_neutral = network.supply(network.panel_of(hot.breaker)).to_neutral;
        if (const auto at = to_neutral.find(hot.leg); at != to_neutral.end()) volts.emplace(*at);
    }
    return volts;
}

bool stands_high(const Reckoned& all, const SharedNeutral& neutral, const NeutralFigures& figures) {
    const double share = all.book.figure("open-neutral-told-share");
    const std::map<char, Phasor> nominal = leg_phasors(all.network, neutral);
    for (const auto& [leg, volts] : figures.open_volts)
        if (volts && exceeds(volts->value, share * std::abs(nominal.at(leg)))) return true;
    return false;
}

}  // namespace

std::map<char, std::optional<Volts>> open_volts(const Reckoned& all, const SharedNeutral& neutral,
                                                const LegSums& sums) {
    std::map<char, std::optional<Volts>> found;
    const std::map<char, Phasor> volts = leg_phasors(all.network, neutral);
    const bool placed = sums.unplaced_first() == 0 && sums.unplaced_third() == 0;
    Phasor current = 0, admittance = 0;
    for (const char leg : neutral.legs) {
        found[leg] = std::nullopt;
        const auto at = volts.find(leg);
        if (at == volts.end()) continue;
        const Phasor amps = sums.placed_to_neutral(leg).first;
        current += amps;
        admittance += amps / at->second;
    }
    if (!placed || std::abs(admittance) == 0) return found;
    for (const auto& [leg, phasor] : volts)
        if (std::abs(sums.placed_to_neutral(leg).first) > 0)
            found[leg] = Volts(std::abs(phasor - current / admittance));
    return found;
}

Message open_volts_text(const Reckoned& all, const SharedNeutral& neutral, const NeutralFigures& figures) {
    if (!stands_high(all, neutral, figures)) return {};
    std::vector<Message::Part> legs;
    for (const auto& [leg, volts] : figures.open_volts)
        if (volts) legs.emplace_back(Message{tr("leg {0} {1:.0f} V"), {std::string(1, leg), volts->value}});
    return and_list(std::move(legs));
}

}  // namespace doorcard
