// SPDX-License-Identifier: MIT
// Watch levels of the surveyor's own: limit-passed.
#include <algorithm>

#include "assess/reading_keys.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// Readings that a limit looks at: those of its thing, and of its legs where it names some. Without legs those of the
/// neutral are left out, which are of another conductor.
bool is_meant(const Limit& limit, const Reading& reading) {
    return limit.of.legs.empty() ? is_of_hots(reading) : reading.of.legs == limit.of.legs;
}

/// The reading that passes a level by most; nullopt where none does.
std::optional<double> worst_passing(const Reckoned& all, const Limit& limit, const ReadingKey& key) {
    std::optional<double> worst;
    for (const Reading* reading : all.readings.of(limit.of.kind, limit.of.id)) {
        const auto value = key.value(*reading);
        if (!value || !is_meant(limit, *reading)) continue;
        if (limit.above && exceeds(*value, *limit.above)) worst = std::max(worst.value_or(*value), *value);
        if (limit.below && exceeds(*limit.below, *value)) worst = std::min(worst.value_or(*value), *value);
    }
    return worst;
}

void judge_limit(const Reckoned& all, const Limit& limit, std::vector<Finding>& findings) {
    const ReadingKey* key = limit.key ? reading_key(*limit.key) : nullptr;
    if (!key || (!limit.above && !limit.below)) return;
    const auto value = worst_passing(all, limit, *key);
    if (!value) return;
    const double level = limit.above ? *limit.above : *limit.below;
    Finding finding =
        begin_finding("limit-passed", Severity::notice, Basis::practice, {limit.of.kind, limit.of.id, ""});
    finding.value = *value;
    finding.limit = level;
    finding.unit = std::string(key->unit);
    finding.text = {limit.above ? tr("{0}: {1} read {2:.6g} {3}, above the surveyor's own level of {4:.6g} {3}")
                                : tr("{0}: {1} read {2:.6g} {3}, below the surveyor's own level of {4:.6g} {3}"),
                    {limit.of.text(), std::string(key->name), *value, std::string(key->unit), level}};
    finding.remedy = {tr("Look why it passed the level that was set for it."), {}};
    finding.sources = {all.book.cite("practice")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_passed_limits(const Reckoned& all, std::vector<Finding>& findings) {
    for (const Limit& limit : all.network.survey().limits) judge_limit(all, limit, findings);
}

}  // namespace doorcard
