// SPDX-License-Identifier: MIT
// Laws of the panel schedule, on random surveys from a fixed seed.
#include "assess/schedule.hpp"

#include <doctest/doctest.h>

#include "property/draw.hpp"

using namespace doorcard;

namespace {

/// A load can come by two ways: then rows show it twice and the legs once.
bool by_two_ways(const Network& network) {
    for (const Circuit& circuit : network.survey().circuits)
        if (circuit.breakers.size() > 1) return true;
    for (std::size_t o = 0; o < network.survey().outlets.size(); ++o)
        if (network.circuits_at(o).size() > 1) return true;
    for (const Panel& panel : network.survey().panels)
        if (panel.fed_by.size() > 1) return true;
    return false;
}

double sum_on_leg(const PanelSchedule& schedule, char leg) {
    double sum = 0;
    for (const ScheduleRow& row : schedule.rows)
        if (const auto at = row.va.find(leg); at != row.va.end() && at->second) sum += at->second->value;
    if (const auto at = schedule.set_on_panel.find(leg); at != schedule.set_on_panel.end() && at->second)
        sum += at->second->value;
    return sum;
}

}  // namespace

TEST_CASE("law: the rows of a schedule add up to its legs, a feeder counted once, and its spaces to their number") {
    const RuleBook book = *built_in_book("NEC-2023");
    int looked = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        CAPTURE(seed);
        Draw draw(seed * 7919);
        const Network network = network_of(random_survey(draw));
        for (const PanelSchedule& schedule : schedules_of(network, assess(network, book), book)) {
            const SpaceCounts& spaces = schedule.spaces;
            if (spaces.total) CHECK(spaces.used + spaces.spare + spaces.empty + spaces.unseen == *spaces.total);
            for (const ScheduleRow& row : schedule.rows)
                if (!row.va_complete) CHECK_FALSE(schedule.complete);
            if (by_two_ways(network)) continue;
            for (const ScheduleLeg& leg : schedule.legs) {
                if (!leg.connected_va) continue;
                CAPTURE(leg.leg);
                CHECK(sum_on_leg(schedule, leg.leg) == doctest::Approx(leg.connected_va->value));
                ++looked;
            }
        }
    }
    CHECK(looked > 200);
}
