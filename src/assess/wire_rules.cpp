// SPDX-License-Identifier: MIT
// Conductors against their devices and loads: wire-too-small (240.4, 310.12, 430.22, 430.52), wire-overload.
#include <algorithm>

#include "assess/ampacity.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/lookups.hpp"

namespace doorcard {
namespace {

/// One conductor under judgement: whose it is, its wire and size, the device ahead of it.
struct Conductor {
    Address of;
    Message name;
    Wire wire;
    std::string size;
    Amperes device;
    bool next_size_up = true;  ///< 240.4(B): refused where two receptacles or more are known on the circuit
};

/// The largest device that 240.4 allows over this ampacity; none where the surroundings leave the wire no ampacity.
Amperes allowed_device(const Conductor& conductor, Amperes ampacity, const RuleBook& book) {
    Amperes allowed = ampacity;
    if (ampacity.value <= 0) return allowed;
    const bool small_enough = !exceeds(ampacity, Amperes(book.figure("next-size-limit")));
    if (conductor.next_size_up && small_enough) allowed = standard_rating_at_least(book, ampacity).value_or(ampacity);
    if (const auto cap = small_conductor_device(book, conductor.size, *conductor.wire.metal))
        allowed = std::min(allowed, *cap);
    return allowed;
}

Finding size_finding(const Conductor& conductor, Severity severity, Amperes value, Amperes limit,
                     const RuleBook& book) {
    Finding finding = begin_finding("wire-too-small", severity, Basis::required, conductor.of);
    finding.value = value.value;
    finding.limit = limit.value;
    finding.unit = "A";
    finding.remedy = {tr("A breaker of {0:.4g} A at most for this wire, with the same guards, if the load allows it; "
                         "else larger wire. Lock out first."),
                      {limit.value}};
    finding.sources = {book.cite("nec-240-4"), book.cite("nec-310-16")};
    if (small_conductor_device(book, conductor.size, *conductor.wire.metal))
        finding.sources.insert(finding.sources.begin() + 1, book.cite("nec-240-4-d"));
    return finding;
}

/// 240.4 with the corrections. `terminal_c` absent: a warning only if it fails at the higher terminals too.
std::optional<Finding> judge_device(const Conductor& conductor, Severity severity, const RuleBook& book) {
    const Celsius terminals = terminal_temperature(conductor.wire, conductor.device, book);
    const auto amps = ampacity(conductor.wire, conductor.size, terminals, book);
    if (!amps) return std::nullopt;
    const Amperes allowed = allowed_device(conductor, *amps, book);
    if (!exceeds(conductor.device, allowed)) return std::nullopt;
    const auto at_high = ampacity(conductor.wire, conductor.size, Celsius(book.figure("terminal-high-c")), book);
    const Amperes allowed_high = at_high ? allowed_device(conductor, *at_high, book) : allowed;
    if (!conductor.wire.terminal_c && !exceeds(conductor.device, allowed_high)) {
        Finding finding = size_finding(conductor, Severity::notice, conductor.device, allowed, book);
        finding.text = {tr("{0}: {1} wire on {2:.4g} A is right only for 75 °C terminals: read the terminal marking"),
                        {conductor.name, conductor.size, conductor.device.value}};
        finding.sources.push_back(book.cite("nec-110-14-c"));
        return finding;
    }
    Finding finding = size_finding(conductor, severity, conductor.device, allowed, book);
    finding.text = {tr("{0}: {1} wire of {2:.4g} A ampacity on {3:.4g} A; {4:.4g} A at most"),
                    {conductor.name, conductor.size, amps->value, conductor.device.value, allowed.value}};
    return finding;
}

int receptacles_known(const Network& network, std::size_t circuit, const RuleBook& book) {
    int count = 0;
    for (const std::size_t o : network.outlets_on(circuit))
        if (network.survey().outlets[o].kind == OutletKind::receptacle)
            count += receptacles_at(network.survey().outlets[o], book);
    return count;
}

std::optional<Conductor> conductor_of_circuit(const Reckoned& all, std::size_t c) {
    const Circuit& circuit = all.network.survey().circuits[c];
    const auto device = largest_rating(all.network, all.network.breakers_of(c));
    if (!circuit.wire || !circuit.wire->size || !circuit.wire->metal || !device) return std::nullopt;
    return Conductor{address_of(all.network, {ThingKind::circuit, c}),
                     circuit_name(all.network, c),
                     *circuit.wire,
                     *circuit.wire->size,
                     *device,
                     receptacles_known(all.network, c, all.book) < 2};
}

/// The ampacity that a circuit of motors alone asks for: 1.25 x largest + rest; minimum circuit ampacities as they
/// stand, but never less than the load's own current.
Amperes motor_conductor(const std::vector<PlacedLoad>& loads, const RuleBook& book) {
    Amperes sum(0), largest(0);
    for (const PlacedLoad& load : loads) {
        if (load.has_minimum_circuit()) {
            sum += std::max(*load.load->min_circuit_a, load.current.total()) * load.count;
            continue;
        }
        sum += load.current.total() * load.count;
        largest = std::max(largest, load.current.total());
    }
    return sum + (book.figure("motor-conductor") - 1) * largest;
}

/// The wire of motors alone. `terminal_c` absent: a caution only if it fails at the higher terminals too.
std::optional<Finding> judge_motor_wire(const Conductor& conductor, Amperes need, const RuleBook& book) {
    const auto amps = ampacity(conductor.wire, conductor.device, book);
    if (!amps || !exceeds(need, *amps)) return std::nullopt;
    const auto at_high = ampacity(conductor.wire, conductor.size, Celsius(book.figure("terminal-high-c")), book);
    const bool by_marking = !conductor.wire.terminal_c && at_high && !exceeds(need, *at_high);
    Finding finding = size_finding(conductor, by_marking ? Severity::notice : Severity::caution, need, *amps, book);
    finding.sources = {book.cite("nec-430-22"), book.cite("nec-430-24")};
    finding.remedy = {tr("Larger wire; check the nameplates first. Lock out first."), {}};
    if (by_marking) {
        finding.text = {tr("{0}: {1} wire on {2:.4g} A is right only for 75 °C terminals: read the terminal marking"),
                        {conductor.name, conductor.size, conductor.device.value}};
        finding.sources.push_back(book.cite("nec-110-14-c"));
    } else
        finding.text = {tr("{0}: its motors ask for wire of {1:.4g} A; {2} wire has {3:.4g} A"),
                        {conductor.name, need.value, conductor.size, amps->value}};
    return finding;
}

/// The device ahead of one motor: Table 430.52, next size up.
std::optional<Finding> judge_motor_device(const Reckoned& all, std::size_t c, const Conductor& conductor) {
    const auto& loads = all.placed.on_circuit[c];
    const PlacedLoad& motor = loads.front();
    if (loads.size() != 1 || motor.count != 1 || motor.duty() != Duty::motor || motor.load->max_device_a)
        return std::nullopt;
    const auto& breakers = all.network.breakers_of(c);
    const bool fuse = !breakers.empty() && all.network.survey().breakers[breakers.front()].device == "fuse";
    const int phases = motor.current.placing == Placing::three_phase ? 3 : 1;
    const Amperes most = motor_device_percent(all.book, fuse, phases) / 100 * motor.current.total();
    const Amperes allowed = standard_rating_at_least(all.book, most).value_or(most);
    if (!exceeds(conductor.device, allowed)) return std::nullopt;
    Finding finding = size_finding(conductor, Severity::caution, conductor.device, allowed, all.book);
    finding.text = {tr("{0}: {1:.4g} A ahead of a motor of {2:.4g} A; {3:.4g} A at most"),
                    {conductor.name, conductor.device.value, motor.current.total().value, allowed.value}};
    finding.remedy = {
        tr("A device not above what the motor or its nameplate allows; look whether it can still start on "
           "it. Lock out first."),
        {}};
    finding.sources = {all.book.cite("nec-430-52")};
    return finding;
}

void judge_motor_circuit(const Reckoned& all, std::size_t c, const Conductor& conductor,
                         std::vector<Finding>& findings) {
    const auto amps = ampacity(conductor.wire, conductor.device, all.book);
    if (!amps) return;
    std::optional<Finding> finding;
    if (!exceeds(minimum_circuits(all.placed.on_circuit[c]), *amps))  // else hvac-under-min-circuit tells it
        finding = judge_motor_wire(conductor, motor_conductor(all.placed.on_circuit[c], all.book), all.book);
    if (!finding) finding = judge_motor_device(all, c, conductor);
    if (finding) findings.push_back(std::move(*finding));
}

/// Equipment that states its largest device is not held to 240.4, but its wire must still carry what it asks for.
void judge_stated_circuit(const Reckoned& all, std::size_t c, const Conductor& conductor,
                          std::vector<Finding>& findings) {
    const auto amps = all.circuits[c].ampacity_a, need = all.circuits[c].required_a;
    if (!amps || !need || !exceeds(*need, *amps) || exceeds(minimum_circuits(all.placed.on_circuit[c]), *amps)) return;
    const auto at_high =
        ampacity(conductor.wire, conductor.size, Celsius(all.book.figure("terminal-high-c")), all.book);
    const bool by_marking = !conductor.wire.terminal_c && at_high && !exceeds(*need, *at_high);
    const Severity severity = for_calculated(Severity::caution, *need, *amps, all.book);
    Finding finding = size_finding(conductor, by_marking ? Severity::notice : severity, *need, *amps, all.book);
    finding.text = {by_marking
                        ? tr("{0}: {2} wire of {3:.4g} A is right for its load only at 75 °C terminals: read the "
                             "terminal marking")
                        : tr("{0}: its load asks for wire of {1:.4g} A; {2} wire has {3:.4g} A"),
                    {conductor.name, need->value, conductor.size, amps->value}};
    finding.remedy = {tr("Larger wire; check the nameplates first. Lock out first."), {}};
    finding.sources = {all.book.cite("nec-210-19-a")};
    findings.push_back(std::move(finding));
}

/// Motors, cooling and heat pumps, and loads that state their largest device, are not held to 240.4 (240.4(G)).
bool is_excepted(const PlacedLoad& load) { return load.motor_alone || (load.load && load.load->max_device_a); }

void judge_circuit(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto conductor = conductor_of_circuit(all, c);
    if (!conductor) return;
    const auto& loads = all.placed.on_circuit[c];
    const bool excepted = !loads.empty() && std::ranges::all_of(loads, is_excepted);
    const bool without_nameplate =
        excepted && std::ranges::any_of(loads, [](const PlacedLoad& load) {
            return !load.current.known() && !(load.load && (load.load->max_device_a || load.load->min_circuit_a));
        });
    if (excepted && !without_nameplate) {
        const bool motors_alone = std::ranges::all_of(loads, &PlacedLoad::motor_alone);
        (motors_alone ? judge_motor_circuit : judge_stated_circuit)(all, c, *conductor, findings);
        return;
    }
    const Severity severity = without_nameplate ? Severity::caution : Severity::warning;
    if (auto finding = judge_device(*conductor, severity, all.book)) findings.push_back(std::move(*finding));
}

/// The neutral's size in the wire of each of its circuits, against that circuit's device; the worst is told.
void judge_neutral(const Reckoned& all, const SharedNeutral& neutral, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    std::optional<std::string> size;
    for (const std::size_t c : neutral.circuits)
        if (survey.circuits[c].neutral_size) size = survey.circuits[c].neutral_size;
    if (!size) return;
    std::optional<Finding> worst;
    for (const std::size_t c : neutral.circuits) {
        const auto device = largest_rating(all.network, all.network.breakers_of(c));
        if (!survey.circuits[c].wire || !survey.circuits[c].wire->metal || !device) continue;
        const Conductor conductor{address_of_neutral(neutral),
                                  Message{tr("Neutral {0}"), {neutral.id}},
                                  *survey.circuits[c].wire,
                                  *size,
                                  *device,
                                  receptacles_known(all.network, c, all.book) < 2};
        auto finding = judge_device(conductor, Severity::warning, all.book);
        const bool worse = finding && (!worst || finding->severity < worst->severity ||
                                       (finding->severity == worst->severity &&
                                        *finding->value - *finding->limit > *worst->value - *worst->limit));
        if (worse) worst = std::move(finding);
    }
    if (worst) findings.push_back(std::move(*worst));
}

/// Service conductors, and the main feeder of a dwelling: 310.12.
bool is_main_feeder(const Network& network, std::size_t p) {
    const Survey& survey = network.survey();
    const auto system = network.supply(p).system;
    if (system != System::split_120_240 && system != System::network_120_208) return false;
    if (network.breakers_feeding(p).empty()) return !network.in_occupancy(p);
    return std::ranges::any_of(survey.dwellings, [&](const Dwelling& dwelling) {
        if (!dwelling.panels) return false;
        const bool named = std::ranges::find(*dwelling.panels, survey.panels[p].id) != dwelling.panels->end();
        const bool alone = dwelling.panels->size() == 1 || dwelling.stands_for || dwelling.units;
        return named && alone && survey.panels[p].fed_by.size() == 1;
    });
}

/// 310.12, which holds for the ratings of its table alone: by the table where nothing is corrected, else by the share
/// of the rating that it stands on.
bool dwelling_feeder_passes(const Conductor& conductor, Amperes amps, const RuleBook& book) {
    const auto least = dwelling_service_size(book, *conductor.wire.metal, conductor.device);
    if (!least) return false;
    if (!exceeds(book.figure("dwelling-service-share") * conductor.device, amps)) return true;
    const bool corrected =
        conductor.wire.conductors_together.value_or(0) > 3 ||
        (conductor.wire.ambient_c && conductor.wire.ambient_c->value > book.figure("base-ambient-c"));
    return !corrected && at_least_size(book, conductor.size, *least).value_or(false);
}

void judge_feeder(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const Panel& panel = all.network.survey().panels[p];
    if (!panel.feeder || !panel.feeder->size || !panel.feeder->metal || panel.transformer) return;
    const auto ahead = largest_rating(all.network, all.network.breakers_feeding(p));
    const auto device = ahead ? ahead : panel.main_a;
    if (!device) return;
    const Conductor conductor{address_of(all.network, {ThingKind::panel, p}),
                              Message{tr("Feeder of {0}"), {panel.id}},
                              *panel.feeder,
                              *panel.feeder->size,
                              *device,
                              true};
    const auto amps = ampacity(conductor.wire, conductor.device, all.book);
    if (!amps) return;
    if (is_main_feeder(all.network, p) && dwelling_feeder_passes(conductor, *amps, all.book)) return;
    auto finding = judge_device(conductor, Severity::warning, all.book);
    if (!finding) return;
    if (is_main_feeder(all.network, p)) finding->sources.push_back(all.book.cite("nec-310-12"));
    findings.push_back(std::move(*finding));
}

void judge_load(const Reckoned& all, const LoadFigures& figures, const Address& of, const Message& name,
                std::vector<Finding>& findings) {
    if (!figures.measured_a || !figures.ampacity_a || !exceeds(*figures.measured_a, *figures.ampacity_a)) return;
    const double value = figures.measured_a->value;
    const double limit = figures.ampacity_a->value;
    Finding finding =
        begin_finding("wire-overload", for_measured(Severity::danger, value, limit, all.book), Basis::required, of);
    finding.value = value;
    finding.limit = limit;
    finding.unit = "A";
    finding.text = {tr("{0}: {1:.4g} A measured in wire that may carry {2:.4g} A"), {name, value, limit}};
    finding.remedy = {tr("Take load off it now; then a smaller breaker or larger wire. Lock out first."), {}};
    finding.sources = {all.book.cite("nec-310-16"), all.book.cite("nec-210-19-a")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_small_wires(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    for (std::size_t c = 0; c < survey.circuits.size(); ++c) {
        judge_circuit(all, c, findings);
        judge_load(all, all.circuits[c], address_of(all.network, {ThingKind::circuit, c}), circuit_name(all.network, c),
                   findings);
    }
    for (const SharedNeutral& neutral : all.network.neutrals()) judge_neutral(all, neutral, findings);
    for (std::size_t p = 0; p < survey.panels.size(); ++p) {
        judge_feeder(all, p, findings);
        judge_load(all, all.feeders[p], address_of(all.network, {ThingKind::panel, p}),
                   Message{tr("Feeder of {0}"), {survey.panels[p].id}}, findings);
    }
}

}  // namespace doorcard
