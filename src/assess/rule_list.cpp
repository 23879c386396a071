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

constexpr std::array families = {
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
    std::erase_if(findings, [&](const Finding& finding) { return rests_on_rules_of_elsewhere(all.network, finding); });
    return findings;
}

}  // namespace doorcard
