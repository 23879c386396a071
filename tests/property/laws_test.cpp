// SPDX-License-Identifier: MIT
// Laws of the figures that hold for every survey: a few hundred random ones from a fixed seed.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "assess/assessment.hpp"
#include "network/leg_sums.hpp"
#include "property/draw.hpp"

using namespace doorcard;

namespace {

constexpr int surveys = 200;

const RuleBook& book() {
    static const RuleBook nec = built_in_book("NEC-2023").value();
    return nec;
}

Assessment assessed(const Survey& survey) { return assess(network_of(survey), book()); }

template <class Law>
void for_many(std::uint64_t seed, Law law) {
    for (int i = 0; i < surveys; ++i) {
        CAPTURE(i);
        Draw draw(seed * 1000003 + static_cast<std::uint64_t>(i));
        law(random_survey(draw), draw);
    }
}

/// Numbers of a row under names; the same names for the same kind of row.
using Figures = std::map<std::string, std::optional<double>>;

template <class T>
std::optional<double> plain(const std::optional<T>& quantity) {
    if (!quantity) return std::nullopt;
    if constexpr (requires { quantity->value; })
        return quantity->value;
    else
        return *quantity;
}

Figures figures(const LoadFigures& row) {
    Figures all = {{"connected_va", plain(row.connected_va)},       {"continuous_a", plain(row.continuous_a)},
                   {"noncontinuous_a", plain(row.noncontinuous_a)}, {"required_a", plain(row.required_a)},
                   {"measured_a", plain(row.measured_a)},           {"percent_of_rating", row.percent_of_rating},
                   {"ampacity_a", plain(row.ampacity_a)},           {"voltage_drop_percent", row.voltage_drop_percent},
                   {"total_drop_percent", row.total_drop_percent}};
    for (const auto& [leg, amps] : row.legs_a) all[std::string("legs_a ") + leg] = plain(amps);
    return all;
}

Figures figures(const NeutralFigures& row) {
    return {{"amps", plain(row.amps)},
            {"triplen_amps", plain(row.triplen_amps)},
            {"imbalance_percent", row.imbalance_percent}};
}

Figures figures(const PanelFigures& row) {
    Figures all = {{"neutral_amps", plain(row.neutral_amps)}, {"imbalance_percent", row.imbalance_percent}};
    for (const PanelLegFigures& leg : row.legs) {
        all[std::string("amps ") + leg.leg] = plain(leg.amps);
        all[std::string("va ") + leg.leg] = plain(leg.va);
    }
    return all;
}

/// Rows by id.
template <class Row>
std::map<std::string, Figures> by_id(const std::vector<Row>& rows) {
    std::map<std::string, Figures> found;
    for (const Row& row : rows) found.emplace(row.id, figures(row));
    return found;
}

/// Rule and address of each finding.
std::multiset<std::string> findings(const Assessment& assessment) {
    std::multiset<std::string> found;
    for (const Finding& finding : assessment.findings) found.insert(finding.rule + " " + finding.of.text());
    return found;
}

bool alike(const Figures& one, const Figures& other) {
    return std::ranges::equal(one, other, [](const auto& a, const auto& b) {
        if (a.first != b.first || a.second.has_value() != b.second.has_value()) return false;
        return !a.second || std::abs(*a.second - *b.second) <= 1e-9 * std::max(1.0, std::abs(*a.second));
    });
}

template <class Row>
bool alike(const std::vector<Row>& one, const std::vector<Row>& other) {
    const auto a = by_id(one), b = by_id(other);
    return std::ranges::equal(
        a, b, [](const auto& x, const auto& y) { return x.first == y.first && alike(x.second, y.second); });
}

template <class T>
Table<T> with(const Table<T>& table, T row) {
    std::vector<T> rows = table.rows();
    rows.push_back(std::move(row));
    return Table<T>(rows);
}

/// A circuit of its own breaker in the first panel, with a load where `va` is given.
Survey with_unrelated_circuit(const Survey& survey, std::optional<double> va) {
    Survey more = survey;
    Breaker breaker;
    breaker.panel = survey.panels[0].id;
    breaker.spaces = {84};
    breaker.id = breaker.default_id();
    breaker.amps = Amperes(20);
    more.breakers = with(survey.breakers, breaker);
    Circuit circuit;
    circuit.id = "unrelated";
    circuit.breakers = {breaker.id};
    more.circuits = with(survey.circuits, circuit);
    if (!va) return more;
    Load load;
    load.id = "unrelated load";
    load.circuit = circuit.id;
    load.va = VoltAmperes(*va);
    more.loads = with(survey.loads, load);
    return more;
}

/// The currents of a circuit's loads, each times its count.
std::vector<std::pair<LoadCurrent, double>> currents(const Network& network, std::size_t circuit) {
    const PanelSupply& supply = network.supply(network.panel_of(network.breakers_of(circuit).front()));
    std::vector<std::pair<LoadCurrent, double>> found;
    for (const std::size_t l : network.loads_on(circuit)) {
        const Load& load = network.survey().loads[l];
        found.emplace_back(current_of(load, {&supply, network.circuit_legs(circuit), false}, book()),
                           load.count_or_one());
    }
    return found;
}

Survey scaled(const Survey& survey, double factor) {
    std::vector<Load> loads = survey.loads.rows();
    for (Load& load : loads) {
        if (load.va) load.va = *load.va * factor;
        if (load.watts) load.watts = *load.watts * factor;
        if (load.amps) load.amps = *load.amps * factor;
    }
    Survey other = survey;
    other.loads = Table<Load>(loads);
    return other;
}

bool is(std::optional<double> one, std::optional<double> other) {
    if (!one || !other) return one.has_value() == other.has_value();
    return std::abs(*one - *other) <= 1e-9 * std::max(1.0, std::abs(*other));
}

/// Things that feeds lead to from sources and unfed panels: counted here by walking, without the graph.
std::set<Thing> reachable(const Network& network) {
    std::set<Thing> found;
    for (std::size_t s = 0; s < network.survey().sources.size(); ++s) found.insert({ThingKind::source, s});
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p)
        if (network.survey().panels[p].fed_by.empty()) found.insert({ThingKind::panel, p});
    for (std::size_t before = 0; before != found.size();) {
        before = found.size();
        for (const Feed& feed : network.feeds())
            if (found.contains(feed.from)) found.insert(feed.to);
    }
    return found;
}

}  // namespace

TEST_CASE("law: the same survey gives the same assessment") {
    for_many(1, [](const Survey& survey, Draw&) {
        const Assessment one = assessed(survey), other = assessed(survey);
        CHECK(one.findings == other.findings);
        CHECK(by_id(one.circuits) == by_id(other.circuits));
    });
}

TEST_CASE("law: an empty circuit more leaves every other figure as it was, to the bit") {
    for_many(2, [](const Survey& survey, Draw&) {
        const Assessment before = assessed(survey), after = assessed(with_unrelated_circuit(survey, {}));
        auto circuits = by_id(after.circuits);
        CHECK(circuits.erase("unrelated") == 1);
        CHECK(circuits == by_id(before.circuits));
        CHECK(by_id(after.feeders) == by_id(before.feeders));
        CHECK(by_id(after.neutrals) == by_id(before.neutrals));
        CHECK(by_id(after.panels) == by_id(before.panels));
    });
}

TEST_CASE("law: a loaded circuit more changes the panels above it, and nothing else, to the bit") {
    for_many(3, [](const Survey& survey, Draw& draw) {
        const Assessment before = assessed(survey);
        const Assessment after = assessed(with_unrelated_circuit(survey, draw.number(1, 3000)));
        auto circuits = by_id(after.circuits), feeders = by_id(after.feeders), panels = by_id(after.panels);
        circuits.erase("unrelated");
        auto feeders_before = by_id(before.feeders), panels_before = by_id(before.panels);
        for (auto* rows : {&feeders, &panels, &feeders_before, &panels_before}) rows->erase(survey.panels[0].id);
        CHECK(feeders == feeders_before);
        CHECK(panels == panels_before);
        CHECK(by_id(after.neutrals) == by_id(before.neutrals));
        for (auto& [id, row] : circuits) row.erase("total_drop_percent");  // the feeder's own drop may have grown
        auto circuits_before = by_id(before.circuits);
        for (auto& [id, row] : circuits_before) row.erase("total_drop_percent");
        CHECK(circuits == circuits_before);
    });
}

TEST_CASE("law: the order of entries in the file changes no figure and no finding") {
    for_many(4, [](const Survey& survey, Draw& draw) {
        const Assessment one = assessed(survey), other = assessed(shuffled(survey, draw));
        CHECK(alike(one.circuits, other.circuits));
        CHECK(alike(one.feeders, other.feeders));
        CHECK(alike(one.neutrals, other.neutrals));
        CHECK(alike(one.panels, other.panels));
        for (const std::string& finding : findings(one)) CHECK_MESSAGE(findings(other).contains(finding), finding);
        for (const std::string& finding : findings(other)) CHECK_MESSAGE(findings(one).contains(finding), finding);
    });
}

TEST_CASE("law: amperes of a leg never exceed the plain sum of the currents of its loads") {
    int compared = 0;
    for_many(5, [&](const Survey& survey, Draw&) {
        const Network network = network_of(survey);
        const Assessment assessment = assess(network, book());
        for (std::size_t c = 0; c < survey.circuits.size(); ++c)
            for (const auto& [leg, amps] : assessment.circuits[c].legs_a) {
                double sum = 0;
                for (const auto& [current, count] : currents(network, c))
                    if (current.legs.find(leg) != std::string::npos) sum += current.total().value * count;
                if (!amps) continue;
                ++compared;
                CHECK(amps->value <= sum * (1 + 1e-9));
            }
    });
    CHECK(compared > surveys);
}

TEST_CASE("law: connected volt-amperes of a feeder are those of all loads below it, each once") {
    for_many(6, [](const Survey& survey, Draw&) {
        const Network network = network_of(survey);
        std::map<std::size_t, double> loads;
        for (std::size_t c = 0; c < survey.circuits.size(); ++c)
            for (std::size_t i = 0; const auto& [current, count] : currents(network, c)) {
                const std::size_t load = network.loads_on(c)[i++];
                if (current.known()) loads[load] = std::max(loads[load], current.va->value * count);
            }
        std::optional<double> sum;
        for (const auto& [load, va] : loads) sum = sum.value_or(0) + va;
        CHECK(is(plain(assess(network, book()).feeders[0].connected_va), sum));
    });
}

TEST_CASE("law: the neutral of one line-to-neutral circuit carries what its leg carries") {
    int compared = 0;
    for_many(7, [&](const Survey& survey, Draw&) {
        const Network network = network_of(survey);
        const Assessment assessment = assess(network, book());
        for (std::size_t n = 0; n < network.neutrals().size(); ++n) {
            const SharedNeutral& neutral = network.neutrals()[n];
            if (neutral.circuits.size() != 1 || network.circuit_legs(neutral.circuits[0]).size() != 1) continue;
            const auto& legs = assessment.circuits[neutral.circuits[0]].legs_a;
            ++compared;
            CHECK(is(plain(assessment.neutrals[n].amps), plain(legs.begin()->second)));
        }
    });
    CHECK(compared > 50);
}

TEST_CASE("law: all loads scaled by one factor scale every ampere of legs, neutrals and panels by it") {
    for_many(8, [](const Survey& survey, Draw& draw) {
        const double factor = draw.number(1, 50) / 8.0;
        const Assessment one = assessed(survey), other = assessed(scaled(survey, factor));
        const auto times = [&](std::optional<double> figure) {
            return figure ? std::optional(*figure * factor) : std::nullopt;
        };
        for (std::size_t c = 0; c < one.circuits.size(); ++c) {
            CHECK(is(plain(other.circuits[c].connected_va), times(plain(one.circuits[c].connected_va))));
            CHECK(is(plain(other.circuits[c].required_a), times(plain(one.circuits[c].required_a))));
            for (const auto& [leg, amps] : one.circuits[c].legs_a)
                CHECK(is(plain(other.circuits[c].legs_a.at(leg)), times(plain(amps))));
        }
        for (std::size_t n = 0; n < one.neutrals.size(); ++n)
            CHECK(is(plain(other.neutrals[n].amps), times(plain(one.neutrals[n].amps))));
        for (std::size_t p = 0; p < one.panels.size(); ++p) {
            CHECK(is(plain(other.panels[p].neutral_amps), times(plain(one.panels[p].neutral_amps))));
            CHECK(is(other.panels[p].imbalance_percent, one.panels[p].imbalance_percent));
        }
    });
}

TEST_CASE("law: what a circuit requires is never less than its continuous and noncontinuous load together") {
    for_many(9, [](const Survey& survey, Draw&) {
        for (const LoadFigures& row : assessed(survey).circuits)
            if (row.required_a)
                CHECK(row.required_a->value >= (row.continuous_a->value + row.noncontinuous_a->value) * (1 - 1e-9));
    });
}

TEST_CASE(
    "law: a survey that contradicts itself is reckoned all the same: figures are numbers, not below 0, or not known") {
    const auto sound = [](const Figures& row) {
        return std::ranges::all_of(row, [](const auto& figure) {
            return !figure.second || (std::isfinite(*figure.second) && *figure.second >= 0);
        });
    };
    for_many(13, [&](const Survey& survey, Draw& draw) {
        const Assessment assessment = assessed(contradictory(survey, draw));
        for (const LoadFigures& row : assessment.circuits) CHECK(sound(figures(row)));
        for (const LoadFigures& row : assessment.feeders) CHECK(sound(figures(row)));
        for (const NeutralFigures& row : assessment.neutrals) CHECK(sound(figures(row)));
        for (const PanelFigures& row : assessment.panels) CHECK(sound(figures(row)));
    });
}

TEST_CASE("law: the order of entries does not matter to a survey that contradicts itself either") {
    for_many(14, [](const Survey& survey, Draw& draw) {
        const Survey given = contradictory(survey, draw);
        const Assessment one = assessed(given), other = assessed(shuffled(given, draw));
        CHECK(alike(one.circuits, other.circuits));
        CHECK(alike(one.feeders, other.feeders));
        CHECK(alike(one.neutrals, other.neutrals));
        CHECK(alike(one.panels, other.panels));
        CHECK(findings(one) == findings(other));
    });
}

TEST_CASE("law: with everything open, everything that was live is dead") {
    for_many(10, [](const Survey& survey, Draw&) {
        const Network network = network_of(survey);
        std::vector<Thing> opened;
        for (std::size_t s = 0; s < survey.sources.size(); ++s) opened.push_back({ThingKind::source, s});
        std::set<Thing> expected = reachable(network);
        for (const Thing& thing : opened) expected.erase(thing);
        const std::vector<Thing> dead = network.dead_when_open(opened);
        CHECK(std::set<Thing>(dead.begin(), dead.end()) == expected);
    });
}

TEST_CASE("law: more devices open never bring anything back") {
    for_many(11, [](const Survey& survey, Draw& draw) {
        const Network network = network_of(survey);
        std::vector<Thing> opened;
        std::set<Thing> gone;
        for (int step = 0; step < 4; ++step) {
            opened.push_back({ThingKind::breaker,
                              static_cast<std::size_t>(draw.number(0, static_cast<int>(survey.breakers.size()) - 1))});
            std::set<Thing> now(opened.begin(), opened.end());
            for (const Thing& thing : network.dead_when_open(opened)) now.insert(thing);
            CHECK(std::includes(now.begin(), now.end(), gone.begin(), gone.end()));
            gone = std::move(now);
        }
    });
}

TEST_CASE("law: what goes dead behind an open breaker lies downstream of it") {
    for_many(12, [](const Survey& survey, Draw&) {
        const Network network = network_of(survey);
        for (std::size_t b = 0; b < survey.breakers.size(); ++b) {
            const Thing breaker{ThingKind::breaker, b};
            const auto below = network.downstream_of(breaker);
            for (const Thing& thing : network.dead_when_open(std::span(&breaker, 1)))
                CHECK(std::find(below.begin(), below.end(), thing) != below.end());
        }
    });
}
