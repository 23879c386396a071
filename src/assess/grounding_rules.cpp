// SPDX-License-Identifier: MIT
// Sizes of grounding conductors: ground-wire-too-small (Table 250.122), gec-too-small (Table 250.66).
#include <algorithm>

#include "assess/ampacity.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/lookups.hpp"
#include "rules/protection_lookups.hpp"

namespace doorcard {
namespace {

/// A grounding conductor of the wire type under judgement. Metal not known: judged as copper, which may be smaller.
struct Ground {
    Address of;
    Message name;
    std::string size;
    Metal metal;
    Amperes device;
    std::optional<Wire> wire;  ///< of the circuit or feeder
    bool of_motors = false;    ///< a device above the wire's ampacity may be right (240.4(G))
    std::optional<int> year;
};

bool is_smaller(const RuleBook& book, std::string_view size, std::string_view least) {
    const auto enough = at_least_size(book, size, least);
    return enough && !*enough;
}

/// The largest device of this wire by 240.4, of circuits without receptacles: what the least wire is sought by.
bool wire_allows(const Wire& wire, const std::string& size, Amperes device, const RuleBook& book) {
    const auto amps = ampacity(wire, size, terminal_temperature(wire, device, book), book);
    if (!amps || amps->value <= 0) return false;
    Amperes allowed = standard_rating_at_least(book, *amps).value_or(*amps);
    if (const auto cap = small_conductor_device(book, size, *wire.metal)) allowed = std::min(allowed, *cap);
    return !exceeds(device, allowed);
}

/// The least hot conductor that this device asks for in these surroundings, 14 AWG at least.
std::optional<std::string> least_wire(const Wire& wire, Amperes device, const RuleBook& book) {
    const RuleTable& sizes = book.table("nec-310-16");
    for (std::size_t row = 0; row < sizes.rows.size(); ++row) {
        const std::string& size = sizes.text(row, 0);
        if (at_least_size(book, size, "14").value_or(false) && wire_allows(wire, size, device, book)) return size;
    }
    return std::nullopt;
}

/// 250.122(B), where it can be known that the hot conductors are larger than asked for: of single conductors whose
/// terminals were read; a cable comes with the ground that it has.
bool may_be_grown(const Ground& ground) {
    const auto& wire = ground.wire;
    return wire && wire->size && wire->metal && wire->insulation && wire->terminal_c && wire->method == "raceway" &&
           !ground.of_motors && wire->sets.value_or(1) == 1 && ground.metal == *wire->metal;
}

struct Least {
    std::string size;
    bool grown = false;
};

/// What the table asks for, grown with the hot conductors, and never more than these.
std::optional<Least> least_ground(const Ground& ground, const RuleBook& book) {
    const auto listed = ground_wire_size(book, ground.device, ground.metal);
    if (!listed) return std::nullopt;
    Least least{*listed};
    if (may_be_grown(ground))
        if (const auto wire = least_wire(*ground.wire, ground.device, book))
            if (const auto grown = grown_size(book, *listed, *wire, *ground.wire->size);
                grown && is_smaller(book, *listed, *grown))
                least = {*grown, true};
    const bool hot_known = ground.wire && ground.wire->size;
    if (!hot_known && ground.of_motors) return std::nullopt;  // it need not be larger than wire nobody read
    if (hot_known && is_smaller(book, *ground.wire->size, least.size)) least.size = *ground.wire->size;
    return least;
}

void judge_ground(const Ground& ground, const RuleBook& book, std::vector<Finding>& findings) {
    const auto least = least_ground(ground, book);
    if (!least || !is_smaller(book, ground.size, least->size)) return;
    const bool old = ground.year && *ground.year < book.figure("ground-full-size-year");
    Finding finding =
        begin_finding("ground-wire-too-small", old ? Severity::caution : Severity::warning, Basis::required, ground.of);
    finding.applies = old ? Applies::existing : Applies::any;
    finding.text = {tr("{0}: a grounding conductor of {1} behind {2:.4g} A; {3} is asked for"),
                    {ground.name, ground.size, ground.device.value, least->size}};
    if (least->grown)
        finding.text = {
            tr("{0}: a grounding conductor of {1} behind {2:.4g} A with {4} hot conductors; grown with these "
               "{3} is asked for"),
            {ground.name, ground.size, ground.device.value, least->size, *ground.wire->size}};
    if (old)
        finding.text = {tr("{0} (may have been lawful when installed; the hazard remains)"), {std::move(finding.text)}};
    finding.remedy = {
        tr("A grounding conductor of the right size along with the circuit's own, or a smaller device if the "
           "load allows it. Lock out first."),
        {}};
    finding.sources = {book.cite("nec-250-122"), book.cite(least->grown ? "nec-250-122-b" : "nec-250-122-a")};
    findings.push_back(std::move(finding));
}

bool may_exceed_wire(const PlacedLoad& load) { return load.motor || (load.load && load.load->max_device_a); }

void judge_circuit(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const Circuit& circuit = all.network.survey().circuits[c];
    const auto device = largest_rating(all.network, all.network.breakers_of(c));
    if (!circuit.ground || !circuit.ground->size || circuit.ground->kind.value_or("wire") != "wire" || !device) return;
    const auto& loads = all.placed.on_circuit[c];
    judge_ground({address_of(all.network, {ThingKind::circuit, c}), circuit_name(all.network, c), *circuit.ground->size,
                  circuit.ground->metal.value_or(Metal::copper), *device, circuit.wire,
                  std::ranges::any_of(loads, may_exceed_wire),
                  circuit.installed ? circuit.installed : all.network.survey().heading.built},
                 all.book, findings);
}

/// Feeders from a breaker; what a source or a transformer feeds is bonded by other rules (250.102).
void judge_feeder(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const Panel& panel = all.network.survey().panels[p];
    const auto device = largest_rating(all.network, all.network.breakers_feeding(p));
    if (!panel.feeder || !panel.feeder->ground_size || panel.transformer || !device) return;
    judge_ground({address_of(all.network, {ThingKind::panel, p}),
                  {tr("Feeder of {0}"), {panel.id}},
                  *panel.feeder->ground_size,
                  Metal::copper,
                  *device,
                  panel.feeder,
                  false,
                  all.network.survey().heading.built},
                 all.book, findings);
}

/// The larger of two sizes in the order of the ampacity table.
std::string larger(const RuleBook& book, const std::string& a, const std::string& b) {
    return is_smaller(book, a, b) ? b : a;
}

/// What the electrodes ask for: each the table's size, or less where it is the sole connection to a rod, plate,
/// concrete-encased electrode or ring. Nullopt: electrodes not known.
std::optional<std::string> least_by_electrodes(const RuleBook& book, const Ids& electrodes, const std::string& listed,
                                               Metal metal) {
    std::optional<std::string> least;
    for (const std::string& electrode : electrodes) {
        const auto limit = electrode_limit(book, electrode, metal);
        const std::string one = limit && is_smaller(book, *limit, listed) ? *limit : listed;
        least = least ? larger(book, *least, one) : one;
    }
    return least;
}

/// A panel's service conductors: of one that the utility feeds, where their size is known.
const Wire* service_conductors(const Survey& survey, const Panel& panel) {
    const bool from_utility = std::ranges::any_of(panel.fed_by, [&](const std::string& feed) {
        const Source* source = survey.sources.find(feed);
        return source && source->kind.value_or("utility") == "utility";
    });
    const bool known = from_utility && !panel.transformer && panel.feeder && panel.feeder->size && panel.feeder->metal;
    return known ? &*panel.feeder : nullptr;
}

struct Electrodes {
    std::string size, least;
    bool known;
};

Finding electrode_finding(const Reckoned& all, std::size_t p, const Wire& service, const Electrodes& electrodes) {
    Finding finding = begin_finding("gec-too-small", electrodes.known ? Severity::warning : Severity::notice,
                                    Basis::required, address_of(all.network, {ThingKind::panel, p}));
    const Message::Part panel = all.network.survey().panels[p].id;
    finding.text = {electrodes.known
                        ? tr("{0}: a grounding electrode conductor of {1} behind {2} service conductors; {3} is "
                             "asked for")
                        : tr("{0}: a grounding electrode conductor of {1} behind {2} service conductors is "
                             "right only to a rod or plate; {3} is asked for else: enter the electrodes"),
                    {panel, electrodes.size, *service.size, electrodes.least}};
    finding.remedy = {
        tr("A grounding electrode conductor of the right size; it may be smaller only where it goes to a rod, "
           "plate, concrete-encased electrode or ring alone."),
        {}};
    finding.sources = {all.book.cite("nec-250-66"), all.book.cite("electrode-limits")};
    return finding;
}

void judge_electrode_conductor(const Reckoned& all, std::size_t p, const Grounding& grounding,
                               std::vector<Finding>& findings) {
    const Wire* service = service_conductors(all.network.survey(), all.network.survey().panels[p]);
    if (!service) return;
    const std::string& size = *grounding.gec_size;
    const Metal metal = grounding.gec_metal.value_or(Metal::copper);
    const auto listed =
        electrode_conductor_size(all.book, *service->size, *service->metal, service->sets.value_or(1), metal);
    if (!listed) return;
    const bool known = grounding.electrodes && !grounding.electrodes->empty();
    const std::string least =
        known ? least_by_electrodes(all.book, *grounding.electrodes, *listed, metal).value_or(*listed) : *listed;
    if (!is_smaller(all.book, size, least)) return;
    const auto rod = electrode_limit(all.book, "rod", metal);
    const bool right_for_a_rod = !known && rod && !is_smaller(all.book, size, *rod);
    findings.push_back(electrode_finding(all, p, *service, {size, least, !right_for_a_rod}));
}

}  // namespace

void find_small_grounds(const Reckoned& all, std::vector<Finding>& findings) {
    const auto& grounding = all.network.survey().grounding;
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) judge_circuit(all, c, findings);
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) {
        judge_feeder(all, p, findings);
        if (grounding && grounding->gec_size) judge_electrode_conductor(all, p, *grounding, findings);
    }
}

}  // namespace doorcard
