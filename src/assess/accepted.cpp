// SPDX-License-Identifier: MIT
#include "assess/accepted.hpp"

#include <algorithm>

#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// Without legs: `panel:MAIN/A` is accepted as `panel:MAIN`.
std::string plain_address(const std::string& of) {
    const auto address = parse_address(of);
    return address ? Address{address->kind, address->id, ""}.text() : of;
}

Finding idle(const Reckoned& all, const Accepted& accepted) {
    Finding finding = begin_finding("accepted-idle", Severity::notice, Basis::gap,
                                    parse_address(accepted.of.value_or("")).value_or(Address{}));
    finding.of.legs.clear();
    finding.text = {tr("Accepted {0} of {1} no longer fires"), {accepted.rule.value_or(""), accepted.of.value_or("")}};
    finding.remedy = {tr("Take the acceptance out, or look whether the thing was renamed."), {}};
    finding.sources = {all.book.cite("practice")};
    return finding;
}

}  // namespace

void set_accepted_apart(const Reckoned& all, std::vector<Finding>& findings, std::vector<Finding>& accepted) {
    std::vector<Finding> kept;
    std::vector<bool> used(all.network.survey().accepted.size());
    for (Finding& finding : findings) {
        bool is_accepted = false;
        for (std::size_t i = 0; i < used.size(); ++i) {
            const Accepted& entry = all.network.survey().accepted[i];
            if (entry.rule != finding.rule || !entry.of || plain_address(*entry.of) != finding.of.text()) continue;
            used[i] = true;
            is_accepted = true;
        }
        if (is_accepted) accepted.push_back(finding);
        if (!is_accepted || finding.severity == Severity::danger) kept.push_back(std::move(finding));
    }
    for (std::size_t i = 0; i < used.size(); ++i)
        if (!used[i]) kept.push_back(idle(all, all.network.survey().accepted[i]));
    findings = std::move(kept);
}

}  // namespace doorcard
