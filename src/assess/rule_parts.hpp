// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

// What the rule families share: comparing, naming things in a sentence, and the milder step of the meter's accuracy.

/// Equality passes, within 1e-9 of the value.
inline bool exceeds(double value, double limit) { return value > limit + 1e-9 * std::abs(limit); }
inline bool exceeds(Amperes value, Amperes limit) { return exceeds(value.value, limit.value); }

Severity milder(Severity);
/// A measured value within the meter's accuracy above a limit is a step milder (contract 3, 'Findings').
Severity for_measured(Severity, double value, double limit, const RuleBook&);
/// A calculated excess under 0.5 A is a notice (220.5(B)).
Severity for_calculated(Severity, Amperes value, Amperes limit, const RuleBook&);

/// A figure above its limit, and whether it was read or reckoned.
struct Excess {
    Severity severity;
    Amperes value;
    bool measured;
};
/// Of a measured and a calculated figure the one to tell: the more severe, of equals the larger; nullopt where neither
/// exceeds the limit. A reading within the meter's accuracy does not make a calculated excess milder.
std::optional<Excess> worst_excess(Severity, std::optional<Amperes> measured, std::optional<Amperes> calculated,
                                   Amperes limit, const RuleBook&);

Address address_of(const Network&, Thing);
inline Address address_of_neutral(const SharedNeutral& neutral) { return {ThingKind::neutral, neutral.id, ""}; }

/// "5", "13+15", "13a"; with the panel before it where the survey has several: "SHOP 5".
std::string breaker_name(const Network&, std::size_t breaker);
/// "5 Kitchen counter, east wall": where it hangs and what its row of the directory says; its id where nothing is known
/// of it.
Message circuit_name(const Network&, std::size_t circuit);
/// Names of a list of breakers, once each.
Message breaker_names(const Network&, const std::vector<std::size_t>& breakers);
/// Breakers of a neutral's hots, once each.
std::vector<std::size_t> breakers_of(const SharedNeutral&);

/// Receptacles at a receptacle outlet: as counted, else two, but one of a heavy configuration (above 20 A).
int receptacles_at(const Outlet&, const RuleBook&);

/// The citations of these tables, figures and rules, each once: what findings rest on that use several figures.
std::vector<Citation> sources_of(const RuleBook&, std::initializer_list<const char*> ids);

/// The device that protects the bus: the smaller of the main and the feeding breaker; nullopt where neither is known,
/// or where the panel is of the split-bus kind, which has several mains by design (408.36).
std::optional<Amperes> protecting_device(const Reckoned&, std::size_t panel);

/// What an outlet or load is called in a sentence: its label or title, else its id.
std::string outlet_name(const Network&, std::size_t outlet);
std::string load_name(const Load&);

/// A finding with its address and rule filled in.
Finding begin_finding(const char* rule, Severity, Basis, Address of);

}  // namespace doorcard
