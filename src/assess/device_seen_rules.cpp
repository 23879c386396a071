// SPDX-License-Identifier: MIT
// What was seen at a breaker: double-tap, breaker-not-listed-here, tandem-not-allowed, slash-on-high-leg,
// guard-fails-test, guard-bypassed.
#include <algorithm>
#include <charconv>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

Finding device_finding(const char* rule, const Reckoned& all, std::size_t b, Message text, const char* remedy) {
    Finding finding =
        begin_finding(rule, Severity::warning, Basis::required, address_of(all.network, {ThingKind::breaker, b}));
    finding.text = std::move(text);
    finding.remedy = {remedy, {}};
    return finding;
}

void judge_conductors(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Breaker& breaker = all.network.survey().breakers[b];
    const int allowed = breaker.two_wire_listed == true ? 2 : 1;
    if (breaker.conductors.value_or(1) <= allowed) return;
    Finding finding = device_finding(
        "double-tap", all, b,
        {tr("{0}: {1:.0f} conductors under one terminal, not known to be made for more than {2:.0f}: a loose one "
            "heats"),
         {breaker_name(all.network, b), static_cast<double>(*breaker.conductors), static_cast<double>(allowed)}},
        tr("Look for the marking; else join them to one pigtail of the same size, or give the second circuit a breaker "
           "of "
           "its own. Lock out first."));
    finding.value = *breaker.conductors;
    finding.limit = allowed;
    finding.unit = "count";
    finding.sources = {all.book.cite("nec-110-14-a")};
    findings.push_back(std::move(finding));
}

void judge_listing(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    if (all.network.survey().breakers[b].listed_here != false) return;
    Finding finding = device_finding(
        "breaker-not-listed-here", all, b,
        {tr("{0}: this type does not belong in this panel: its grip on the bus and its opening are not proven"),
         {breaker_name(all.network, b)}},
        tr("Replace it with a type that the panel's label names, of the same rating and with the same guards; look at "
           "the "
           "bus for heat. Lock out first."));
    finding.sources = {all.book.cite("nec-110-3-b")};
    findings.push_back(std::move(finding));
}

bool is_half(const Breaker& breaker, std::size_t pole) {
    return pole < breaker.halves.size() && breaker.halves[pole] != ' ';
}

void judge_tandem(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    const Breaker& breaker = survey.breakers[b];
    const Panel* panel = survey.panels.find(breaker.panel);
    if (!panel || !panel->tandem_spaces) return;
    const auto& allowed = *panel->tandem_spaces;
    for (std::size_t pole = 0; pole < breaker.spaces.size(); ++pole) {
        if (!is_half(breaker, pole) || std::ranges::find(allowed, breaker.spaces[pole]) != allowed.end()) continue;
        Finding finding =
            device_finding("tandem-not-allowed", all, b,
                           {tr("{0}: half of a tandem in space {1:.0f}, which the panel is not made to take one in"),
                            {breaker_name(all.network, b), static_cast<double>(breaker.spaces[pole])}},
                           tr("Move the tandem to a space marked for it, or give its circuits full spaces, here or in "
                              "a subpanel, the hots of a shared neutral on different legs. Lock out first."));
        finding.sources = {all.book.cite("nec-408-54"), all.book.cite("nec-110-3-b")};
        findings.push_back(std::move(finding));
        return;
    }
}

/// The lower voltage of a slash marking: 120 of "120/240"; nullopt for a straight one.
std::optional<double> lower_of_slash(const std::string& marking) {
    const std::size_t slash = marking.find('/');
    if (slash == std::string::npos) return std::nullopt;
    double first = 0, second = 0;
    std::from_chars(marking.data(), marking.data() + slash, first);
    std::from_chars(marking.data() + slash + 1, marking.data() + marking.size(), second);
    return std::min(first, second);
}

void judge_slash(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const Breaker& breaker = network.survey().breakers[b];
    const std::size_t p = network.panel_of(b);
    if (!breaker.volts || p >= network.survey().panels.size()) return;
    const char high = network.supply(p).high_leg;
    const auto low = lower_of_slash(*breaker.volts);
    if (high == 0 || !low || network.breaker_legs(b).find(high) == std::string::npos) return;
    if (!exceeds(high_leg_volts.value, *low)) return;
    Finding finding =
        device_finding("slash-on-high-leg", all, b,
                       {tr("{0} is marked {1} and sits on the high leg {2}: {3:.0f} V to ground, made for {4:.0f} V"),
                        {breaker_name(network, b), *breaker.volts, std::string(1, high), high_leg_volts.value, *low}},
                       tr("Replace it with one of the same rating and guards whose marking is straight (240 V), or "
                          "move it off the high "
                          "leg. Lock out first."));
    finding.value = high_leg_volts.value;
    finding.limit = *low;
    finding.unit = "V";
    finding.sources = {all.book.cite("nec-240-85")};
    findings.push_back(std::move(finding));
}

/// A guard of 4 to 6 mA does for one of 30 mA, not the other way.
bool stands_for(const std::vector<Guard>& guards, Guard guard) {
    return std::ranges::any_of(
        guards, [&](Guard has) { return has == guard || (guard == Guard::equipment_ground && has == Guard::ground); });
}

void judge_test_button(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Breaker& breaker = all.network.survey().breakers[b];
    if (!breaker.tested || breaker.tested->trips != false) return;
    Finding finding = device_finding(
        "guard-fails-test", all, b,
        {tr("{0}: its TEST button does not trip it: its guard protects nobody"), {breaker_name(all.network, b)}},
        tr("Take the circuit out of use until it is replaced by one of the same rating with the same guards; never by "
           "a "
           "plain one. A test counts only with the breaker on and its bus live."));
    finding.sources = {all.book.cite("nec-110-3-b")};
    if (breaker.guards && stands_for(*breaker.guards, Guard::ground))
        finding.sources.push_back(all.book.cite("ul-943"));
    findings.push_back(std::move(finding));
}

void add_guards(std::vector<Guard>& all, const Guards& more) {
    if (more) all.insert(all.end(), more->begin(), more->end());
}

/// What the survey and the hunt's log say of a breaker's guards, one swap after the other.
struct GuardLog {
    std::vector<Guard> were;                ///< seen on it at any time, or named by a trip of its own
    std::optional<std::vector<Guard>> now;  ///< of the one put in last, else as seen
};

bool is_about(const Network& network, const Trial& trial, std::size_t b) {
    const Survey& survey = network.survey();
    if (trial.circuit == survey.breakers[b].id) return true;
    const auto& circuits = network.circuits_on(b);
    const std::size_t c = survey.circuits.position(trial.circuit);
    return std::ranges::find(circuits, c) != circuits.end() && network.breakers_of(c).size() == 1;
}

GuardLog guard_log(const Network& network, std::size_t b) {
    const Survey& survey = network.survey();
    GuardLog log;
    log.now = survey.breakers[b].guards;
    add_guards(log.were, log.now);
    for (const Trip& trip : survey.trips) {
        if (trip.of.kind != ThingKind::breaker || trip.of.id != survey.breakers[b].id) continue;
        if (trip.device_says == "arc") log.were.push_back(Guard::arc);
        if (trip.device_says == "ground") log.were.push_back(Guard::equipment_ground);  // at the least
    }
    for (const Trial& trial : survey.trials) {
        if (trial.kind != "breaker-swapped" || !trial.new_guards || !is_about(network, trial, b)) continue;
        add_guards(log.were, log.now);
        log.now = trial.new_guards;
    }
    return log;
}

void judge_bypass(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Breaker& breaker = all.network.survey().breakers[b];
    if (breaker.state.value_or(BreakerState::in_use) != BreakerState::in_use) return;
    const GuardLog log = guard_log(all.network, b);
    const bool gone =
        log.now && std::ranges::any_of(log.were, [&](Guard guard) { return !stands_for(*log.now, guard); });
    if (!gone) return;
    Finding finding = device_finding("guard-bypassed", all, b,
                                     {tr("{0}: a guard that was there is gone: a plainer breaker stands in its place, "
                                         "and the fault it told of may still "
                                         "be there"),
                                      {breaker_name(all.network, b)}},
                                     tr("Take the circuit out of use until a breaker of the same rating with the guard "
                                        "that was there is back, and the "
                                        "cause of its trips is found."));
    finding.basis = Basis::practice;
    finding.sources = {all.book.cite("practice")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_device_faults(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t b = 0; b < all.network.survey().breakers.size(); ++b) {
        judge_conductors(all, b, findings);
        judge_listing(all, b, findings);
        judge_tandem(all, b, findings);
        judge_slash(all, b, findings);
        judge_test_button(all, b, findings);
        judge_bypass(all, b, findings);
    }
}

}  // namespace doorcard
