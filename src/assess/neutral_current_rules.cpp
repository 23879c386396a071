// SPDX-License-Identifier: MIT
// What a shared neutral carries: neutral-overload, neutral-imbalance, neutral-current-mismatch.
#include <algorithm>
#include <cmath>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "assess/shared_neutral.hpp"

namespace doorcard {
namespace {

Finding amps_finding(const char* rule, Severity severity, Basis basis, const SharedNeutral& neutral, double value,
                     double limit) {
    Finding finding = begin_finding(rule, severity, basis, address_of_neutral(neutral));
    finding.value = value;
    finding.limit = limit;
    finding.unit = "A";
    return finding;
}

std::optional<Amperes> highest_reading(const Reckoned& all, const SharedNeutral& neutral) {
    std::optional<Amperes> most;
    for (const Reading* reading : all.readings.of(ThingKind::neutral, neutral.id))
        if (const auto amps = highest_amps(*reading); amps && (!most || *amps > *most)) most = amps;
    return most;
}

void judge_overload(const Reckoned& all, const SharedNeutral& neutral, std::optional<Amperes> ampacity,
                    std::vector<Finding>& findings) {
    if (!ampacity) return;
    const auto excess =
        worst_excess(Severity::danger, highest_reading(all, neutral), worst_subset(all, neutral), *ampacity, all.book);
    if (!excess) return;
    Finding finding = amps_finding("neutral-overload", excess->severity, Basis::required, neutral, excess->value.value,
                                   ampacity->value);
    finding.text = {excess->measured
                        ? tr("Neutral {0} was measured at {1:.4g} A; it may carry {2:.4g} A")
                        : tr("Neutral {0} can be made to carry {1:.4g} A by its loads; it may carry {2:.4g} A"),
                    {neutral.id, excess->value.value, ampacity->value}};
    finding.remedy = {tr("Take load off it now: no breaker opens for this current. Then a neutral of its own for each "
                         "circuit; lock out every hot of it before the neutral is parted."),
                      {}};
    finding.sources = {all.book.cite("nec-210-19-a"), all.book.cite("nec-310-16")};
    findings.push_back(std::move(finding));
}

/// The ratings of the hots on a leg together; nullopt where one is not known.
std::optional<Amperes> rating_on(const Reckoned& all, const SharedNeutral& neutral, char leg) {
    Amperes sum(0);
    for (const Hot& hot : neutral.hots) {
        if (hot.leg != leg) continue;
        const auto rating = all.network.survey().breakers[hot.breaker].amps;
        if (!rating) return std::nullopt;
        sum += *rating;
    }
    return sum;
}

struct LegReading {
    std::map<char, Amperes> legs;
    char high_leg = 0;
};

/// Hots of one leg add up as phasors, each with its own power factor and thirds.
LegReading legs_of(const NeutralMoment& moment) {
    LegReading found;
    std::map<char, NeutralMoment> by_leg;
    for (const HotReading& hot : moment.hots) {
        by_leg[hot.hot.leg].hots.push_back(hot);
        found.high_leg = hot.supply->high_leg;
    }
    for (const auto& [leg, hots] : by_leg) found.legs[leg] = *hots.explained();
    found.legs.erase(found.high_leg);
    return found;
}

/// The larger leg (any of equals) stands at half its rating or more.
bool has_heavy_leg(const Reckoned& all, const SharedNeutral& neutral, const LegReading& reading) {
    Amperes largest(0);
    for (const auto& [leg, amps] : reading.legs) largest = std::max(largest, amps);
    return std::ranges::any_of(reading.legs, [&](const auto& leg) {
        const auto rating = rating_on(all, neutral, leg.first);
        return leg.second == largest && rating && largest >= all.book.figure("neutral-imbalance-share") * *rating;
    });
}

void judge_imbalance(const Reckoned& all, const SharedNeutral& neutral, std::optional<Amperes> ampacity,
                     const std::vector<NeutralMoment>& moments, std::vector<Finding>& findings) {
    const double limit = all.book.figure("neutral-imbalance-percent");
    std::optional<double> worst;
    std::optional<Amperes> carried;
    for (const NeutralMoment& moment : moments) {
        if (moment.hots.empty()) continue;
        const LegReading reading = legs_of(moment);
        std::vector<Amperes> legs;
        for (const auto& [leg, amps] : reading.legs) legs.push_back(amps);
        const auto percent = imbalance_percent(legs);
        if (!percent || !exceeds(*percent, limit) || (worst && *percent <= *worst)) continue;
        if (!has_heavy_leg(all, neutral, reading)) continue;
        worst = percent;
        carried = moment.measured ? moment.measured : moment.explained();
    }
    if (!worst) return;
    Finding finding =
        begin_finding("neutral-imbalance", Severity::notice, Basis::practice, address_of_neutral(neutral));
    finding.value = *worst;
    finding.limit = limit;
    finding.unit = "%";
    if (ampacity)
        finding.text = {
            tr("Neutral {0}: its legs stood {1:.0f} % out of balance; it carried {2:.4g} A of the {3:.4g} A it may"),
            {neutral.id, *worst, carried->value, ampacity->value}};
    else
        finding.text = {tr("Neutral {0}: its legs stood {1:.0f} % out of balance; it carried {2:.4g} A, what it may "
                           "carry is not known"),
                        {neutral.id, *worst, carried->value}};
    finding.remedy = {
        tr("Move a load from one of its circuits to the other if it stays so; leave its hots on their legs."), {}};
    finding.sources = {all.book.cite("neutral-imbalance-percent")};
    findings.push_back(std::move(finding));
}

struct Span {
    Amperes lowest, highest;
};

/// Every combination of lags of the hots from 0 to 45 degrees: power factors 1 to 0.7.
Span span_of_explanations(const NeutralMoment& moment, const RuleBook& book) {
    const double step = book.figure("mismatch-lag-step");
    const double most = book.figure("mismatch-max-lag");
    std::vector<double> lags(moment.hots.size(), 0);
    Span span{moment.explained_at(lags), moment.explained_at(lags)};
    for (std::size_t i = 0; i < lags.size();) {
        const Amperes amps = moment.explained_at(lags);
        span = {std::min(span.lowest, amps), std::max(span.highest, amps)};
        for (i = 0; i < lags.size(); ++i) {
            lags[i] += step;
            if (lags[i] <= most + 1e-9) break;
            lags[i] = 0;
        }
    }
    return span;
}

void judge_mismatch(const Reckoned& all, const SharedNeutral& neutral, const std::vector<NeutralMoment>& moments,
                    std::vector<Finding>& findings) {
    std::optional<Finding> worst;
    double most = 0;
    for (const NeutralMoment& moment : moments) {
        if (!moment.measured || moment.hots.empty()) continue;
        if (static_cast<double>(moment.hots.size()) > all.book.figure("mismatch-max-hots")) continue;
        const Span span = span_of_explanations(moment, all.book);
        Amperes largest(0);
        for (const HotReading& hot : moment.hots) largest = std::max(largest, hot.amps);
        const Amperes slack =
            std::max(Amperes(all.book.figure("mismatch-amps")), all.book.figure("mismatch-share") * largest);
        const bool above = *moment.measured > span.highest;
        const Amperes bound = above ? span.highest : span.lowest;
        const Amperes off = abs(*moment.measured - bound);
        const bool outside = above || *moment.measured < span.lowest;
        if (!outside || !exceeds(off, slack) || off.value <= most) continue;
        most = off.value;
        worst = amps_finding("neutral-current-mismatch", Severity::caution, Basis::practice, neutral,
                             moment.measured->value, bound.value);
        worst->text = {above ? tr("Neutral {0} carried {1:.4g} A; its hots explain {2:.4g} A at most: another "
                                  "circuit's current comes back here")
                             : tr("Neutral {0} carried {1:.4g} A; its hots ask for {2:.4g} A at least: their current "
                                  "goes back another way"),
                       {neutral.id, moment.measured->value, bound.value}};
        worst->remedy = {
            tr("Find the other way: a crossed neutral, or a neutral that touches ground. Clamp before parting."), {}};
        worst->sources = sources_of(all.book, {"mismatch-amps", "mismatch-share", "nec-300-3-b"});
    }
    if (worst) findings.push_back(std::move(*worst));
}

}  // namespace

void find_neutral_currents(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t n = 0; n < all.neutrals.size(); ++n) {
        const SharedNeutral& neutral = all.network.neutrals()[n];
        const std::vector<NeutralMoment> moments = neutral_moments(all, neutral);
        judge_overload(all, neutral, all.neutrals[n].ampacity_a, findings);
        judge_imbalance(all, neutral, all.neutrals[n].ampacity_a, moments, findings);
        judge_mismatch(all, neutral, moments, findings);
    }
}

}  // namespace doorcard
