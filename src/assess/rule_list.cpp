// SPDX-License-Identifier: MIT
#include "assess/rule_list.hpp"

#include <array>

#include "assess/labels.hpp"
#include "assess/standing.hpp"

namespace doorcard {
namespace {

constexpr std::array rules = {
    RuleEntry{"continuous-over-80", tr("lasting load against the rating"), Severity::warning},
    RuleEntry{"load-over-rating", tr("load against the rating"), Severity::warning},
    RuleEntry{"cord-sum-over-rating", tr("all cord appliances together against the rating"), Severity::notice},
    RuleEntry{"continuous-by-rule", tr("entered as not continuous, continuous by rule"), Severity::warning},
    RuleEntry{"cord-load-over-80", tr("one cord appliance against its share"), Severity::caution},
    RuleEntry{"fixed-over-50", tr("fixed equipment beside lighting or receptacles"), Severity::caution},
    RuleEntry{"neutral-same-leg", tr("two hots of one neutral on one leg"), Severity::danger},
    RuleEntry{"neutral-overload", tr("a neutral against its ampacity"), Severity::danger},
    RuleEntry{"neutral-imbalance", tr("a neutral's legs out of balance"), Severity::notice},
    RuleEntry{"neutral-not-opened-together", tr("hots of one neutral without a common handle"), Severity::warning},
    RuleEntry{"neutral-two-panels", tr("one neutral for circuits of two panels"), Severity::danger},
    RuleEntry{"neutral-one-pole-guard", tr("a one-pole guard on a shared neutral"), Severity::warning},
    RuleEntry{"neutral-current-mismatch", tr("a neutral's current that its hots do not explain"), Severity::caution},
    RuleEntry{"neutral-open-symptom", tr("voltages as of an open neutral"), Severity::danger},
    RuleEntry{"neutral-untraced", tr("a neutral that may be shared"), Severity::notice},
    RuleEntry{"high-leg-to-neutral", tr("a line-to-neutral circuit on the high leg"), Severity::danger},
    RuleEntry{"outlet-two-feeds", tr("fed by several at once"), Severity::danger},
    RuleEntry{"partial-voltage", tr("between dead and live"), Severity::danger},
    RuleEntry{"voltage-out-of-range", tr("voltage against its range"), Severity::caution},
    RuleEntry{"wire-too-small", tr("a device larger than its wire allows"), Severity::warning},
    RuleEntry{"wire-overload", tr("measured current against ampacity"), Severity::danger},
    RuleEntry{"voltage-drop", tr("volts lost on the way"), Severity::notice},
    RuleEntry{"joint-resistance", tr("joints on the way to an outlet"), Severity::warning},
    RuleEntry{"hvac-over-max-device", tr("a device above what a nameplate allows"), Severity::warning},
    RuleEntry{"hvac-under-min-circuit", tr("wire below what a nameplate asks for"), Severity::warning},
    RuleEntry{"receptacle-rating", tr("a receptacle's rating against its circuit"), Severity::warning},
    RuleEntry{"ground-wire-too-small", tr("a grounding conductor against its device"), Severity::warning},
    RuleEntry{"gec-too-small", tr("a grounding electrode conductor against the service"), Severity::warning},
    RuleEntry{"leakage-budget", tr("leakage behind one ground guard"), Severity::caution},
    RuleEntry{"heat-at-breaker", tr("heat at a breaker"), Severity::danger},
    RuleEntry{"interrupting-too-low", tr("an interrupting rating against the fault current"), Severity::warning},
    RuleEntry{"source-over-bus", tr("a second source on a bus"), Severity::warning},
    RuleEntry{"backfeed-not-held", tr("a back-fed device without a fastener"), Severity::warning},
    RuleEntry{"limit-passed", tr("a level of the surveyor's own"), Severity::notice},
    RuleEntry{"panel-over-bus", tr("a bus against its device and load"), Severity::warning},
    RuleEntry{"legs-unbalanced", tr("a panel's legs out of balance"), Severity::notice},
    RuleEntry{"breaker-overlap", tr("spaces used twice"), Severity::warning},
    RuleEntry{"legs-same-on-multipole", tr("poles of one breaker on one leg"), Severity::warning},
    RuleEntry{"label-missing", tr("a row without a description"), Severity::notice},
    RuleEntry{"label-vague", tr("a description that says nothing"), Severity::notice},
    RuleEntry{"label-duplicate", tr("two rows alike"), Severity::notice},
    RuleEntry{"label-transient", tr("a description that depends on who lives there"), Severity::notice},
    RuleEntry{"label-spare-unmarked", tr("a spare that is not called so"), Severity::notice},
    RuleEntry{"label-abbreviation", tr("an abbreviation without its meaning"), Severity::notice},
    RuleEntry{"label-old-directory", tr("the old directory against what was traced"), Severity::notice},
    RuleEntry{"live-part-open", tr("live parts within reach"), Severity::danger},
    RuleEntry{"service-neutral-unbonded", tr("no bond of neutral and ground at the service"), Severity::danger},
    RuleEntry{"subpanel-neutral-bonded", tr("neutral and ground bonded below the service"), Severity::warning},
    RuleEntry{"neutrals-one-screw", tr("two neutrals under one screw"), Severity::warning},
    RuleEntry{"panel-place", tr("a panel where none may be"), Severity::warning},
    RuleEntry{"generator-no-interlock", tr("a generator that nothing keeps apart"), Severity::danger},
    RuleEntry{"source-unlabelled", tr("a second source without a sign"), Severity::warning},
    RuleEntry{"double-tap", tr("conductors under one terminal"), Severity::warning},
    RuleEntry{"breaker-not-listed-here", tr("a breaker that does not belong in its panel"), Severity::warning},
    RuleEntry{"tandem-not-allowed", tr("a tandem in a space not made for it"), Severity::warning},
    RuleEntry{"slash-on-high-leg", tr("a slash rating on the high leg"), Severity::warning},
    RuleEntry{"guard-fails-test", tr("a guard that fails its test"), Severity::warning},
    RuleEntry{"guard-bypassed", tr("a guard that is gone"), Severity::warning},
    RuleEntry{"guard-missing", tr("places that ask for a guard, and none was seen"), Severity::warning},
    RuleEntry{"receptacle-miswired", tr("a receptacle wired wrongly"), Severity::warning},
    RuleEntry{"strap-two-breakers", tr("one device on breakers that do not open together"), Severity::warning},
    RuleEntry{"neutral-through-device", tr("a shared neutral through devices"), Severity::warning},
    RuleEntry{"aluminum-branch", tr("small aluminum on a branch circuit"), Severity::warning},
    RuleEntry{"required-circuit-missing", tr("circuits that a dwelling must have"), Severity::notice},
    RuleEntry{"appliance-circuits-differ", tr("circuits declared and surveyed"), Severity::notice},
    RuleEntry{"outlet-unmapped", tr("an outlet whose circuit is not known"), Severity::notice},
    RuleEntry{"claim-only", tr("a circuit that is only claimed"), Severity::notice},
    RuleEntry{"main-unseen", tr("a main nobody looked at"), Severity::notice},
    RuleEntry{"guard-unseen", tr("a breaker whose guards nobody looked at"), Severity::notice},
    RuleEntry{"nameplate-missing", tr("a load without a nameplate"), Severity::notice},
    RuleEntry{"load-leg-unknown", tr("a load whose leg is not known"), Severity::notice},
    RuleEntry{"leg-not-there", tr("a leg that is not there"), Severity::notice},
    RuleEntry{"system-unknown", tr("a panel whose system is not known"), Severity::notice},
    RuleEntry{"system-without-rules", tr("a system of another country"), Severity::notice},
    RuleEntry{"insulation-unlisted", tr("insulation that is in no table"), Severity::notice},
    RuleEntry{"record-unread", tr("a recording or waveform that is kept, not read"), Severity::notice},
    RuleEntry{"local-rule-laxer", tr("local rules that ask for less than the code"), Severity::notice},
    RuleEntry{"accepted-idle", tr("an acceptance of a finding that no longer fires"), Severity::notice},
};

/// They look at things of one panel, at what is linked to it, and at the feed above it: after an edit only what the
/// edit reaches needs them anew.
constexpr RuleFunction families[] = {
    find_overloads,
    find_appliance_shares,
    find_neutral_wiring,
    find_neutral_currents,
    find_open_neutrals,
    find_double_feeds,
    find_misplaced_breakers,
    find_voltages,
    find_unbalanced_legs,
    find_small_wires,
    find_overloaded_buses,
    find_gaps,
    find_label_faults,
    find_lax_local_rules,
    find_panel_faults,
    find_device_faults,
    find_outlet_faults,
    find_missing_guards,
    find_stated_limits,
    find_small_grounds,
    find_receptacle_ratings,
    find_voltage_drops,
    find_poor_joints,
    find_leakage,
    find_heat,
    find_low_interrupting,
    find_second_sources,
    find_passed_limits,
};

/// They need the whole premises.
constexpr RuleFunction families_of_the_premises[] = {find_source_faults_of_the_premises,
                                                     find_required_circuits_of_the_premises};

/// A panel on a system of another country has no rules here: what this code or standard asks for is left unsaid there.
/// Dangers stay, for copper heats alike everywhere, and so do labels, practice and gaps.
bool rests_on_rules_of_elsewhere(const Network& network, const Finding& finding) {
    const bool by_code = finding.basis == Basis::required || finding.basis == Basis::advised;
    if (!by_code || finding.severity == Severity::danger || finding.rule.starts_with("label-")) return false;
    const std::size_t panel = standing(network, finding.of).panel;
    if (panel >= network.survey().panels.size()) return false;
    const auto system = network.supply(panel).system;
    return system && !facts(*system).has_rules;
}

}  // namespace

void find_label_faults(const Reckoned& all, std::vector<Finding>& findings) {
    for (Finding& finding : label_findings(all.network, all.book)) findings.push_back(std::move(finding));
}

std::span<const RuleEntry> rule_list() { return rules; }

std::vector<Finding> run_rules(const Reckoned& all) {
    std::vector<Finding> findings;
    for (const RuleFunction family : families) family(all, findings);
    for (const RuleFunction family : families_of_the_premises) family(all, findings);
    std::erase_if(findings, [&](const Finding& finding) { return rests_on_rules_of_elsewhere(all.network, finding); });
    return findings;
}

}  // namespace doorcard
