// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/entry_keys.hpp"
#include "desk/form.hpp"

namespace doorcard {
namespace {

struct Mended {
    std::string_view rule, key;
};

/// The key that mends a finding, or that it asks for; of the thing that the finding is about.
constexpr Mended mended[] = {
    {"continuous-over-80", "amps"},
    {"load-over-rating", "amps"},
    {"neutral-same-leg", "neutral"},
    {"neutral-overload", "neutral"},
    {"neutral-untraced", "neutral"},
    {"neutral-not-opened-together", "neutral"},
    {"neutral-two-panels", "neutral"},
    {"wire-too-small", "wire.size"},
    {"wire-overload", "wire.size"},
    {"voltage-drop", "wire.length_ft"},
    {"ground-wire-too-small", "ground.size"},
    {"interrupting-too-low", "interrupting_ka"},
    {"backfeed-not-held", "hold_down"},
    {"label-missing", "purpose"},
    {"label-vague", "purpose"},
    {"label-duplicate", "purpose"},
    {"label-transient", "purpose"},
    {"label-abbreviation", "purpose"},
    {"label-spare-unmarked", "state"},
    {"label-old-directory", "traced.how"},
    {"claim-only", "traced.how"},
    {"outlet-unmapped", "circuit"},
    {"live-part-open", "deadfront"},
    {"service-neutral-unbonded", "neutral_bonded"},
    {"subpanel-neutral-bonded", "neutral_bonded"},
    {"neutrals-one-screw", "neutrals_doubled"},
    {"panel-place", "place"},
    {"generator-no-interlock", "interlock"},
    {"source-unlabelled", "labelled"},
    {"double-tap", "conductors"},
    {"breaker-not-listed-here", "listed_here"},
    {"guard-fails-test", "guards"},
    {"guard-missing", "guards"},
    {"guard-unseen", "guards"},
    {"receptacle-miswired", "wired"},
    {"main-unseen", "main"},
    {"nameplate-missing", "watts"},
    {"load-leg-unknown", "legs"},
    {"leg-not-there", "leg"},
    {"system-unknown", "system"},
    {"system-without-rules", "system"},
    {"insulation-unlisted", "wire.insulation"},
    {"hvac-over-max-device", "max_device_a"},
    {"hvac-under-min-circuit", "min_circuit_a"},
};

std::string first_circuit_of(const Survey& survey, const std::string& neutral) {
    const auto found = std::ranges::find(survey.circuits, neutral, &Circuit::neutral);
    return found == survey.circuits.end() ? std::string() : found->id;
}

}  // namespace

FieldAtFault field_at_fault(const Finding& finding, const Survey& survey) {
    FieldAtFault at{finding.of.text(), ""};
    if (finding.of.kind == ThingKind::neutral) at = {"circuit:" + first_circuit_of(survey, finding.of.id), "neutral"};
    if (finding.of.kind == ThingKind::ground) at = {"circuit:" + finding.of.id, "ground.size"};
    if (!finding.of.legs.empty()) at.address = at.address.substr(0, at.address.rfind('/'));
    const auto found = std::ranges::find(mended, std::string_view(finding.rule), &Mended::rule);
    if (found == std::end(mended) || !at.key.empty()) return at;
    const auto entry = entry_of(survey, at.address);
    if (entry && field_named(entry->keys, found->key)) at.key = found->key;
    return at;
}

}  // namespace doorcard
