// SPDX-License-Identifier: MIT
// Questions to the graph: what goes dead, what is upstream and downstream, what is fed twice.
#include "network/found.hpp"

using namespace doorcard;

namespace {

/// MAIN with a kitchen, a double feed, a panel SHOP below it, and solar through a breaker of SHOP.
const std::string house = R"(format = 1
[[source]]
id = "utility"
system = "120/240 1ph 3w"
[[source]]
id = "solar"
kind = "pv"
system = "120/240 1ph 3w"
through = "SHOP:2+4"
[[panel]]
id = "SHOP"
fed_by = "MAIN:2+4"
[[panel]]
id = "MAIN"
fed_by = "utility"
[[breaker]]
panel = "MAIN"
spaces = [1]
[[breaker]]
panel = "MAIN"
spaces = [3]
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
[[breaker]]
panel = "SHOP"
spaces = [1]
[[breaker]]
panel = "SHOP"
spaces = [2, 4]
[[circuit]]
id = "kitchen"
breaker = "MAIN:1"
[[circuit]]
id = "hall"
breaker = "MAIN:3"
[[circuit]]
id = "bench"
breaker = "SHOP:1"
[[outlet]]
id = "K1"
circuit = "kitchen"
[[outlet]]
id = "K2"
upstream = "K1"
[[outlet]]
id = "D"
circuit = ["kitchen", "hall"]
[[outlet]]
id = "W1"
circuit = "bench"
[[load]]
id = "kettle"
outlet = "K2"
[[load]]
id = "lamp"
outlet = "D"
)";

Lines dead(const Network& network, const Lines& opened) {
    std::vector<Thing> things;
    for (const std::string& name : opened) things.push_back(thing_named(network, name));
    return names(network, network.dead_when_open(things));
}

}  // namespace

TEST_CASE("open a breaker: all behind it goes dead, and an outlet with two feeds does not") {
    const Network network = network_of(survey_of(house));
    CHECK(dead(network, {"breaker:MAIN:1"}) == Lines{"circuit:kitchen", "outlet:K1", "outlet:K2", "load:kettle"});
    CHECK(dead(network, {"breaker:MAIN:3"}) == Lines{"circuit:hall"});
    CHECK(dead(network, {"breaker:MAIN:1", "breaker:MAIN:3"}) ==
          Lines{"circuit:kitchen", "circuit:hall", "outlet:K1", "outlet:K2", "outlet:D", "load:kettle", "load:lamp"});
}

TEST_CASE("open an outlet: what is fed on from it goes dead") {
    const Network network = network_of(survey_of(house));
    CHECK(dead(network, {"outlet:K1"}) == Lines{"outlet:K2", "load:kettle"});
}

TEST_CASE("open nothing, and nothing goes dead") { CHECK(dead(network_of(survey_of(house)), {}).empty()); }

TEST_CASE("open the feeder: a source that comes in below keeps its panel live") {
    const Network network = network_of(survey_of(house));
    CHECK(dead(network, {"breaker:MAIN:2+4"}).empty());
    CHECK(dead(network, {"breaker:MAIN:2+4", "breaker:SHOP:2+4"}) ==
          Lines{"panel:SHOP", "breaker:SHOP:1", "circuit:bench", "outlet:W1"});
    CHECK(dead(network, {"breaker:MAIN:2+4", "source:solar"}) ==
          Lines{"panel:SHOP", "breaker:SHOP:1", "breaker:SHOP:2+4", "circuit:bench", "outlet:W1"});
}

TEST_CASE("open the main: all of its panel goes dead but what another source holds up") {
    const Network network = network_of(survey_of(house));
    const Lines gone = dead(network, {"source:utility"});
    CHECK(std::find(gone.begin(), gone.end(), "panel:MAIN") != gone.end());
    CHECK(std::find(gone.begin(), gone.end(), "outlet:D") != gone.end());
    CHECK(std::find(gone.begin(), gone.end(), "panel:SHOP") == gone.end());
    CHECK(std::find(gone.begin(), gone.end(), "outlet:W1") == gone.end());
}

TEST_CASE("a panel that nothing is known to feed is live by itself: opening all else never calls it dead") {
    const Network network = network_of(survey_of("format = 1\n[[panel]]\nid = \"P\"\n" + breaker_in("P", "[1]")));
    CHECK(dead(network, {"breaker:P:1"}).empty());
    CHECK(dead(network, {"panel:P"}) == Lines{"breaker:P:1"});
}

TEST_CASE("transfer equipment: dead only when every one of its feeds is open") {
    const Network network =
        network_of(survey_of("format = 1\n[[source]]\nid = \"utility\"\n[[source]]\nid = \"generator\"\n"
                             "[[panel]]\nid = \"E\"\nfed_by = [\"utility\", \"generator\"]\n" +
                             breaker_in("E", "[1]")));
    CHECK(dead(network, {"source:utility"}).empty());
    CHECK(dead(network, {"source:utility", "source:generator"}) == Lines{"panel:E", "breaker:E:1"});
}

TEST_CASE("what nothing feeds is not called dead") {
    const Network network =
        network_of(survey_of(house + "[[circuit]]\nid = \"lost\"\n[[outlet]]\nid = \"L\"\ncircuit = \"lost\"\n"));
    const Lines gone = dead(network, {"source:utility", "source:solar"});
    CHECK(std::find(gone.begin(), gone.end(), "outlet:L") == gone.end());
}

TEST_CASE("upstream of an outlet: every way from every source") {
    const Network network = network_of(survey_of(house));
    CHECK(names(network, network.upstream_of(thing_named(network, "load:kettle"))) ==
          Lines{"source:utility", "panel:MAIN", "breaker:MAIN:1", "circuit:kitchen", "outlet:K1", "outlet:K2"});
    CHECK(names(network, network.upstream_of(thing_named(network, "outlet:W1"))) ==
          Lines{"source:utility", "source:solar", "panel:SHOP", "panel:MAIN", "breaker:MAIN:2+4", "breaker:SHOP:1",
                "breaker:SHOP:2+4", "circuit:bench"});
}

TEST_CASE("downstream of a breaker") {
    const Network network = network_of(survey_of(house));
    CHECK(names(network, network.downstream_of(thing_named(network, "breaker:MAIN:3"))) ==
          Lines{"circuit:hall", "outlet:D", "load:lamp"});
    CHECK(names(network, network.downstream_of(thing_named(network, "load:lamp"))).empty());
}

TEST_CASE("panels from the top: each before what it feeds, whatever the order of the file") {
    const Network network = network_of(survey_of(house));
    CHECK(network.panels_from_the_top() == std::vector<std::size_t>{1, 0});
}

TEST_CASE("fed twice: outlets and circuits with several ways at once") {
    CHECK(names(network_of(survey_of(house)), network_of(survey_of(house)).fed_twice()) == Lines{"outlet:D"});
}

TEST_CASE("feeds carry their conductors") {
    const Network network = network_of(
        survey_of(panel_on("120/240 1ph 3w", "feeder = { size = \"2/0\", metal = \"cu\" }\n") + breaker_in("P", "[1]") +
                  "\n[[circuit]]\nid = \"c\"\nbreaker = \"P:1\"\nwire = { size = \"12\", metal = \"cu\" }\n"
                  "\n[[circuit]]\nid = \"d\"\nbreaker = \"P:1\"\n"));
    std::vector<std::string> sizes;
    for (const Feed& feed : network.feeds())
        if (feed.to.kind == ThingKind::panel || feed.to.kind == ThingKind::circuit)
            sizes.push_back(feed.conductors ? feed.conductors->size.value_or("") : "not known");
    CHECK(sizes == Lines{"2/0", "12", "not known"});
}

TEST_CASE("feeds carry the nameplates below them and the readings at their ends") {
    const Network network = network_of(survey_of(
        house + "[[reading]]\nof = \"circuit:kitchen\"\namps = 4.0\n[[reading]]\nof = \"circuit:hall\"\namps = 1.0\n"));
    const Thing breaker = thing_named(network, "breaker:MAIN:1");
    const Thing circuit = thing_named(network, "circuit:kitchen");
    for (const Feed& feed : network.feeds()) {
        if (feed.from != breaker || feed.to != circuit) continue;
        CHECK(network.carried_by(feed).loads == std::vector<std::size_t>{0, 1});
        CHECK(network.carried_by(feed).readings == std::vector<std::size_t>{0});
    }
    const Thing bench = thing_named(network, "circuit:bench");
    for (const Feed& feed : network.feeds())
        if (feed.to == bench) CHECK(network.carried_by(feed).loads.empty());
}
