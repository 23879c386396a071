// SPDX-License-Identifier: MIT
// What was seen at outlets and in their boxes: receptacle-miswired, strap-two-breakers, neutral-through-device,
// aluminum-branch.
#include <algorithm>
#include <map>

#include "assess/guard_chain.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/equipment_lookups.hpp"

namespace doorcard {
namespace {

std::string name_of_outlet(const Outlet& outlet) { return outlet.label.value_or(outlet.id); }

/// What a tester showed, in words, and the article against it.
struct Miswiring {
    const char* wired;
    const char* text;
    const char* article;
};
constexpr Miswiring miswirings[] = {
    {"reversed", tr("Outlet {0}: hot and neutral are reversed: the shell of a lamp is live"), "nec-200-11"},
    {"open-ground", tr("Outlet {0}: its ground is open: a fault leaves the metal of what is plugged in live"),
     "nec-406-4-a"},
    {"open-neutral", tr("Outlet {0}: its neutral is open: what is plugged in does not run, and is live all the same"),
     "nec-110-14-a"},
    {"neutral-as-ground",
     tr("Outlet {0}: its neutral serves as ground: a loose neutral makes the metal of what is plugged in live"),
     "nec-250-142-b"},
};

bool ground_guarded(const Network& network, std::size_t o) {
    const auto& circuits = network.circuits_at(o);
    return !circuits.empty() &&
           std::ranges::all_of(circuits, [&](std::size_t c) { return is_guarded(network, o, c, Guard::ground); });
}

Finding begin_miswired(const Reckoned& all, std::size_t o) {
    return begin_finding("receptacle-miswired", Severity::warning, Basis::required,
                         address_of(all.network, {ThingKind::outlet, o}));
}

void judge_wiring(const Reckoned& all, std::size_t o, std::vector<Finding>& findings) {
    const Outlet& outlet = all.network.survey().outlets[o];
    for (const Miswiring& found : miswirings) {
        if (outlet.wired != found.wired) continue;
        Finding finding = begin_miswired(all, o);
        finding.text = {found.text, {name_of_outlet(outlet)}};
        finding.remedy = {
            tr("Use nothing on it until a qualified person has put the wiring right, with the circuit locked "
               "out and proved dead; never bridge neutral and ground."),
            {}};
        finding.sources = {all.book.cite(found.article)};
        if (outlet.wired == "open-ground" && ground_guarded(all.network, o)) {
            finding.severity = Severity::notice;
            finding.text = {tr("Outlet {0}: it has no ground, and a ground guard before it"), {name_of_outlet(outlet)}};
            finding.remedy = {
                tr("Lawful where it replaces an old one and is marked 'No equipment ground'; look for the "
                   "marking, and plug nothing in that needs a ground."),
                {}};
            finding.sources = {all.book.cite("nec-406-4-d")};
        }
        findings.push_back(std::move(finding));
    }
}

/// Outlets by the strap they name, in the order in which straps are first named.
std::vector<std::vector<std::size_t>> straps(const Survey& survey) {
    std::map<std::string, std::size_t> places;
    std::vector<std::vector<std::size_t>> found;
    for (std::size_t o = 0; o < survey.outlets.size(); ++o) {
        if (!survey.outlets[o].strap) continue;
        const auto [at, is_new] = places.emplace(*survey.outlets[o].strap, found.size());
        if (is_new) found.emplace_back();
        found[at->second].push_back(o);
    }
    return found;
}

std::vector<std::size_t> breakers_at(const Network& network, const std::vector<std::size_t>& outlets) {
    std::vector<std::size_t> found;
    for (const std::size_t o : outlets)
        for (const std::size_t c : network.circuits_at(o))
            for (const std::size_t b : network.breakers_of(c))
                if (std::ranges::find(found, b) == found.end()) found.push_back(b);
    return found;
}

void judge_strap(const Reckoned& all, const std::vector<std::size_t>& outlets, std::vector<Finding>& findings) {
    const std::vector<std::size_t> breakers = breakers_at(all.network, outlets);
    if (breakers.size() < 2) return;
    const auto& together = all.network.opened_with(breakers.front());
    if (std::ranges::all_of(breakers, [&](std::size_t b) { return std::ranges::find(together, b) != together.end(); }))
        return;
    Finding finding = begin_finding("strap-two-breakers", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::outlet, outlets.front()}));
    finding.text = {
        tr("Outlet {0}: {1} feed one device and do not open together: off at one, half of it stays live"),
        {name_of_outlet(all.network.survey().outlets[outlets.front()]), breaker_names(all.network, breakers)}};
    finding.remedy = {
        tr("Fit an identified handle tie, or one multi-pole breaker of the same rating and guards. Lock out "
           "all of them first."),
        {}};
    finding.sources = {all.book.cite("nec-210-7")};
    findings.push_back(std::move(finding));
}

const SharedNeutral* shared_neutral_of(const Network& network, const Circuit& circuit) {
    for (const SharedNeutral& neutral : network.neutrals())
        if (circuit.neutral == neutral.id) return &neutral;
    return nullptr;
}

void judge_neutral_path(const Reckoned& all, std::size_t c, std::vector<Address>& told,
                        std::vector<Finding>& findings) {
    const Network& network = all.network;
    const Circuit& circuit = network.survey().circuits[c];
    if (circuit.neutral_spliced != false) return;
    const SharedNeutral* shared = shared_neutral_of(network, circuit);
    const std::size_t hots = shared ? shared->hots.size() : network.circuit_hots(c).size();
    if (hots < 2 && circuit.three_wire != true) return;
    const Address of = shared ? address_of_neutral(*shared) : address_of(network, {ThingKind::circuit, c});
    if (std::ranges::find(told, of) != told.end()) return;
    told.push_back(of);
    Finding finding = begin_finding("neutral-through-device", Severity::warning, Basis::required, of);
    finding.text = {
        tr("{0}: its shared neutral goes through devices: taking one out opens it for all beyond, and their "
           "voltages run apart"),
        {circuit_name(network, c)}};
    finding.remedy = {tr("Join the neutral in each box with a pigtail to the device. Lock out every hot of it first; a "
                         "neutral parted under load stands at full voltage."),
                      {}};
    finding.sources = {all.book.cite("nec-300-13-b")};
    findings.push_back(std::move(finding));
}

void judge_aluminum(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const Circuit& circuit = all.network.survey().circuits[c];
    const auto rating = all.circuits[c].rating_a;
    if (!circuit.wire || !rating || !is_small_aluminum(all.book, *circuit.wire)) return;
    const Amperes least(all.book.figure("small-aluminum-least-a")), most(all.book.figure("small-aluminum-most-a"));
    if (exceeds(least, *rating) || exceeds(*rating, most)) return;
    Finding finding = begin_finding("aluminum-branch", Severity::warning, Basis::advised,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.applies = Applies::existing;
    finding.text = {tr("{0}: {1} AWG aluminum on {2:.4g} A: its joints are known to loosen and heat"),
                    {circuit_name(all.network, c), *circuit.wire->size, rating->value}};
    finding.remedy = {
        tr("Have every joint and terminal of it opened and made anew with means listed for aluminum to "
           "copper, or the circuit rewired; lock out first. Until then watch for heat, smell and flicker."),
        {}};
    finding.sources = {all.book.cite("small-aluminum"), all.book.cite("nec-404-14-c"), all.book.cite("nec-406-3-c")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_outlet_faults(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    for (std::size_t o = 0; o < survey.outlets.size(); ++o) judge_wiring(all, o, findings);
    for (const auto& outlets : straps(survey)) judge_strap(all, outlets, findings);
    std::vector<Address> told;
    for (std::size_t c = 0; c < survey.circuits.size(); ++c) {
        judge_neutral_path(all, c, told, findings);
        judge_aluminum(all, c, findings);
    }
}

}  // namespace doorcard
