// SPDX-License-Identifier: MIT
// Standing leakage behind one ground guard: leakage-budget.
#include <algorithm>
#include <cmath>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

bool guards_ground(const Guards& guards) {
    return guards && std::ranges::find(*guards, Guard::ground) != guards->end();
}

/// What leaks behind one guard: entered values added, and the highest reading.
struct Leakage {
    Milliamperes sum;
    Milliamperes resistive, capacitive;
    bool any_entered = false, kinds_known = true;
    std::optional<Milliamperes> read;

    void add(const Load& load) {
        if (!load.leakage_ma) return;
        const Milliamperes all_of_it = *load.leakage_ma * load.count_or_one();
        any_entered = true;
        sum += all_of_it;
        if (load.leakage_kind == "resistive")
            resistive += all_of_it;
        else if (load.leakage_kind == "capacitive")
            capacitive += all_of_it;
        else
            kinds_known = false;
    }
    void take(const std::vector<const Reading*>& readings) {
        for (const Reading* reading : readings)
            if (reading->leakage_ma && (!read || *reading->leakage_ma > *read)) read = reading->leakage_ma;
    }
    /// At right angles where every kind is known: no more than the sum.
    std::optional<double> by_phasor() const {
        if (!any_entered || !kinds_known || resistive.value == 0 || capacitive.value == 0) return std::nullopt;
        return std::hypot(resistive.value, capacitive.value);
    }
};

Message leakage_text(const Message::Part& name, const Leakage& leakage, double value, const RuleBook& book) {
    const bool read = leakage.read && leakage.read->value >= leakage.sum.value;
    const double hold = book.figure("guard-hold-ma"), trip = book.figure("guard-trip-ma");
    if (value >= trip)
        return {read ? tr("{0}: {1:.3g} mA of leakage read behind its guard, which must trip at {2:.4g} mA")
                     : tr("{0}: {1:.3g} mA of entered leakage behind its guard, which must trip at {2:.4g} mA"),
                {name, value, trip}};
    if (value >= hold)
        return {read ? tr("{0}: {1:.3g} mA of leakage read behind its guard, which may trip from {2:.4g} mA on")
                     : tr("{0}: {1:.3g} mA of entered leakage behind its guard, which may trip from {2:.4g} mA on"),
                {name, value, hold}};
    return {read ? tr("{0}: {1:.3g} mA of leakage read behind its guard; up to {2:.3g} mA leaves room")
                 : tr("{0}: {1:.3g} mA of entered leakage behind its guard; up to {2:.3g} mA leaves room"),
            {name, value, book.figure("leakage-share") * trip}};
}

void judge_leakage(const Reckoned& all, Thing guard, const Message::Part& name, const Leakage& leakage,
                   std::vector<Finding>& findings) {
    const double value = std::max(leakage.sum.value, leakage.read.value_or(Milliamperes(0)).value);
    const double budget = all.book.figure("leakage-share") * all.book.figure("guard-trip-ma");
    const double hold = all.book.figure("guard-hold-ma");
    if (!exceeds(value, budget)) return;
    const bool may_trip = !exceeds(hold, value);  // from the level on, not above it
    Finding finding = begin_finding("leakage-budget", may_trip ? Severity::caution : Severity::notice, Basis::practice,
                                    address_of(all.network, guard));
    finding.value = value;
    finding.limit = may_trip ? hold : budget;
    finding.unit = "mA";
    finding.text = leakage_text(name, leakage, value, all.book);
    if (const auto phasor = leakage.by_phasor(); phasor && exceeds(leakage.sum.value, *phasor))
        finding.text = {tr("{0} (resistive and capacitive at right angles: {1:.3g} mA)"),
                        {std::move(finding.text), *phasor}};
    finding.remedy = {
        tr("Find what leaks most and move it behind another guard; never a plain breaker or outlet in its "
           "place."),
        {}};
    finding.sources = {all.book.cite("leakage-share"), all.book.cite("guard-hold-ma")};
    findings.push_back(std::move(finding));
}

void judge_breaker(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const Breaker& breaker = network.survey().breakers[b];
    if (!guards_ground(breaker.guards)) return;
    Leakage leakage;
    leakage.take(all.readings.of(ThingKind::breaker, breaker.id));
    for (const std::size_t c : network.circuits_on(b)) {
        for (const std::size_t l : network.loads_on(c)) leakage.add(network.survey().loads[l]);
        if (network.circuits_on(b).size() == 1)
            leakage.take(all.readings.of(ThingKind::circuit, network.survey().circuits[c].id));
    }
    judge_leakage(all, {ThingKind::breaker, b}, breaker_name(network, b), leakage, findings);
}

/// By outlet: those that are fed straight through it.
using FedThrough = std::vector<std::vector<std::size_t>>;

FedThrough fed_through(const Survey& survey) {
    FedThrough found(survey.outlets.size());
    for (std::size_t o = 0; o < survey.outlets.size(); ++o)
        if (const auto& upstream = survey.outlets[o].upstream)
            if (const std::size_t before = survey.outlets.position(*upstream); before < found.size())
                found[before].push_back(o);
    return found;
}

void judge_outlet(const Reckoned& all, std::size_t o, const FedThrough& through, std::vector<Finding>& findings) {
    const Network& network = all.network;
    Leakage leakage;
    leakage.take(all.readings.of(ThingKind::outlet, network.survey().outlets[o].id));
    std::vector<std::size_t> behind = {o};
    for (std::size_t next = 0; next < behind.size(); ++next) {  // chains end: the reader refuses circles
        for (const std::size_t l : network.loads_at(behind[next])) leakage.add(network.survey().loads[l]);
        const auto& more = through[behind[next]];
        behind.insert(behind.end(), more.begin(), more.end());
    }
    judge_leakage(all, {ThingKind::outlet, o}, Message{tr("Outlet {0}"), {outlet_name(network, o)}}, leakage, findings);
}

}  // namespace

void find_leakage(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t b = 0; b < all.network.survey().breakers.size(); ++b) judge_breaker(all, b, findings);
    const Survey& survey = all.network.survey();
    const FedThrough through = fed_through(survey);
    for (std::size_t o = 0; o < survey.outlets.size(); ++o)
        if (guards_ground(survey.outlets[o].guards)) judge_outlet(all, o, through, findings);
}

}  // namespace doorcard
