// SPDX-License-Identifier: MIT
// What hangs where: legs and volts of circuits, ties, shared neutrals, inherited circuits, occupancies.
#include "network/found.hpp"

using namespace doorcard;

namespace {

std::string circuit(const std::string& id, const std::string& breakers, const std::string& keys = "") {
    return "\n[[circuit]]\nid = \"" + id + "\"\nbreaker = " + breakers + "\n" + keys;
}

std::string outlet(const std::string& id, const std::string& keys) {
    return "\n[[outlet]]\nid = \"" + id + "\"\n" + keys;
}

/// "legs volts" of one circuit on one breaker.
std::string legs_and_volts(const std::string& system, const std::string& spaces, const std::string& breaker_keys = "",
                           const std::string& circuit_keys = "", const std::string& panel_keys = "") {
    const Network network =
        network_of(survey_of(panel_on(system, panel_keys) + breaker_in("P", spaces, "id = \"b\"\n" + breaker_keys) +
                             circuit("c", "\"b\"", circuit_keys)));
    const auto volts = network.circuit_volts(0);
    return network.circuit_legs(0) + " " + (volts ? std::to_string(static_cast<int>(volts->value)) : "null");
}

std::vector<std::string> at(const Network& network, const std::string& outlet) {
    std::vector<std::string> ids;
    for (const std::size_t c : network.circuits_at(network.survey().outlets.position(outlet)))
        ids.push_back(network.survey().circuits[c].id);
    return ids;
}

}  // namespace

TEST_CASE("circuits: legs and volts follow from the breaker") {
    CHECK(legs_and_volts("120/240 1ph 3w", "[3]") == "B 120");
    CHECK(legs_and_volts("120/240 1ph 3w", "[1, 3]") == "AB 240");
    CHECK(legs_and_volts("208Y/120 3ph 4w", "[5, 7]") == "AC 208");
    CHECK(legs_and_volts("208Y/120 3ph 4w", "[1, 3, 5]") == "ABC 208");
    CHECK(legs_and_volts("480Y/277 3ph 4w", "[1]") == "A 277");
    CHECK(legs_and_volts("480Y/277 3ph 4w", "[1, 3, 5]") == "ABC 480");
    CHECK(legs_and_volts("120/208 1ph 3w", "[1, 3]") == "AB 208");
    CHECK(legs_and_volts("240 3ph 3w", "[1, 3]") == "AB 240");
    CHECK(legs_and_volts("240 3ph 3w", "[1]") == "A null");  // no neutral there
    CHECK(legs_and_volts("120 1ph 2w", "[1]") == "A 120");
    CHECK(legs_and_volts("400Y/230 3ph 4w", "[1]") == "A 230");
}

TEST_CASE("circuits: the high leg stands at 208 V to neutral") {
    CHECK(legs_and_volts("240/120 3ph 4w high-leg", "[3]") == "B 208");
    CHECK(legs_and_volts("240/120 3ph 4w high-leg", "[1]") == "A 120");
    CHECK(legs_and_volts("240/120 3ph 4w high-leg", "[5]", "", "", "high_leg = \"C\"\n") == "C 208");
    CHECK(legs_and_volts("240/120 3ph 4w high-leg", "[3, 5]") == "BC 240");
}

TEST_CASE("circuits: one leg of a multi-pole breaker, where the circuit says which") {
    CHECK(legs_and_volts("120/240 1ph 3w", "[1, 3]", "", "leg = \"B\"\n") == "B 120");
}

TEST_CASE("circuits: a leg that its breaker is not on is not known") {
    CHECK(legs_and_volts("208Y/120 3ph 4w", "[1, 3]", "", "leg = \"C\"\n") == " null");
}

TEST_CASE("circuits: poles of one breaker on one leg have no volts") {
    CHECK(legs_and_volts("120/240 1ph 3w", "[1, 3]", "legs = \"AA\"\n") == "A null");
}

TEST_CASE("circuits: unknown legs are none") {
    const Network network =
        network_of(survey_of("format = 1\n[[panel]]\nid = \"P\"\n" + breaker_in("P", "[1]", "id = \"b\"\n") +
                             circuit("c", "\"b\"") + "\n[[circuit]]\nid = \"lost\"\n"));
    CHECK(network.circuit_legs(0).empty());
    CHECK_FALSE(network.circuit_volts(0));
    CHECK(network.circuit_hots(0).empty());
    CHECK(network.circuit_legs(1).empty());
    CHECK(network.breakers_of(1).empty());
}

TEST_CASE("circuits: found on two breakers at once, they have the legs of both") {
    const Network network = network_of(survey_of(panel_on("120/240 1ph 3w") + breaker_in("P", "[1]") +
                                                 breaker_in("P", "[3]") + circuit("c", "[\"P:1\", \"P:3\"]")));
    CHECK(network.circuit_legs(0) == "AB");
    CHECK(network.circuit_hots(0) == std::vector<Hot>{{0, 'A'}, {1, 'B'}});
    CHECK(network.circuits_on(1) == std::vector<std::size_t>{0});
    CHECK(names(network, network.fed_twice()) == Lines{"circuit:c"});
}

TEST_CASE("ties: count both ways and chain") {
    const Network network = network_of(survey_of(
        panel_on("120/240 1ph 3w") + breaker_in("P", "[1]", "tied_with = [\"P:3\"]\n") + breaker_in("P", "[3]") +
        breaker_in("P", "[5]", "tied_with = [\"P:3\"]\n") + breaker_in("P", "[7]", "tied_with = []\n")));
    using Positions = std::vector<std::size_t>;
    for (const std::size_t b : {0, 1, 2}) CHECK(network.opened_with(b) == Positions{0, 1, 2});
    CHECK(network.opened_with(3) == Positions{3});
}

TEST_CASE("inherited circuits: an outlet has that of its upstream, up the chain, in any order of the file") {
    const Network network = network_of(survey_of(
        panel_on("120/240 1ph 3w") + breaker_in("P", "[1]") + breaker_in("P", "[3]") + circuit("c", "\"P:1\"") +
        circuit("d", "\"P:3\"") + outlet("K3", "upstream = \"K2\"\n") + outlet("K2", "upstream = \"K1\"\n") +
        outlet("K1", "circuit = \"c\"\nupstream = \"home-run\"\n") + outlet("X", "upstream = \"Y\"\n") +
        outlet("Y", "") + outlet("K4", "upstream = \"K3\"\ncircuit = \"d\"\n") + outlet("K5", "upstream = \"K4\"\n") +
        outlet("both", "circuit = [\"c\", \"d\"]\n") + outlet("after", "upstream = \"both\"\n")));
    CHECK(at(network, "K3") == Lines{"c"});
    CHECK(at(network, "K2") == Lines{"c"});
    CHECK(at(network, "X").empty());
    CHECK(at(network, "K4") == Lines{"d"});  // its own circuit stands over that of its upstream
    CHECK(at(network, "K5") == Lines{"d"});
    CHECK(at(network, "after") == Lines{"c", "d"});
    CHECK(network.outlets_on(0).size() == 5);  // K3, K2, K1, both, after
}

TEST_CASE("loads: of a circuit through its outlets, those that inherit it, or set straight on it; each once") {
    const Network network =
        network_of(survey_of(panel_on("120/240 1ph 3w") + breaker_in("P", "[1]") + circuit("c", "\"P:1\"") +
                             outlet("K1", "circuit = \"c\"\n") + outlet("K2", "upstream = \"K1\"\n") +
                             "\n[[load]]\nid = \"x\"\noutlet = \"K2\"\n\n[[load]]\nid = \"y\"\ncircuit = \"c\"\n"
                             "\n[[load]]\nid = \"z\"\npanel = \"P\"\n\n[[load]]\nid = \"nowhere\"\n"));
    CHECK(network.loads_on(0) == std::vector<std::size_t>{0, 1});
    CHECK(network.loads_at(1) == std::vector<std::size_t>{0});
}

TEST_CASE("shared neutrals: things of their own, in the order in which circuits name them; own and untraced are none") {
    const Network network = network_of(
        survey_of(panel_on("208Y/120 3ph 4w") + breaker_in("P", "[1]") + breaker_in("P", "[3]") +
                  breaker_in("P", "[5]") + breaker_in("P", "[2, 4]") + circuit("a", "\"P:5\"", "neutral = \"N2\"\n") +
                  circuit("b", "\"P:1\"", "neutral = \"N1\"\n") + circuit("c", "\"P:3\"", "neutral = \"N2\"\n") +
                  circuit("d", "\"P:1\"", "neutral = \"own\"\n") + circuit("e", "\"P:1\"") +
                  circuit("f", "\"P:2+4\"", "leg = \"A\"\nneutral = \"N2\"\n")));
    REQUIRE(network.neutrals().size() == 2);
    const SharedNeutral& first = network.neutrals()[0];
    CHECK(first.id == "N2");
    CHECK(first.circuits == std::vector<std::size_t>{0, 2, 5});
    CHECK(first.hots == std::vector<Hot>{{1, 'B'}, {2, 'C'}, {3, 'A'}});
    CHECK(first.legs == "ABC");
    CHECK(first.panels == std::vector<std::size_t>{0});
    CHECK(network.neutrals()[1].id == "N1");
}

TEST_CASE("shared neutrals: two circuits of one breaker on one leg are one hot; a neutral may span two panels") {
    const Network network = network_of(
        survey_of(panel_on("120/240 1ph 3w") + breaker_in("P", "[1]") + breaker_in("P", "[2, 4]", "id = \"f\"\n") +
                  "\n[[panel]]\nid = \"S\"\nfed_by = \"f\"\n" + breaker_in("S", "[3]") +
                  circuit("a", "\"P:1\"", "neutral = \"N\"\n") + circuit("b", "\"P:1\"", "neutral = \"N\"\n") +
                  circuit("c", "\"S:3\"", "neutral = \"N\"\n")));
    CHECK(network.neutrals()[0].hots == std::vector<Hot>{{0, 'A'}, {2, 'B'}});
    CHECK(network.neutrals()[0].panels == std::vector<std::size_t>{0, 1});
}

TEST_CASE("occupancy: covers its panel and every panel fed through it; without a panel the whole premises") {
    const std::string building =
        panel_on("208Y/120 3ph 4w") + breaker_in("P", "[1, 3, 5]", "id = \"f\"\n") +
        "\n[[panel]]\nid = \"SHOP\"\nfed_by = \"f\"\nspaces = 12\n" + breaker_in("SHOP", "[1, 3, 5]", "id = \"g\"\n") +
        "\n[[panel]]\nid = \"BACK\"\nfed_by = \"g\"\n" + breaker_in("P", "[2]") + breaker_in("BACK", "[2]") +
        circuit("front", "\"P:2\"") + circuit("back", "\"BACK:2\"");
    const auto covered = [&](const std::string& occupancy) {
        const Network network = network_of(survey_of(building + occupancy));
        std::string found;
        for (std::size_t p = 0; p < 3; ++p) found += network.in_occupancy(p) ? 'y' : 'n';
        for (std::size_t c = 0; c < 2; ++c) found += network.circuit_in_occupancy(c) ? 'y' : 'n';
        return found;
    };
    CHECK(covered("") == "nnnnn");
    CHECK(covered("\n[[occupancy]]\nkind = \"retail\"\npanel = \"SHOP\"\n") == "nyyny");
    CHECK(covered("\n[[occupancy]]\nkind = \"retail\"\n") == "yyyyy");
}
