// SPDX-License-Identifier: MIT
// What a nameplate states of its circuit: hvac-over-max-device (the largest device), hvac-under-min-circuit (the least
// wire). Both hold for any equipment that states them, not for cooling and heat pumps alone.
#include <algorithm>

#include "assess/ampacity.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

bool is_cooling(const PlacedLoad& load) { return load.duty() == Duty::cooling || load.duty() == Duty::heat_pump; }

void judge_device(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto device = largest_rating(all.network, all.network.breakers_of(c));
    const PlacedLoad* strictest = nullptr;
    for (const PlacedLoad& load : all.placed.on_circuit[c])
        if (load.load && load.load->max_device_a &&
            (!strictest || *load.load->max_device_a < *strictest->load->max_device_a))
            strictest = &load;
    if (!device || !strictest || !exceeds(*device, *strictest->load->max_device_a)) return;
    Finding finding = begin_finding("hvac-over-max-device", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.value = device->value;
    finding.limit = strictest->load->max_device_a->value;
    finding.unit = "A";
    finding.text = {tr("{0}: {1:.4g} A ahead of {2}, whose nameplate allows {3:.4g} A at most"),
                    {circuit_name(all.network, c), device->value, load_name(*strictest->load), *finding.limit}};
    finding.remedy = {tr("A device not above what the nameplate says, nor above what the wire allows. Lock out first."),
                      {}};
    finding.sources = {all.book.cite("nec-110-3-b"),
                       all.book.cite(is_cooling(*strictest) ? "nec-440-22" : "nec-422-11-a")};
    findings.push_back(std::move(finding));
}

/// `terminal_c` absent: a warning only if the wire fails at the higher terminals too.
bool by_marking_only(const Wire& wire, Amperes need, const RuleBook& book) {
    if (wire.terminal_c) return false;
    const auto at_high = ampacity(wire, *wire.size, Celsius(book.figure("terminal-high-c")), book);
    return at_high && !exceeds(need, *at_high);
}

void judge_wire(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto& wire = all.network.survey().circuits[c].wire;
    const auto& loads = all.placed.on_circuit[c];
    const auto amps = all.circuits[c].ampacity_a;
    const Amperes need = minimum_circuits(loads);
    if (!wire || !amps || !exceeds(need, *amps)) return;
    const bool by_marking = by_marking_only(*wire, need, all.book);
    Finding finding = begin_finding("hvac-under-min-circuit", by_marking ? Severity::notice : Severity::warning,
                                    Basis::required, address_of(all.network, {ThingKind::circuit, c}));
    finding.value = amps->value;
    finding.limit = need.value;
    finding.unit = "A";
    finding.text = {by_marking
                        ? tr("{0}: {1} wire with {2:.4g} A, the nameplate asks for {3:.4g} A: right only for 75 °C "
                             "terminals: read the terminal marking")
                        : tr("{0}: {1} wire with {2:.4g} A, the nameplate asks for {3:.4g} A"),
                    {circuit_name(all.network, c), *wire->size, amps->value, need.value}};
    finding.remedy = {tr("Larger wire; check the nameplates first. Lock out first."), {}};
    const bool cooling = std::ranges::any_of(
        loads, [](const PlacedLoad& load) { return load.has_minimum_circuit() && is_cooling(load); });
    finding.sources = {all.book.cite("nec-110-3-b"), all.book.cite(cooling ? "nec-440-4" : "nec-422-10-a")};
    if (by_marking) finding.sources.push_back(all.book.cite("nec-110-14-c"));
    findings.push_back(std::move(finding));
}

}  // namespace

void find_stated_limits(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) {
        judge_device(all, c, findings);
        judge_wire(all, c, findings);
    }
}

}  // namespace doorcard
