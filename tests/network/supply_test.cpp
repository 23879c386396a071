// SPDX-License-Identifier: MIT
// What stands at a panel's bus: contract 2 and reckoning 'Legs and angles'.
#include <numbers>

#include "network/found.hpp"

using namespace doorcard;

namespace {

/// A panel S fed from P through these spaces.
Network fed_through(const std::string& system, const std::string& spaces, const std::string& keys_of_s = "",
                    const std::string& keys_of_p = "", const std::string& keys_of_breaker = "") {
    return network_of(survey_of(panel_on(system, keys_of_p) +
                                breaker_in("P", spaces, "id = \"f\"\n" + keys_of_breaker) +
                                "\n[[panel]]\nid = \"S\"\nfed_by = \"f\"\nspaces = 12\n" + keys_of_s));
}

std::string system_name(const PanelSupply& supply) {
    return supply.system ? std::string(facts(*supply.system).name) : "unknown";
}

double degrees(Phasor phasor) { return std::arg(phasor) * 180 / std::numbers::pi; }

doctest::Approx near(double value) { return doctest::Approx(value).epsilon(1e-12); }

}  // namespace

TEST_CASE("cut systems: what the poles of a feeding breaker make of each system") {
    struct Cut {
        const char* from;
        const char* spaces;
        const char* system;
        const char* legs;
    };
    const std::vector<Cut> cuts = {
        {"120/240 1ph 3w", "[1, 3]", "120/240 1ph 3w", "AB"},
        {"120/240 1ph 3w", "[3]", "120 1ph 2w", "B"},
        {"120/208 1ph 3w", "[1, 3]", "120/208 1ph 3w", "AB"},
        {"120/208 1ph 3w", "[1]", "120 1ph 2w", "A"},
        {"208Y/120 3ph 4w", "[1, 3, 5]", "208Y/120 3ph 4w", "ABC"},
        {"208Y/120 3ph 4w", "[3, 5]", "120/208 1ph 3w", "BC"},
        {"208Y/120 3ph 4w", "[5, 7]", "120/208 1ph 3w", "AC"},
        {"208Y/120 3ph 4w", "[5]", "120 1ph 2w", "C"},
        {"480Y/277 3ph 4w", "[1, 3, 5]", "480Y/277 3ph 4w", "ABC"},
        {"480Y/277 3ph 4w", "[1, 3]", "unknown", "AB"},
        {"480Y/277 3ph 4w", "[1]", "unknown", "A"},
        {"240/120 3ph 4w high-leg", "[1, 3, 5]", "240/120 3ph 4w high-leg", "ABC"},
        {"240/120 3ph 4w high-leg", "[5, 7]", "120/240 1ph 3w", "AC"},
        {"240/120 3ph 4w high-leg", "[1, 3]", "unknown", "AB"},
        {"240/120 3ph 4w high-leg", "[5]", "120 1ph 2w", "C"},
        {"240/120 3ph 4w high-leg", "[3]", "unknown", "B"},
        {"240 3ph 3w", "[1, 3, 5]", "240 3ph 3w", "ABC"},
        {"240 3ph 3w", "[1, 3]", "unknown", "AB"},
        {"480 3ph 3w", "[1]", "unknown", "A"},
        {"120 1ph 2w", "[3]", "120 1ph 2w", "A"},
        {"230 1ph 2w", "[1]", "230 1ph 2w", "A"},
        {"400Y/230 3ph 4w", "[1, 3, 5]", "400Y/230 3ph 4w", "ABC"},
        {"400Y/230 3ph 4w", "[1]", "unknown", "A"},
    };
    for (const Cut& cut : cuts) {
        CAPTURE(cut.from);
        CAPTURE(cut.spaces);
        const PanelSupply supply = supply_of(fed_through(cut.from, cut.spaces), "S");
        CHECK(system_name(supply) == cut.system);
        CHECK(supply.legs == cut.legs);
    }
}

TEST_CASE("cut systems: both poles of the feeding breaker on one leg make no system") {
    const Network network = fed_through("120/240 1ph 3w", "[1, 3]", "", "", "legs = \"AA\"\n");
    CHECK(system_name(supply_of(network, "S")) == "unknown");
}

TEST_CASE("cut systems: a pole whose leg is not known gives a panel with a system of its own that system's letters") {
    const Network network = fed_through("208Y/120 3ph 4w", "[1, 3]", "system = \"120/208 1ph 3w\"\n",
                                        "legs_down = \"ABC\"\n", "legs = \"AA\"\n");
    CHECK(supply_of(network, "S").legs == "AB");
    const Network foreign =
        fed_through("120/240 1ph 3w", "[1, 3]", "system = \"120/240 1ph 3w\"\n", "", "legs = \"AC\"\n");
    CHECK(legs_of(foreign, "f") == "A?");
    CHECK(supply_of(foreign, "S").legs == "AB");
}

TEST_CASE("legs of a fed panel: the building's letters, in the order of the feeding spaces, from the row of space 1") {
    const auto rows = [](const Network& network) { return supply_of(network, "S").down; };
    CHECK(rows(fed_through("120/240 1ph 3w", "[1, 3]")) == "AB");
    CHECK(rows(fed_through("120/240 1ph 3w", "[3, 5]")) == "BA");
    CHECK(rows(fed_through("120/240 1ph 3w", "[5, 3]")) == "BA");
    CHECK(rows(fed_through("208Y/120 3ph 4w", "[5, 7]")) == "CA");
    CHECK(rows(fed_through("208Y/120 3ph 4w", "[3, 5]")) == "BC");
    CHECK(rows(fed_through("208Y/120 3ph 4w", "[3, 5, 7]")) == "ABC");  // three poles: ABC, whatever they begin with
    CHECK(rows(fed_through("120/240 1ph 3w", "[3, 5]", "legs_down = \"AB\"\n")) == "AB");
}

TEST_CASE("legs of a fed panel: given or assumed is kept apart") {
    CHECK_FALSE(supply_of(fed_through("120/240 1ph 3w", "[1, 3]"), "S").down_given);
    CHECK(supply_of(fed_through("120/240 1ph 3w", "[1, 3]", "legs_down = \"BA\"\n"), "S").down_given);
}

TEST_CASE("transformer: letters and system of its own, beginning with A") {
    const Network network =
        fed_through("480Y/277 3ph 4w", "[3, 5, 7]", "system = \"208Y/120 3ph 4w\"\ntransformer = { kva = 45.0 }\n");
    CHECK(system_name(supply_of(network, "S")) == "208Y/120 3ph 4w");
    CHECK(supply_of(network, "S").down == "ABC");
    const Network single =
        fed_through("480Y/277 3ph 4w", "[3, 5]", "system = \"120/240 1ph 3w\"\ntransformer = { kva = 25.0 }\n");
    CHECK(supply_of(single, "S").legs == "AB");
    CHECK(supply_of(single, "S").down == "AB");
    CHECK(degrees(supply_of(single, "S").to_neutral.at('B')) == near(180));
}

TEST_CASE("a panel that nothing is known to feed has the legs of its own system") {
    const Network network = network_of(survey_of("format = 1\n[[panel]]\nid = \"P\"\nsystem = \"208Y/120 3ph 4w\"\n"));
    CHECK(supply_of(network, "P").legs == "ABC");
    CHECK(supply_of(network, "P").down == "ABC");
}

TEST_CASE("unknown system: letters that come in are known, volts are not") {
    const Network network = fed_through("480Y/277 3ph 4w", "[3]", "");
    const PanelSupply& supply = supply_of(network, "S");
    CHECK(supply.legs == "B");
    CHECK_FALSE(supply.volts_to_neutral('B'));
    CHECK_FALSE(supply.volts_line_to_line());
    const Network nothing = network_of(survey_of("format = 1\n[[panel]]\nid = \"P\"\n" + breaker_in("P", "[1]")));
    CHECK(supply_of(nothing, "P").legs.empty());
    CHECK(legs_of(nothing, "P:1") == "?");
}

TEST_CASE("transfer equipment: one of its feeds at a time, and the panel has the legs of the first that is known") {
    const Network network = network_of(
        survey_of("format = 1\n[[source]]\nid = \"gen\"\n[[source]]\nid = \"u\"\nsystem = \"208Y/120 3ph 4w\"\n"
                  "[[panel]]\nid = \"P\"\nfed_by = [\"gen\", \"u\"]\n"));
    CHECK(system_name(supply_of(network, "P")) == "208Y/120 3ph 4w");
}

TEST_CASE("angles: rotation A-B-C; two legs of a wye keep theirs") {
    const auto angles = [](const PanelSupply& supply) {
        std::map<char, double> found;
        for (const auto& [leg, volts] : supply.to_neutral) found[leg] = std::round(degrees(volts));
        return found;
    };
    const auto at_p = [&](const std::string& system, const std::string& keys = "") {
        return angles(supply_of(network_of(survey_of(panel_on(system, keys))), "P"));
    };
    using Angles = std::map<char, double>;
    CHECK(at_p("120/240 1ph 3w") == Angles{{'A', 0}, {'B', 180}});
    CHECK(at_p("208Y/120 3ph 4w") == Angles{{'A', 0}, {'B', -120}, {'C', 120}});
    CHECK(at_p("240 3ph 3w") == Angles{{'A', 0}, {'B', -120}, {'C', 120}});
    CHECK(at_p("240/120 3ph 4w high-leg") == Angles{{'A', 0}, {'B', -90}, {'C', 180}});
    CHECK(at_p("240/120 3ph 4w high-leg", "high_leg = \"C\"\n") == Angles{{'A', 0}, {'B', 180}, {'C', 90}});
    CHECK(angles(supply_of(fed_through("208Y/120 3ph 4w", "[3, 5]"), "S")) == Angles{{'B', -120}, {'C', 120}});
    CHECK(angles(supply_of(fed_through("240/120 3ph 4w high-leg", "[5, 7]"), "S")) == Angles{{'A', 0}, {'C', 180}});
}

TEST_CASE("angles: line voltages and the middle of the three, as reckoning gives them") {
    const Network wye = network_of(survey_of(panel_on("208Y/120 3ph 4w")));
    CHECK(degrees(supply_of(wye, "P").line_direction('A', 'B')) == near(30));
    CHECK(degrees(supply_of(wye, "P").line_direction('B', 'C')) == near(-90));
    CHECK(degrees(supply_of(wye, "P").middle_direction('C')) == near(120));
    const Network high = network_of(survey_of(panel_on("240/120 3ph 4w high-leg")));
    const PanelSupply& supply = supply_of(high, "P");
    CHECK(degrees(supply.line_direction('A', 'B')) == near(60));
    CHECK(degrees(supply.line_direction('B', 'C')) == near(-60));
    CHECK(degrees(supply.middle_direction('A')) == near(30));
    CHECK(degrees(supply.middle_direction('B')) == near(-90));
    CHECK(degrees(supply.middle_direction('C')) == near(150));
}

TEST_CASE("the high leg: 208 V to neutral, kept down the feeders, and none for 120 V loads") {
    const Network network = fed_through("240/120 3ph 4w high-leg", "[1, 3, 5]", "", "high_leg = \"C\"\n");
    for (const char* panel : {"P", "S"}) {
        const PanelSupply& supply = supply_of(network, panel);
        CHECK(supply.high_leg == 'C');
        CHECK(supply.volts_to_neutral('C') == Volts(208));
        CHECK(supply.volts_to_neutral('A') == Volts(120));
        CHECK(supply.volts_line_to_line() == Volts(240));
        CHECK(supply.neutral_legs() == "AB");
    }
    CHECK(supply_of(network_of(survey_of(panel_on("240 3ph 3w"))), "P").neutral_legs().empty());
    CHECK_FALSE(supply_of(network_of(survey_of(panel_on("120 1ph 2w"))), "P").volts_line_to_line());
}
