// SPDX-License-Identifier: MIT
#include "assess/standing.hpp"

#include <algorithm>

namespace doorcard {
namespace {

Standing standing_of_breaker(const Network& network, std::size_t breaker) {
    const Breaker& given = network.survey().breakers[breaker];
    const auto first = std::ranges::min_element(given.spaces);
    return {network.panel_of(breaker), first == given.spaces.end() ? INT_MAX : *first};
}

Standing standing_of_circuit(const Network& network, std::size_t circuit) {
    const auto& breakers = network.breakers_of(circuit);
    return breakers.empty() ? Standing{} : standing_of_breaker(network, breakers.front());
}

}  // namespace

std::size_t panel_of_circuit(const Network& network, std::size_t circuit) {
    const auto& breakers = network.breakers_of(circuit);
    return breakers.empty() ? network.survey().panels.size() : network.panel_of(breakers.front());
}

Standing standing(const Network& network, const Address& of) {
    const Survey& survey = network.survey();
    const auto at = [&](const auto& table) { return table.position(of.id); };
    switch (of.kind) {
        case ThingKind::panel:
            return {at(survey.panels), 0};
        case ThingKind::breaker:
            if (at(survey.breakers) < survey.breakers.size()) return standing_of_breaker(network, at(survey.breakers));
            break;
        case ThingKind::circuit:
        case ThingKind::ground:
            if (at(survey.circuits) < survey.circuits.size()) return standing_of_circuit(network, at(survey.circuits));
            break;
        case ThingKind::neutral:
            for (const SharedNeutral& neutral : network.neutrals())
                if (neutral.id == of.id && !neutral.hots.empty())
                    return standing_of_breaker(network, neutral.hots.front().breaker);
            break;
        case ThingKind::outlet:
            if (const std::size_t o = at(survey.outlets); o < survey.outlets.size() && !network.circuits_at(o).empty())
                return standing_of_circuit(network, network.circuits_at(o).front());
            break;
        case ThingKind::load:
            if (const Load* load = survey.loads.find(of.id)) {
                if (load->panel) return {survey.panels.position(*load->panel), 0};
                if (load->circuit) return standing(network, {ThingKind::circuit, *load->circuit, ""});
                if (load->outlet) return standing(network, {ThingKind::outlet, *load->outlet, ""});
            }
            break;
        default:
            break;
    }
    return {};
}

}  // namespace doorcard
