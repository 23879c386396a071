// SPDX-License-Identifier: MIT
// How the hots of a shared neutral are wired: neutral-same-leg, neutral-not-opened-together, neutral-two-panels,
// neutral-one-pole-guard, neutral-untraced.
#include <algorithm>

#include "assess/open_neutral.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

struct Shared {
    const SharedNeutral& neutral;
    const NeutralFigures& figures;
};

Finding neutral_finding(const char* rule, Severity severity, const Shared& shared) {
    return begin_finding(rule, severity, Basis::required, address_of_neutral(shared.neutral));
}

/// The hots that sit on one leg, and the sum of their ratings; nullopt where a rating is not known.
struct LegCrowd {
    char leg = 0;
    std::vector<std::size_t> breakers;
    std::optional<Amperes> ratings = Amperes(0);
};

std::vector<LegCrowd> crowds(const Network& network, const SharedNeutral& neutral) {
    std::vector<LegCrowd> found;
    for (const char leg : neutral.legs) {
        LegCrowd crowd;
        crowd.leg = leg;
        for (const Hot& hot : neutral.hots) {
            if (hot.leg != leg) continue;
            crowd.breakers.push_back(hot.breaker);
            const auto rating = network.survey().breakers[hot.breaker].amps;
            crowd.ratings = crowd.ratings && rating ? std::optional(*crowd.ratings + *rating) : std::nullopt;
        }
        if (crowd.breakers.size() > 1) found.push_back(crowd);
    }
    return found;
}

void judge_same_leg(const Reckoned& all, const Shared& shared, std::vector<Finding>& findings) {
    const auto found = crowds(all.network, shared.neutral);
    if (found.empty()) return;
    const auto worst = std::ranges::max_element(found, {}, [](const LegCrowd& crowd) {
        return crowd.ratings ? crowd.ratings->value : std::numeric_limits<double>::infinity();
    });
    const auto ampacity = shared.figures.ampacity_a;
    const bool within = ampacity && worst->ratings && !exceeds(*worst->ratings, *ampacity);
    Finding finding = neutral_finding("neutral-same-leg", within ? Severity::warning : Severity::danger, shared);
    if (worst->ratings) finding.value = worst->ratings->value;
    if (ampacity) finding.limit = ampacity->value;
    finding.unit = "A";
    const Message names = breaker_names(all.network, worst->breakers);
    const std::string leg(1, worst->leg);
    if (worst->ratings && ampacity)
        finding.text = {tr("{0} share neutral {1} on leg {2}: {3:.4g} A of devices, {4:.4g} A of neutral"),
                        {names, shared.neutral.id, leg, worst->ratings->value, ampacity->value}};
    else
        finding.text = {tr("{0} share neutral {1} on leg {2}: their currents add in it"),
                        {names, shared.neutral.id, leg}};
    finding.remedy = {tr("Move one of them to another leg, or give it a neutral of its own. Lock out first."), {}};
    finding.sources = {all.book.cite("nec-100-multiwire"), all.book.cite("nec-200-4-a")};
    findings.push_back(std::move(finding));
}

bool has_line_to_line(const Reckoned& all, const SharedNeutral& neutral) {
    for (const std::size_t c : neutral.circuits)
        for (const PlacedLoad& load : all.placed.on_circuit[c])
            if (load.current.legs.size() > 1 &&
                (load.current.placing == Placing::line_to_line || load.current.placing == Placing::three_phase))
                return true;
    return false;
}

/// The year of the work, where it is known: the latest of its circuits', else the building's.
std::optional<int> year_of(const Survey& survey, const SharedNeutral& neutral) {
    std::optional<int> latest;
    for (const std::size_t c : neutral.circuits) {
        const std::optional<int> year =
            survey.circuits[c].installed ? survey.circuits[c].installed : survey.heading.built;
        if (!year) return std::nullopt;
        latest = std::max(latest.value_or(*year), *year);
    }
    return latest;
}

/// A tie never comes first where it would join hots of one leg or of two panels, nor where they must trip together.
Message together_remedy(const Reckoned& all, const Shared& shared, bool line_to_line) {
    if (shared.neutral.panels.size() > 1)
        return {tr("Bring all conductors of the circuit back to one panel. Lock out both first."), {}};
    if (!crowds(all.network, shared.neutral).empty())
        return {tr("Put them on different legs first, or give each a neutral of its own: a tie alone leaves their "
                   "currents adding in it. Lock out first."),
                {}};
    if (line_to_line)
        return {tr("Put them on one common-trip multi-pole breaker of the same rating (the lowest where they differ) "
                   "and with the same guards. Lock out first."),
                {}};
    return {tr("Fit an identified handle tie, or one multi-pole breaker of the same rating (the lowest where they "
               "differ) and with the same guards. Lock out first."),
            {}};
}

void judge_opened_together(const Reckoned& all, const Shared& shared, std::vector<Finding>& findings) {
    const std::vector<std::size_t> breakers = breakers_of(shared.neutral);
    if (breakers.size() < 2) return;
    const auto& with_first = all.network.opened_with(breakers.front());
    const bool tied = std::ranges::all_of(
        breakers, [&](std::size_t b) { return std::ranges::find(with_first, b) != with_first.end(); });
    const bool line_to_line = has_line_to_line(all, shared.neutral);
    if (tied && !line_to_line) return;
    const auto year = year_of(all.network.survey(), shared.neutral);
    const bool old = year && *year < all.book.figure("multiwire-together-year");
    Finding finding =
        neutral_finding("neutral-not-opened-together", old ? Severity::caution : Severity::warning, shared);
    finding.applies = old ? Applies::existing : Applies::any;
    const Message names = breaker_names(all.network, breakers);
    if (tied)
        finding.text = {
            tr("{0} share neutral {1} and feed a line-to-line load: a tie is not enough, they must trip together"),
            {names, shared.neutral.id}};
    else if (old)
        finding.text = {
            tr("{0} share neutral {1} and do not open together: may have been lawful when installed; the hazard "
               "remains: off at one, the neutral still carries the other"),
            {names, shared.neutral.id}};
    else
        finding.text = {
            tr("{0} share neutral {1} and do not open together: off at one, the neutral still carries the other"),
            {names, shared.neutral.id}};
    if (Message volts = open_volts_text(all, shared.neutral, shared.figures); !volts.empty())
        finding.text = {tr("{0}; with the neutral open and all on: {1}"), {std::move(finding.text), std::move(volts)}};
    finding.remedy = together_remedy(all, shared, line_to_line);
    finding.sources = {all.book.cite("nec-210-4-b"), all.book.cite("nec-240-15-b-1")};
    findings.push_back(std::move(finding));
}

void judge_two_panels(const Reckoned& all, const Shared& shared, std::vector<Finding>& findings) {
    std::vector<Message::Part> names;
    for (const std::size_t p : shared.neutral.panels)
        if (p < all.network.survey().panels.size()) names.emplace_back(all.network.survey().panels[p].id);
    if (names.size() < 2) return;
    Finding finding = neutral_finding("neutral-two-panels", Severity::danger, shared);
    finding.text = {tr("Neutral {0} serves circuits of {1}: a panel switched off does not leave it dead"),
                    {shared.neutral.id, and_list(std::move(names))}};
    finding.remedy = {tr("Bring all conductors of the circuit back to one panel. Lock out both first."), {}};
    finding.sources = {all.book.cite("nec-210-4-a")};
    findings.push_back(std::move(finding));
}

void judge_guards(const Reckoned& all, const Shared& shared, std::vector<Finding>& findings) {
    const std::vector<std::size_t> breakers = breakers_of(shared.neutral);
    if (breakers.size() < 2) return;
    std::vector<std::size_t> guarded;
    for (const std::size_t b : breakers) {
        const Breaker& breaker = all.network.survey().breakers[b];
        if (breaker.poles() == 1 && breaker.guards && !breaker.guards->empty()) guarded.push_back(b);
    }
    if (guarded.empty()) return;
    Finding finding = neutral_finding("neutral-one-pole-guard", Severity::warning, shared);
    finding.text = {tr("{0}: a one-pole arc or ground guard on shared neutral {1} sees the other hot's current as "
                       "leakage, and trips"),
                    {breaker_names(all.network, guarded), shared.neutral.id}};
    finding.remedy = {
        tr("Use a two-pole guarded breaker, or guard the outlets downstream of where the neutral parts; never a plain "
           "breaker in its place."),
        {}};
    finding.sources = {all.book.cite("nec-210-4-b"), all.book.cite("ul-943")};
    findings.push_back(std::move(finding));
}

bool may_share(const Network& network, std::size_t breaker) {
    const auto& circuits = network.circuits_on(breaker);
    return circuits.empty() ||
           std::ranges::any_of(circuits, [&](std::size_t c) { return network.survey().circuits[c].neutral != "own"; });
}

/// A single pole next to this one on the same side, on another leg, not tied to it, whose neutral may be the same.
bool has_likely_partner(const Network& network, std::size_t breaker) {
    const Breaker& mine = network.survey().breakers[breaker];
    const std::string& leg = network.breaker_legs(breaker);
    const std::size_t panel = network.panel_of(breaker);
    if (mine.poles() != 1 || panel >= network.survey().panels.size() || leg == "?") return false;
    const SpaceGeometry& geometry = network.geometry(panel);
    return std::ranges::any_of(network.breakers_in(panel), [&](std::size_t other) {
        const Breaker& theirs = network.survey().breakers[other];
        if (other == breaker || theirs.poles() != 1 || network.breaker_legs(other) == leg) return false;
        if (network.breaker_legs(other) == "?" || theirs.state == BreakerState::spare) return false;
        const int rows = geometry.row(theirs.spaces[0]) - geometry.row(mine.spaces[0]);
        const bool adjacent =
            std::abs(rows) <= 1 && geometry.on_left(theirs.spaces[0]) == geometry.on_left(mine.spaces[0]);
        const auto& tied = network.opened_with(breaker);
        return adjacent && std::ranges::find(tied, other) == tied.end() && may_share(network, other);
    });
}

void judge_untraced(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const Circuit& circuit = network.survey().circuits[c];
    if (circuit.neutral) return;
    const bool likely =
        std::ranges::any_of(network.breakers_of(c), [&](std::size_t b) { return has_likely_partner(network, b); });
    if (circuit.three_wire != true && !likely) return;
    Finding finding =
        begin_finding("neutral-untraced", Severity::notice, Basis::gap, address_of(network, {ThingKind::circuit, c}));
    finding.text = {tr("{0}: its neutral is not traced and may be shared"), {circuit_name(network, c)}};
    finding.remedy = {tr("Trace the neutral; until then treat it as shared, and clamp it before parting it."), {}};
    finding.sources = {all.book.cite("nec-200-4-a")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_neutral_wiring(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t n = 0; n < all.neutrals.size(); ++n) {
        const Shared shared{all.network.neutrals()[n], all.neutrals[n]};
        judge_same_leg(all, shared, findings);
        judge_opened_together(all, shared, findings);
        judge_two_panels(all, shared, findings);
        judge_guards(all, shared, findings);
    }
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) judge_untraced(all, c, findings);
}

}  // namespace doorcard
