// SPDX-License-Identifier: MIT
#include "assess/rule_list.hpp"

#include <array>

#include "assess/labels.hpp"

namespace doorcard {
namespace {

constexpr std::array rules = {
    RuleEntry{"continuous-over-80", "lasting load against the rating", Severity::warning},
    RuleEntry{"load-over-rating", "load against the rating", Severity::warning},
    RuleEntry{"cord-sum-over-rating", "all cord appliances together against the rating", Severity::notice},
    RuleEntry{"continuous-by-rule", "entered as not continuous, continuous by rule", Severity::warning},
    RuleEntry{"cord-load-over-80", "one cord appliance against its share", Severity::caution},
    RuleEntry{"fixed-over-50", "fixed equipment beside lighting or receptacles", Severity::caution},
    RuleEntry{"neutral-same-leg", "two hots of one neutral on one leg", Severity::danger},
    RuleEntry{"neutral-overload", "a neutral against its ampacity", Severity::danger},
    RuleEntry{"neutral-imbalance", "a neutral's legs out of balance", Severity::notice},
    RuleEntry{"neutral-not-opened-together", "hots of one neutral without a common handle", Severity::warning},
    RuleEntry{"neutral-two-panels", "one neutral for circuits of two panels", Severity::danger},
    RuleEntry{"neutral-one-pole-guard", "a one-pole guard on a shared neutral", Severity::warning},
    RuleEntry{"neutral-current-mismatch", "a neutral's current that its hots do not explain", Severity::caution},
    RuleEntry{"neutral-open-symptom", "voltages as of an open neutral", Severity::danger},
    RuleEntry{"neutral-untraced", "a neutral that may be shared", Severity::notice},
    RuleEntry{"high-leg-to-neutral", "a line-to-neutral circuit on the high leg", Severity::danger},
    RuleEntry{"outlet-two-feeds", "fed by several at once", Severity::danger},
    RuleEntry{"partial-voltage", "between dead and live", Severity::danger},
    RuleEntry{"voltage-out-of-range", "voltage against its range", Severity::caution},
    RuleEntry{"wire-too-small", "a device larger than its wire allows", Severity::warning},
    RuleEntry{"wire-overload", "measured current against ampacity", Severity::danger},
    RuleEntry{"panel-over-bus", "a bus against its device and load", Severity::warning},
    RuleEntry{"legs-unbalanced", "a panel's legs out of balance", Severity::notice},
    RuleEntry{"breaker-overlap", "spaces used twice", Severity::warning},
    RuleEntry{"legs-same-on-multipole", "poles of one breaker on one leg", Severity::warning},
    RuleEntry{"label-missing", "a row without a description", Severity::notice},
    RuleEntry{"label-vague", "a description that says nothing", Severity::notice},
    RuleEntry{"label-duplicate", "two rows alike", Severity::notice},
    RuleEntry{"label-transient", "a description that depends on who lives there", Severity::notice},
    RuleEntry{"label-spare-unmarked", "a spare that is not called so", Severity::notice},
    RuleEntry{"label-abbreviation", "an abbreviation without its meaning", Severity::notice},
    RuleEntry{"label-old-directory", "the old directory against what was traced", Severity::notice},
    RuleEntry{"outlet-unmapped", "an outlet whose circuit is not known", Severity::notice},
    RuleEntry{"claim-only", "a circuit that is only claimed", Severity::notice},
    RuleEntry{"main-unseen", "a main nobody looked at", Severity::notice},
    RuleEntry{"guard-unseen", "a breaker whose guards nobody looked at", Severity::notice},
    RuleEntry{"nameplate-missing", "a load without a nameplate", Severity::notice},
    RuleEntry{"load-leg-unknown", "a load whose leg is not known", Severity::notice},
    RuleEntry{"system-unknown", "a panel whose system is not known", Severity::notice},
    RuleEntry{"system-without-rules", "a system of another country", Severity::notice},
    RuleEntry{"insulation-unlisted", "insulation that is in no table", Severity::notice},
    RuleEntry{"record-unread", "a recording or waveform that is kept, not read", Severity::notice},
    RuleEntry{"accepted-idle", "an acceptance of a finding that no longer fires", Severity::notice},
};

constexpr std::array<RuleFunction, 13> families = {
    find_overloads,       find_appliance_shares, find_neutral_wiring,     find_neutral_currents,
    find_open_neutrals,   find_double_feeds,     find_misplaced_breakers, find_voltages,
    find_unbalanced_legs, find_small_wires,      find_overloaded_buses,   find_gaps,
    find_label_faults,
};

}  // namespace

void find_label_faults(const Reckoned& all, std::vector<Finding>& findings) {
    for (Finding& finding : label_findings(all.network, all.book)) findings.push_back(std::move(finding));
}

std::span<const RuleEntry> rule_list() { return rules; }

std::vector<Finding> run_rules(const Reckoned& all) {
    std::vector<Finding> findings;
    for (const RuleFunction family : families) family(all, findings);
    return findings;
}

}  // namespace doorcard
