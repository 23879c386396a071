// SPDX-License-Identifier: MIT
// Local rules that ask for less than the code: allowed, and told.
#include <fmt/format.h>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

std::string words_of(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return fmt::format("{:g}", *number);
    return std::get<std::string>(cell);
}

std::optional<double> number_in(const Cell& cell) {
    const double* number = std::get_if<double>(&cell);
    return number ? std::optional(*number) : std::nullopt;
}

}  // namespace

void find_lax_local_rules(const Reckoned& all, std::vector<Finding>& findings) {
    for (const Amendment& amendment : all.book.amendments()) {
        if (!amendment.laxer) continue;
        Finding finding =
            begin_finding("local-rule-laxer", Severity::notice, Basis::advised, {ThingKind::survey, "", ""});
        const std::string name = amendment.id + (amendment.part.empty() ? "" : ", " + amendment.part);
        finding.text = {tr("{0}: by local rules {1} in place of {2}, laxer than the code ({3})"),
                        {name, words_of(amendment.value), words_of(amendment.was), amendment.source.standard}};
        finding.value = number_in(amendment.value);
        finding.limit = number_in(amendment.was);
        finding.unit = amendment.unit;
        finding.sources = {amendment.source};
        finding.remedy = {
            tr("Nothing, where the authority having jurisdiction says so; keep its text with the survey."), {}};
        findings.push_back(std::move(finding));
    }
}

}  // namespace doorcard
