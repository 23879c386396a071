// SPDX-License-Identifier: MIT
// Signs of an open or poor neutral in readings taken together at a panel or source: neutral-open-symptom.
#include <algorithm>
#include <cmath>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The voltages of one thing at one moment, by leg; `pair` the line-to-line reading.
struct LegVolts {
    std::map<char, Volts> legs;
    std::map<char, Volts> before_load;  ///< volts_unloaded of the same reading
    std::vector<char> test_loaded;
    std::optional<Volts> pair;
};

LegVolts volts_of(const std::vector<const Reading*>& moment, ThingKind kind, const std::string& id) {
    LegVolts found;
    for (const Reading* reading : moment) {
        if (reading->of.kind != kind || reading->of.id != id) continue;
        if (reading->of.legs.size() == 2 && reading->volts) found.pair = reading->volts;
        if (reading->of.legs.size() != 1 || reading->of.legs == "N") continue;
        const char leg = reading->of.legs.front();
        if (reading->volts) found.legs[leg] = *reading->volts;
        if (reading->volts_unloaded) found.before_load[leg] = *reading->volts_unloaded;
        if (reading->test_load_a && reading->test_load_a->value > 0) found.test_loaded.push_back(leg);
    }
    return found;
}

struct Symptom {
    Severity severity = Severity::danger;
    double value = 0, limit = 0;
    Message text;
};

Symptom symptom(Severity severity, double value, double limit, const char* pattern, std::vector<Message::Part> parts) {
    return {severity, value, limit, {pattern, std::move(parts)}};
}

/// 120/240 V: the legs stand apart while their sum stays; or one leg rises when the other is loaded.
std::optional<Symptom> on_split_phase(const LegVolts& volts, const RuleBook& book) {
    for (const char loaded : volts.test_loaded)
        for (const auto& [leg, now] : volts.legs) {
            const auto before = volts.before_load.find(leg);
            if (leg == loaded || before == volts.before_load.end()) continue;
            const Volts rise = now - before->second;
            const double limit = book.figure("open-neutral-rise");
            if (!exceeds(limit, rise.value))
                return symptom(Severity::danger, rise.value, limit,
                               tr("leg {0} rose by {1:.1f} V when the other leg was loaded"),
                               {std::string(1, leg), rise.value});
        }
    if (volts.legs.size() != 2) return std::nullopt;
    const Volts a = volts.legs.begin()->second;
    const Volts b = volts.legs.rbegin()->second;
    const double apart = abs(a - b).value;
    const double limit = book.figure("open-neutral-difference");
    if (exceeds(limit, apart)) return std::nullopt;
    const double sum = (a + b).value;
    const bool sum_stays =
        !exceeds(book.figure("open-neutral-sum-low"), sum) && !exceeds(sum, book.figure("open-neutral-sum-high"));
    const bool high = exceeds(std::max(a, b).value, book.figure("open-neutral-high"));
    return symptom(high && sum_stays ? Severity::danger : Severity::caution, apart, limit,
                   tr("the legs stand at {0:.1f} V and {1:.1f} V"), {a.value, b.value});
}

/// Two legs of a wye: without their neutral they share the line-to-line voltage. Where that was not read, the nominal
/// one stands in: a poor neutral is not passed over for want of it.
std::optional<Symptom> on_network(const LegVolts& volts, const RuleBook& book) {
    if (volts.legs.size() != 2) return std::nullopt;
    const Volts pair = volts.pair.value_or(facts(System::network_120_208).line_to_line);
    const double sum = (volts.legs.begin()->second + volts.legs.rbegin()->second).value;
    const double limit = book.figure("open-neutral-wye-sum") * pair.value;
    if (exceeds(sum, limit)) return std::nullopt;
    return symptom(Severity::danger, sum, limit,
                   tr("the two legs add up to {0:.1f} V, hardly more than the {1:.1f} V between them"),
                   {sum, pair.value});
}

std::optional<Symptom> on_wye(const LegVolts& volts, Volts nominal, const RuleBook& book) {
    const double scale = nominal / Volts(book.figure("voltage-base"));
    double highest = 0, lowest = std::numeric_limits<double>::infinity();
    for (const auto& [leg, reading] : volts.legs) {
        highest = std::max(highest, reading.value);
        lowest = std::min(lowest, reading.value);
    }
    const double high = book.figure("open-neutral-high") * scale;
    const double low = book.figure("open-neutral-wye-low") * scale;
    if (!exceeds(highest, high) || !exceeds(low, lowest)) return std::nullopt;
    return symptom(Severity::danger, highest, high, tr("one leg stands at {0:.1f} V and another at {1:.1f} V"),
                   {highest, lowest});
}

std::optional<Symptom> symptom_of(const LegVolts& volts, System system, const RuleBook& book) {
    const SystemFacts& known = facts(system);
    if (system == System::split_120_240) return on_split_phase(volts, book);
    if (system == System::network_120_208) return on_network(volts, book);
    if (known.wye && known.has_rules && known.to_neutral.value > 0) return on_wye(volts, known.to_neutral, book);
    return std::nullopt;
}

void judge_thing(const Reckoned& all, ThingKind kind, const std::string& id, std::optional<System> system,
                 std::vector<Finding>& findings) {
    if (!system) return;
    std::optional<Symptom> worst;
    for (const std::size_t at : all.readings.moments_with(all.readings.of(kind, id))) {
        const auto found = symptom_of(volts_of(all.readings.moments()[at], kind, id), *system, all.book);
        const bool worse = found && (!worst || found->severity < worst->severity ||
                                     (found->severity == worst->severity && found->value > worst->value));
        if (worse) worst = found;
    }
    if (!worst) return;
    Finding finding = begin_finding("neutral-open-symptom", worst->severity, Basis::practice, {kind, id, ""});
    finding.value = worst->value;
    finding.limit = worst->limit;
    finding.unit = "V";
    finding.text =
        worst->severity == Severity::danger
            ? Message{tr("{0}: {1}: sign of an open or poor neutral"), {id, worst->text}}
            : Message{tr("{0}: {1}: may be a poor neutral, or uneven load on long wires"), {id, worst->text}};
    finding.remedy = {
        tr("Switch off the main only if safe to; have the neutral checked from the utility inward before anything "
           "is used. Call the utility."),
        {}};
    finding.sources = sources_of(
        all.book, {"open-neutral-difference", "open-neutral-high", "open-neutral-sum-low", "open-neutral-sum-high",
                   "open-neutral-rise", "open-neutral-wye-sum", "open-neutral-wye-low"});
    findings.push_back(std::move(finding));
}

}  // namespace

void find_open_neutrals(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    for (const Source& source : survey.sources) judge_thing(all, ThingKind::source, source.id, source.system, findings);
    for (std::size_t p = 0; p < survey.panels.size(); ++p)
        judge_thing(all, ThingKind::panel, survey.panels[p].id, all.network.supply(p).system, findings);
}

}  // namespace doorcard
