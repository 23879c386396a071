// SPDX-License-Identifier: MIT
// Ratings of receptacles against their circuit, 210.21(B): receptacle-rating.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/lookups.hpp"
#include "rules/protection_lookups.hpp"

namespace doorcard {
namespace {

std::optional<Amperes> rating_of(const Outlet& outlet, const RuleBook& book) {
    if (outlet.amps) return outlet.amps;
    const auto says = outlet.config ? configuration(book, *outlet.config) : std::nullopt;
    return says ? std::optional(says->amps) : std::nullopt;
}

/// Ranges by their demand (210.21(B)(4)), welders (630.11) and motors on a cord (430.81) may be on a receptacle below
/// the circuit's rating.
bool is_excepted(const Reckoned& all, std::size_t outlet) {
    return std::ranges::any_of(all.network.loads_at(outlet), [&](std::size_t l) {
        const Load& load = all.network.survey().loads[l];
        const Duty duty = load.duty_or_general();
        return load.hp || duty == Duty::range || duty == Duty::cooktop || duty == Duty::oven || duty == Duty::welder ||
               duty == Duty::motor;
    });
}

struct Judged {
    std::size_t circuit, outlet;
    Amperes rating, device;
};

Finding rating_finding(const Reckoned& all, const Judged& judged, Amperes limit, const char* source, Message text) {
    Finding finding = begin_finding("receptacle-rating", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::outlet, judged.outlet}));
    finding.value = judged.rating.value;
    finding.limit = limit.value;
    finding.unit = "A";
    finding.text = std::move(text);
    finding.remedy = {exceeds(judged.rating, limit)
                          ? tr("A receptacle of the right rating; never a larger device for its sake. Lock out first.")
                          : tr("A smaller device ahead, if the load allows it, or a receptacle of the right rating, if "
                               "the wire is made for the device. Lock out first."),
                      {}};
    finding.sources = {all.book.cite(source)};
    return finding;
}

std::optional<Finding> judge_single(const Reckoned& all, const Judged& judged) {
    if (is_excepted(all, judged.outlet) || !exceeds(judged.device, judged.rating)) return std::nullopt;
    return rating_finding(
        all, judged, judged.device, "nec-210-21-b-1",
        {tr("Outlet {0}: a single receptacle of {1:.4g} A alone on a circuit of {2:.4g} A; it may not be rated less"),
         {outlet_name(all.network, judged.outlet), judged.rating.value, judged.device.value}});
}

std::optional<Finding> judge_one_of_several(const Reckoned& all, const Judged& judged) {
    const auto range = receptacle_range(all.book, judged.device);
    if (!range) return std::nullopt;
    const Message::Part name = outlet_name(all.network, judged.outlet);
    if (exceeds(range->least, judged.rating))
        return rating_finding(
            all, judged, range->least, "nec-210-21-b-3",
            {tr("Outlet {0}: a receptacle of {1:.4g} A on a circuit of {2:.4g} A; {3:.4g} A at least is asked for"),
             {name, judged.rating.value, judged.device.value, range->least.value}});
    if (range->most && exceeds(judged.rating, *range->most))
        return rating_finding(
            all, judged, *range->most, "nec-210-21-b-3",
            {tr("Outlet {0}: a receptacle of {1:.4g} A on a circuit of {2:.4g} A; {3:.4g} A at most is asked for"),
             {name, judged.rating.value, judged.device.value, range->most->value}});
    return std::nullopt;
}

void judge_circuit(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto device = largest_rating(all.network, all.network.breakers_of(c));
    if (!device) return;
    const auto& outlets = all.network.outlets_on(c);
    for (const std::size_t o : outlets) {
        const Outlet& outlet = all.network.survey().outlets[o];
        const auto rating = rating_of(outlet, all.book);
        if (outlet.kind != OutletKind::receptacle || !rating || all.network.circuits_at(o).size() != 1) continue;
        const Judged judged{c, o, *rating, *device};
        const bool alone = outlets.size() == 1 && receptacles_at(outlet, all.book) == 1;
        if (auto finding = alone ? judge_single(all, judged) : judge_one_of_several(all, judged))
            findings.push_back(std::move(*finding));
    }
}

}  // namespace

void find_receptacle_ratings(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) judge_circuit(all, c, findings);
}

}  // namespace doorcard
