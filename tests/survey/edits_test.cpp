// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/entry_edits.hpp"
#include "survey/edits/load_edits.hpp"
#include "survey/edits/outlet_edits.hpp"
#include "survey/edits/panel_edits.hpp"
#include "survey/edits/room_edits.hpp"
#include "survey/edits/source_edits.hpp"
#include "survey/references.hpp"

using namespace doorcard;

namespace {

Breaker breaker(std::vector<int> spaces, std::vector<char> halves = {}) {
    Breaker it;
    it.panel = "M";
    it.spaces = std::move(spaces);
    it.halves = std::move(halves);
    it.id = it.default_id();
    return it;
}

/// Panel M of 12 spaces, breakers 1, 3 and 2+4, circuit c with outlet o and load l on 1, a reading, a round, a trip, a
/// trial and an accepted finding that name the breaker.
Survey house() {
    Survey survey;
    Panel panel;
    panel.id = "M";
    panel.spaces = 12;
    panel.fed_by = {"u"};
    panel.empty_spaces = {5, 7};
    survey.panels = Table<Panel>({panel});
    Source source;
    source.id = "u";
    survey.sources = Table<Source>({source});
    Breaker one = breaker({1}), three = breaker({3}), two = breaker({2, 4});
    one.tied_with = Ids{"M:3"};
    three.tied_with = Ids{"M:1"};
    two.legs = "AB";
    survey.breakers = Table<Breaker>({one, three, two});
    Circuit circuit;
    circuit.id = "c";
    circuit.breakers = {"M:1"};
    circuit.neutral = "N1";
    survey.circuits = Table<Circuit>({circuit});
    Outlet outlet;
    outlet.id = "o";
    outlet.circuits = {"c"};
    outlet.room = "Kitchen";
    survey.outlets = Table<Outlet>({outlet});
    Load load;
    load.id = "l";
    load.outlet = "o";
    survey.loads = Table<Load>({load});
    Reading reading;
    reading.of = *parse_address("breaker:M:1/A");
    reading.volts_to = {{"breaker:M:3", Volts(240)}};
    survey.readings = Table<Reading>({reading});
    Round round;
    round.off = {"M:1", "M:3"};
    survey.rounds = Table<Round>({round});
    Trip trip;
    trip.of = *parse_address("neutral:N1");
    survey.trips = Table<Trip>({trip});
    Trial trial;
    trial.circuit = "c";
    trial.kind = "watch";
    trial.removed = Ids{"run:o", "breaker:M:1", "home-run"};
    survey.trials = Table<Trial>({trial});
    Accepted accepted;
    accepted.of = "breaker:M:1/A";
    survey.accepted = Table<Accepted>({accepted});
    return survey;
}

Survey after(const Edit& edit, const Survey& survey = house()) {
    const auto outcome = edit.apply(survey);
    REQUIRE_MESSAGE(outcome, outcome.error().front().wrong);
    CHECK(dangling_references(*outcome).empty());
    return *outcome;
}

std::string refusal(const Edit& edit) {
    const auto outcome = edit.apply(house());
    REQUIRE_FALSE(outcome);
    CHECK_FALSE(outcome.error().front().right.empty());
    return outcome.error().front().wrong;
}

}  // namespace

TEST_CASE("edits: the house keeps the laws") { CHECK(kept_laws(house())); }

TEST_CASE("edits: a step that adds something says what") {
    const auto added = [](const Edit& edit) { return edit.name.parts; };
    const auto with_id = [](auto thing) {
        thing.id = "kitchen";
        return thing;
    };
    const std::vector<Message::Part> kitchen = {std::string("kitchen")};
    CHECK(added(add_circuit(with_id(Circuit{}))) == kitchen);
    CHECK(added(add_load(with_id(Load{}))) == kitchen);
    CHECK(added(add_outlet(with_id(Outlet{}))) == kitchen);
    CHECK(added(add_panel(with_id(Panel{}))) == kitchen);
    CHECK(added(add_room(with_id(Room{}))) == kitchen);
    CHECK(added(add_source(with_id(Source{}))) == kitchen);
}

TEST_CASE("edits: a breaker that moves takes every place along that names it") {
    const Survey moved = after(move_breaker("M:1", {"M", {7}, {}}));
    CHECK(moved.breakers[0].id == "M:7");
    CHECK(moved.breakers[1].tied_with == Ids{"M:7"});
    CHECK(moved.circuits[0].breakers == Ids{"M:7"});
    CHECK(moved.readings[0].of.text() == "breaker:M:7/A");
    CHECK(moved.rounds[0].off == Ids{"M:7", "M:3"});
    CHECK(moved.trials[0].removed == Ids{"run:o", "breaker:M:7", "home-run"});
    CHECK(moved.accepted[0].of == "breaker:M:7/A");
    CHECK(moved.panels[0].empty_spaces == std::vector{5});  // something is there now
    CHECK(references_to(moved, named_breaker, "M:1").empty());
    CHECK(after(move_breaker("M:7", {"M", {1}, {}}), moved).circuits[0].breakers == Ids{"M:1"});
}

TEST_CASE("edits: legs of the old place do not hold for the new one; a given id stays") {
    CHECK_FALSE(after(move_breaker("M:2+4", {"M", {6, 8}, {}})).breakers[2].legs);
    Survey named = house();
    auto rows = named.breakers.rows();
    rows[2].id = "range";
    rows[2].id_given = true;
    named.breakers = Table<Breaker>(rows);
    CHECK(after(move_breaker("range", {"M", {6, 8}, {}}), named).breakers[2].id == "range");
}

TEST_CASE("edits: no breaker moves into another, out of its panel, or nowhere") {
    CHECK(refusal(move_breaker("M:1", {"M", {3}, {}})) == "breaker \"M:3\" sits there");
    CHECK(refusal(move_breaker("M:2+4", {"M", {3, 5}, {}})) == "breaker \"M:3\" sits there");
    CHECK(refusal(move_breaker("M:1", {"M", {13}, {}})) ==
          "breaker \"M:13\" would sit in space 13, which panel \"M\" does not have");
    CHECK(refusal(move_breaker("M:1", {"X", {1}, {}})) ==
          "\"panel\" of breaker \"X:1\" would name \"X\", which is not there");
    CHECK(refusal(move_breaker("M:1", {"M", {}, {}})) == "a breaker sits in one space at least");
    CHECK(refusal(move_breaker("M:1", {"M", {5, 7}, {'a'}})) == "1 halves for 2 spaces");
    CHECK(refusal(move_breaker("M:9", {"M", {5}, {}})) == "there is no breaker \"M:9\"");
}

TEST_CASE("edits: halves of one space are two places") {
    const Survey tandem = after(add_breaker(breaker({9}, {'a'})));
    CHECK(after(add_breaker(breaker({9}, {'b'})), tandem).breakers.size() == 5);
    CHECK_FALSE(add_breaker(breaker({9})).apply(tandem));
    CHECK_FALSE(add_breaker(breaker({9}, {'a'})).apply(tandem));
}

TEST_CASE("edits: two breakers change places, and what names one names it where it is now") {
    Survey survey = house();
    const Survey swapped = after(swap_breakers("M:1", "M:3"), survey);
    CHECK(swapped.breakers[0].id == "M:3");
    CHECK(swapped.breakers[0].tied_with == Ids{"M:1"});
    CHECK(swapped.breakers[1].id == "M:1");
    CHECK(swapped.circuits[0].breakers == Ids{"M:3"});
    CHECK(swapped.readings[0].of.text() == "breaker:M:3/A");
    CHECK(swapped.readings[0].volts_to.contains("breaker:M:1"));
    CHECK(after(swap_breakers("M:3", "M:1"), survey).readings[0].volts_to.contains("breaker:M:1"));
    CHECK(after(swap_breakers("M:1", "M:3"), swapped).circuits[0].breakers == Ids{"M:1"});
    CHECK(refusal(swap_breakers("M:1", "M:2+4")) == "\"M:1\" and \"M:2+4\" do not have as many spaces");
    CHECK(refusal(swap_breakers("M:1", "M:9")) == "there is no breaker \"M:9\"");
}

TEST_CASE("edits: what is named is not taken out, and the refusal says what names it") {
    CHECK(refusal(remove_breaker("M:1")) == "\"M:1\" is named by breaker \"M:3\", circuit \"c\", reading 1 and 3 more");
    CHECK(refusal(remove_circuit("c")) == "\"c\" is named by outlet \"o\", trial 1");
    CHECK(refusal(remove_source("u")) == "\"u\" is named by panel \"M\"");
    CHECK(after(remove_load("l")).loads.empty());
}

TEST_CASE("edits: taken along goes what names it, and entries that say nothing without it") {
    const Survey without = after(remove_breaker("M:1", Mentions::take_along));
    CHECK(without.breakers.size() == 2);
    CHECK_FALSE(without.breakers[0].tied_with);  // not an empty list: nobody looked
    CHECK(without.circuits[0].breakers.empty());
    CHECK(without.readings.empty());
    CHECK(without.rounds[0].off == Ids{"M:3"});
    CHECK_FALSE(without.accepted[0].of);
    const Survey no_circuit = after(remove_circuit("c", Mentions::take_along));
    CHECK(no_circuit.trips.empty());  // its neutral is gone with it
    CHECK(no_circuit.trials.empty());
    const Survey no_panel = after(remove_panel("M", Mentions::take_along));
    CHECK(no_panel.breakers.empty());
    CHECK(no_panel.circuits[0].breakers.empty());
}

TEST_CASE("edits: an area that was of one panel does not become that of the whole premises") {
    Survey survey = house();
    Occupancy shop;
    shop.panel = "M";
    survey.occupancies = Table<Occupancy>({shop});
    const auto outcome = remove_panel("M", Mentions::take_along).apply(survey);
    REQUIRE_FALSE(outcome);
    CHECK(outcome.error().front().wrong == "the area of occupancy 1 is that of \"M\"");
}

TEST_CASE("edits: ties name each other, and go on both sides") {
    const Survey tied = after(tie_breakers({"M:1", "M:3", "M:2+4"}));
    CHECK(tied.breakers[0].tied_with == Ids{"M:3", "M:2+4"});
    CHECK(tied.breakers[2].tied_with == Ids{"M:1", "M:3"});
    const Survey untied = after(untie_breaker("M:1"), tied);
    CHECK_FALSE(untied.breakers[0].tied_with);
    CHECK(untied.breakers[1].tied_with == Ids{"M:2+4"});
}

TEST_CASE("edits: rating, state, text, wire, neutral, outlet, load") {
    CHECK(after(rate_breaker("M:1", Amperes(15))).breakers[0].amps == Amperes(15));
    CHECK(after(make_spare("M:1")).breakers[0].state == BreakerState::spare);
    const Survey off = after(switch_off("M:1", "buzzes"));
    CHECK(off.breakers[0].off_why == "buzzes");
    CHECK_FALSE(after(put_in_use("M:1"), off).breakers[0].off_why);
    CHECK(after(name_circuit("c", "Bench")).circuits[0].purpose == "Bench");
    CHECK_FALSE(after(name_circuit("c", "")).circuits[0].purpose);
    CHECK(after(wire_circuit("c", Wire{})).circuits[0].wire);
    CHECK(after(feed_circuit("c", {"M:3"})).circuits[0].breakers == Ids{"M:3"});
    CHECK(refusal(share_neutral("c", "own")) == "\"of\" of trip 1 would name \"N1\", which is not there");
    CHECK(after(chain_outlet("o", "home-run")).outlets[0].upstream == "home-run");
    CHECK(refusal(chain_outlet("o", "o")) == "outlet \"o\" would be fed through itself");
    CHECK(refusal(feed_panel("M", {"M:1"})) == "panel \"M\" would be fed by itself, in a circle");
    const Survey hung = after(hang_load_on_panel("l", "M"));
    CHECK((hung.loads[0].panel == "M" && !hung.loads[0].outlet));
    CHECK(after(assign_outlet("o", {})).outlets[0].circuits.empty());
    CHECK(refusal(assign_outlet("o", {"x"})) == "\"circuit\" of outlet \"o\" would name \"x\", which is not there");
}

TEST_CASE("edits: ids are unique and never change") {
    Outlet outlet;
    outlet.id = "l";
    CHECK(refusal(add_outlet(outlet)) == "there would be two things of the id \"l\", one of them this load");
    Room room;
    room.id = "kitchen";
    const Survey roomed = after(add_room(room));
    CHECK_FALSE(add_room(room).apply(roomed));
    CHECK(after(remove_room("kitchen"), roomed).outlets[0].room == "Kitchen");
    CHECK(refusal(remove_room("kitchen")) == "there is no \"kitchen\"");
}

TEST_CASE("edits: entries without an id by their place") {
    Reading reading;
    reading.of = *parse_address("circuit:c");
    const Survey added = after(add_reading(reading));
    CHECK(added.readings.size() == 2);
    reading.amps = Amperes(3);
    CHECK(after(change_reading(1, reading), added).readings[1].amps == Amperes(3));
    CHECK(after(remove_reading(0), added).readings[0].of.text() == "circuit:c");
    CHECK(refusal(remove_reading(1)) == "there is no such entry");
    CHECK(refusal(change_trip(7, {})) == "there is no such entry");
}

TEST_CASE("edits: several as one step are all done, or none") {
    const Edit both = together({"both", {}}, {rate_breaker("M:1", Amperes(15)), move_breaker("M:1", {"M", {5}, {}})});
    CHECK(after(both).breakers[0].id == "M:5");
    CHECK(refusal(together({"both", {}}, {rate_breaker("M:1", Amperes(15)), remove_load("x")})) == "there is no \"x\"");
}

TEST_CASE("edits: a thing that is not named shares its table with the survey before") {
    const Survey before = house();
    const Survey moved = after(move_breaker("M:2+4", {"M", {6, 8}, {}}), before);
    CHECK(moved.readings.is_same(before.readings));
    CHECK(moved.circuits.is_same(before.circuits));
}
