// SPDX-License-Identifier: MIT
// Poor joints on the way to an outlet: joint-resistance, by the heat that they make at the device's rating.
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The resistance above which a joint makes these watts at the rating, beside what is ordinary and what the meter may
/// add.
double limit_ohm(const Reckoned& all, const JointFigures& joint, Amperes rating, const char* watts) {
    const double meter = all.book.figure("joint-reading-volts") / joint.step.value;
    return all.book.figure("joint-ordinary-ohm") + meter + all.book.figure(watts) / (rating.value * rating.value);
}

void judge_joint(const Reckoned& all, const JointFigures& joint, std::vector<Finding>& findings) {
    const std::size_t o = all.network.survey().outlets.position(joint.outlet);
    const auto& circuits = all.network.circuits_at(o);
    if (!joint.joint || circuits.size() != 1) return;
    const auto rating = all.circuits[circuits.front()].rating_a;
    if (!rating) return;
    const double ohms = joint.joint->value;
    const bool hot = exceeds(ohms, limit_ohm(all, joint, *rating, "joint-warning-watts"));
    if (!hot && !exceeds(ohms, limit_ohm(all, joint, *rating, "joint-caution-watts"))) return;
    Finding finding = begin_finding("joint-resistance", hot ? Severity::warning : Severity::caution, Basis::practice,
                                    address_of(all.network, {ThingKind::outlet, o}));
    finding.value = ohms;
    finding.limit = limit_ohm(all, joint, *rating, hot ? "joint-warning-watts" : "joint-caution-watts");
    finding.unit = "ohm";
    const double watts = (ohms - all.book.figure("joint-ordinary-ohm")) * rating->value * rating->value;
    finding.text = {tr("Outlet {0}: {1:.2f} ohm more than its wire has: joints on its way would make some {2:.0f} W of "
                       "heat at {3:.4g} A"),
                    {outlet_name(all.network, o), ohms, watts, rating->value}};
    finding.remedy = {
        tr("Keep load off it; lock out, then open and retighten the joints on its way, from the panel on; read again."),
        {}};
    finding.sources = {all.book.cite("joint-caution-watts"), all.book.cite("nec-110-14")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_poor_joints(const Reckoned& all, std::vector<Finding>& findings) {
    for (const JointFigures& joint : all.joints) judge_joint(all, joint, findings);
}

}  // namespace doorcard
