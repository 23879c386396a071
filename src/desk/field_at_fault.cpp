// SPDX-License-Identifier: MIT
#include "desk/entry_keys.hpp"
#include "desk/entry_near.hpp"
#include "desk/form.hpp"

namespace doorcard {
namespace {

/// A rule, and the key that mends what it finds or that it asks for; of several the first that is known, else the
/// first. An empty key: it is mended on the face, or by what is not there yet.
struct Mended {
    std::string_view rule, table, key;
};
constexpr Mended mended[] = {
    {"continuous-over-80", "breaker", "amps"},
    {"load-over-rating", "breaker", "amps"},
    {"cord-sum-over-rating", "load", "outlet"},
    {"cord-sum-over-rating", "breaker", "amps"},
    {"continuous-by-rule", "load", "continuous"},
    {"cord-load-over-80", "load", "outlet"},
    {"cord-load-over-80", "breaker", "amps"},
    {"fixed-over-50", "load", "circuit"},
    {"fixed-over-50", "breaker", "amps"},
    {"neutral-same-leg", "circuit", "neutral"},
    {"neutral-overload", "circuit", "neutral"},
    {"neutral-imbalance", "circuit", "neutral"},
    {"neutral-not-opened-together", "breaker", "tied_with"},
    {"neutral-two-panels", "circuit", "neutral"},
    {"neutral-one-pole-guard", "breaker", "guards"},
    {"neutral-current-mismatch", "circuit", "neutral"},
    {"neutral-open-symptom", "reading", "volts"},
    {"neutral-open-symptom", "panel", "condition"},
    {"neutral-open-symptom", "source", "disconnect"},
    {"neutral-untraced", "circuit", "neutral"},
    {"high-leg-to-neutral", "circuit", "leg"},
    {"outlet-two-feeds", "outlet", "circuit"},
    {"outlet-two-feeds", "circuit", "breaker"},
    {"partial-voltage", "reading", "low_impedance"},
    {"partial-voltage", "reading", "volts"},
    {"partial-voltage", "outlet", "wired"},
    {"voltage-out-of-range", "reading", "volts"},
    {"wire-too-small", "circuit", "wire.size"},
    {"wire-too-small", "panel", "feeder.size"},
    {"wire-overload", "circuit", "wire.size"},
    {"wire-overload", "panel", "feeder.size"},
    {"voltage-drop", "circuit", "wire.length_ft"},
    {"voltage-drop", "panel", "feeder.length_ft"},
    {"joint-resistance", "outlet", "terminals"},
    {"hvac-over-max-device", "load", "max_device_a"},
    {"hvac-over-max-device", "breaker", "amps"},
    {"hvac-under-min-circuit", "load", "min_circuit_a"},
    {"hvac-under-min-circuit", "circuit", "wire.size"},
    {"receptacle-rating", "outlet", "config"},
    {"receptacle-rating", "outlet", "amps"},
    {"ground-wire-too-small", "circuit", "ground.size"},
    {"ground-wire-too-small", "panel", "feeder.ground_size"},
    {"gec-too-small", "grounding", "gec.size"},
    {"leakage-budget", "load", "leakage_ma"},
    {"leakage-budget", "breaker", "guards"},
    {"leakage-budget", "outlet", "guards"},
    {"heat-at-breaker", "breaker", "signs"},
    {"interrupting-too-low", "breaker", "interrupting_ka"},
    {"interrupting-too-low", "panel", "fault_ka"},
    {"source-over-bus", "panel", "bus_a"},
    {"backfeed-not-held", "breaker", "hold_down"},
    {"limit-passed", "limit", "above"},
    {"limit-passed", "limit", "below"},
    {"panel-over-bus", "panel", "bus_a"},
    {"legs-unbalanced", "reading", "amps"},
    {"legs-unbalanced", "panel", "main_a"},
    {"breaker-overlap", "breaker", ""},
    {"legs-same-on-multipole", "breaker", "legs"},
    {"label-missing", "circuit", "purpose"},
    {"label-missing", "breaker", "state"},
    {"label-vague", "circuit", "purpose"},
    {"label-vague", "breaker", "state"},
    {"label-duplicate", "circuit", "purpose"},
    {"label-duplicate", "breaker", "state"},
    {"label-transient", "circuit", "purpose"},
    {"label-transient", "breaker", "off_why"},
    {"label-spare-unmarked", "breaker", "state"},
    {"label-abbreviation", "circuit", "purpose"},
    {"label-abbreviation", "breaker", "off_why"},
    {"label-old-directory", "panel", ""},
    {"live-part-open", "panel", "deadfront"},
    {"live-part-open", "panel", "open_spaces_unfilled"},
    {"service-neutral-unbonded", "panel", "neutral_bonded"},
    {"subpanel-neutral-bonded", "panel", "neutral_bonded"},
    {"neutrals-one-screw", "panel", "neutrals_doubled"},
    {"panel-place", "panel", "place"},
    {"generator-no-interlock", "source", "interlock"},
    {"source-unlabelled", "source", "labelled"},
    {"double-tap", "breaker", "conductors"},
    {"breaker-not-listed-here", "breaker", "listed_here"},
    {"tandem-not-allowed", "panel", "tandem_spaces"},
    {"slash-on-high-leg", "breaker", "volts"},
    {"guard-fails-test", "breaker", "tested.trips"},
    {"guard-fails-test", "outlet", "guards"},
    {"guard-bypassed", "breaker", "guards"},
    {"guard-bypassed", "outlet", "guards"},
    {"guard-missing", "breaker", "guards"},
    {"guard-missing", "outlet", "guards"},
    {"receptacle-miswired", "outlet", "wired"},
    {"strap-two-breakers", "outlet", "strap"},
    {"neutral-through-device", "circuit", "neutral_spliced"},
    {"aluminum-branch", "circuit", "wire.metal"},
    {"required-circuit-missing", "dwelling", ""},
    {"appliance-circuits-differ", "dwelling", "small_appliance_circuits"},
    {"outlet-unmapped", "outlet", "circuit"},
    {"claim-only", "circuit", "traced.how"},
    {"main-unseen", "panel", "main"},
    {"guard-unseen", "breaker", "guards"},
    {"nameplate-missing", "load", "watts"},
    {"load-leg-unknown", "load", "legs"},
    {"leg-not-there", "circuit", "leg"},
    {"leg-not-there", "breaker", "legs"},
    {"leg-not-there", "load", "legs"},
    {"system-unknown", "panel", "system"},
    {"system-without-rules", "panel", "system"},
    {"system-without-rules", "source", "system"},
    {"insulation-unlisted", "circuit", "wire.insulation"},
    {"insulation-unlisted", "panel", "feeder.insulation"},
    {"record-unread", "recording", "file"},
    {"record-unread", "waveform", "file"},
    {"local-rule-laxer", "survey", "local_rules"},
    {"accepted-idle", "accepted", "reason"},
};

bool is_held(const Survey& survey, const FieldAtFault& at) {
    const auto entry = entry_of(survey, at.address);
    return entry && !at.key.empty() && value_held(*entry, at.key);
}

}  // namespace

FieldAtFault field_at_fault(const Finding& finding, const Survey& survey) {
    FieldAtFault best{entry_near(survey, finding.of, name_of(finding.of.kind), "").value_or(finding.of.text()), ""};
    bool is_found = false;
    for (const Mended& one : mended) {
        if (one.rule != finding.rule) continue;
        auto address = entry_near(survey, finding.of, one.table, one.key);
        if (!address) continue;
        FieldAtFault at{*std::move(address), std::string(one.key)};
        if (is_held(survey, at) && finding.basis != Basis::gap) return at;
        if (!is_found) best = std::move(at);
        is_found = true;
    }
    return best;
}

bool is_rule_mended(std::string_view rule) {
    for (const Mended& one : mended)
        if (one.rule == rule) return true;
    return false;
}

}  // namespace doorcard
