// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "file/reading.hpp"
#include "network/network.hpp"

namespace doorcard {

/// Names of things, in the order given: "breaker:P:1", "load:toaster".
inline Lines names(const Network& network, const std::vector<Thing>& things) {
    Lines found;
    for (const Thing& thing : things)
        found.push_back(std::string(name_of(thing.kind)) + ":" + id_of(network.survey(), thing));
    return found;
}

/// The thing of a name as `names` writes it.
inline Thing thing_named(const Network& network, const std::string& name) {
    const Survey& survey = network.survey();
    const auto address = parse_address(name);
    if (!address) FAIL("no address: " << name);
    const auto in = [&](const auto& table) { return Thing{address->kind, table.position(address->id)}; };
    switch (address->kind) {
        case ThingKind::source:
            return in(survey.sources);
        case ThingKind::panel:
            return in(survey.panels);
        case ThingKind::breaker:
            return in(survey.breakers);
        case ThingKind::circuit:
            return in(survey.circuits);
        case ThingKind::outlet:
            return in(survey.outlets);
        default:
            return in(survey.loads);
    }
}

/// Legs of the breaker of this id, a letter per pole by ascending space.
inline std::string legs_of(const Network& network, const std::string& breaker) {
    return network.breaker_legs(network.survey().breakers.position(breaker));
}

inline const PanelSupply& supply_of(const Network& network, const std::string& panel) {
    return network.supply(network.survey().panels.position(panel));
}

/// A source "u" of this system and a panel P of 42 spaces that it feeds; `keys` are further keys of the panel.
inline std::string panel_on(const std::string& system, const std::string& keys = "") {
    return "format = 1\n[[source]]\nid = \"u\"\nsystem = \"" + system +
           "\"\n[[panel]]\nid = \"P\"\nfed_by = \"u\"\nspaces = 42\n" + keys;
}

/// A breaker of a panel: `spaces` as TOML writes them, `keys` further ones.
inline std::string breaker_in(const std::string& panel, const std::string& spaces, const std::string& keys = "") {
    return "\n[[breaker]]\npanel = \"" + panel + "\"\nspaces = " + spaces + "\n" + keys;
}

}  // namespace doorcard
