// SPDX-License-Identifier: MIT
#include "desk/form.hpp"

#include "desk/form_order.hpp"
#include "house.hpp"

using namespace doorcard;

namespace {

const FormField* field_on(const std::vector<FormGroup>& groups, std::string_view key, std::string_view address = "") {
    for (const FormGroup& group : groups)
        for (const FormField& field : group.fields)
            if (field.key == key && (address.empty() || field.address == address)) return &field;
    return nullptr;
}

std::string value_on(const Survey& survey, const char* address, std::string_view key, Units units = Units::feet) {
    const auto groups = form_of(survey, address, units);
    const FormField* field = field_on(groups, key);
    REQUIRE_MESSAGE(field, key);
    return field->value;
}

Survey filled(const Survey& survey, const char* address, const char* key, const char* typed,
              Units units = Units::feet) {
    return house::done(filled_in(survey, address, key, typed, units), survey);
}

std::string filling(const char* address, const char* key, const char* typed) {
    const Survey survey = house::survey();
    return house::why(filled_in(survey, address, key, typed, Units::feet), survey);
}

std::vector<std::string> titles(const std::vector<FormGroup>& groups) {
    std::vector<std::string> all;
    for (const FormGroup& group : groups) all.push_back((group.folded ? "+ " : "") + Words::in("en").say(group.title));
    return all;
}

std::string labels(const FormField& field) {
    std::string all;
    for (const FieldChoice& choice : field.choices)
        all += (all.empty() ? "" : "|") + choice.value + ": " + Words::in("en").say(choice.label);
    return all;
}

}  // namespace

TEST_CASE("what is typed into a field becomes a named step of editing") {
    CHECK(filling("circuit:kitchen-east", "wire.size", "10") == "done: Wire, size of kitchen-east: 10");
    CHECK(filling("circuit:kitchen-east", "wire.size", "#10 AWG") == "done: Wire, size of kitchen-east: #10 AWG");
    CHECK(filling("breaker:MAIN:5", "amps", "20A") == "done: Rating of MAIN:5: 20A");
    CHECK(filling("breaker:MAIN:5", "amps", "") == "done: Rating of MAIN:5 taken out");
    CHECK(filling("survey:", "worker", "qualified") == "done: Who works: a qualified person");
    CHECK(filling("source:utility", "kind", "solar") == "done: Kind of utility: solar");
    CHECK(filled(house::survey(), "circuit:kitchen-east", "wire.size", "#10 AWG").circuits[0].wire->size == "10");
}

TEST_CASE("what cannot be is refused with what would be right") {
    CHECK(filling("breaker:MAIN:5", "amps", "1,200") == "1,200 may be read two ways; write 1200 or 1.200");
    CHECK(filling("breaker:MAIN:5", "amps", "twenty") == "\"twenty\" is no number; write a number, as 20 or 3.5");
    CHECK(filling("panel:MAIN", "service", "perhaps") ==
          "\"perhaps\" is neither yes nor no; yes, no, or nothing: not looked");
    CHECK(filling("outlet:K2", "upstream", "K2") ==
          "outlet \"K2\" would be fed through itself; name the outlet that it is really fed through");
    CHECK(filling("survey:", "date", "14.5.2026") == "\"14.5.2026\" is no date; write it as 2026-05-14");
    CHECK(filling("panel:NONE", "title", "x").starts_with("there is no panel \"NONE\""));
    CHECK(filling("nothing", "title", "x") == "there is no such entry; choose one that is there");
    CHECK(filling("panel:MAIN", "colour", "x") == "there is no such field; choose one that is there");
}

TEST_CASE("yes, no and not looked are three things") {
    const Survey survey = house::survey();
    CHECK(filled(survey, "panel:MAIN", "service", "yes").panels[0].service == true);
    CHECK(filled(survey, "panel:MAIN", "service", "Sí").panels[0].service == true);
    const Survey no = filled(survey, "panel:MAIN", "service", "No");
    CHECK(no.panels[0].service == false);
    CHECK_FALSE(filled(no, "panel:MAIN", "service", "not looked").panels[0].service.has_value());
    CHECK_FALSE(filled(no, "panel:MAIN", "service", "").panels[0].service.has_value());
}

TEST_CASE("a list of nothing is looked for and not found; an empty field is not looked") {
    const Survey survey = house::survey();
    const Survey none = filled(survey, "breaker:MAIN:5", "guards", "none");
    REQUIRE(none.breakers[0].guards.has_value());
    CHECK(none.breakers[0].guards->empty());
    CHECK(value_on(none, "breaker:MAIN:5", "guards") == "none");
    CHECK_FALSE(filled(none, "breaker:MAIN:5", "guards", "").breakers[0].guards.has_value());
    const Survey dual = filled(survey, "breaker:MAIN:5", "guards", "dual");
    CHECK(dual.breakers[0].guards->size() == 2);
    CHECK(value_on(filled(survey, "breaker:MAIN:5", "signs", "hot, Buzz"), "breaker:MAIN:5", "signs") == "hot, buzz");
}

TEST_CASE("an item with a comma keeps it") {
    const Survey survey = house::survey();
    CHECK(value_on(survey, "panel:MAIN", "condition") == "\"rust, at the sill\", water");
    const Survey again = filled(survey, "panel:MAIN", "condition", "\"rust, at the sill\", water, heat");
    CHECK(again.panels[0].condition == Ids{"rust, at the sill", "water", "heat"});
}

TEST_CASE("things are named as a person says them") {
    const Survey survey = house::survey();
    CHECK(filled(survey, "breaker:MAIN:5", "tied_with", "7").breakers[0].tied_with == Ids{"MAIN:7"});
    CHECK(filled(survey, "load:toaster", "circuit", "7").loads[0].circuit == "pump");
    CHECK(filled(survey, "load:toaster", "circuit", "sump").loads[0].circuit == "pump");
    CHECK(filled(survey, "outlet:K2", "upstream", "straight from the panel").outlets[1].upstream == "home-run");
    CHECK(filled(survey, "panel:MAIN", "fed_by", "street").panels[0].fed_by == Ids{"utility"});
    CHECK(filled(survey, "reading:1", "of", "2+4").readings[0].of.text() == "breaker:MAIN:2+4");
    CHECK(value_on(survey, "reading:1", "of") == "5");
    CHECK(filled(survey, "reading:1", "volts_to", "7 = 0.4").readings[0].volts_to.at("breaker:MAIN:7").value == 0.4);
}

TEST_CASE("of what may not stand together the last typed stays") {
    const Survey survey = house::survey();
    const Load amps = filled(survey, "load:toaster", "amps", "9,2").loads[0];
    CHECK_FALSE(amps.watts.has_value());
    CHECK(amps.amps->value == 9.2);
    const Load moved = filled(survey, "load:toaster", "circuit", "pump").loads[0];
    CHECK_FALSE(moved.outlet.has_value());
    const Survey with_hp = filled(filled(survey, "load:toaster", "amps", "9.8"), "load:toaster", "hp", "1/2 hp");
    CHECK(with_hp.loads[0].hp == "1/2");
    CHECK(with_hp.loads[0].amps.has_value());  // marked amperes may stand beside horsepower
}

TEST_CASE("a length is shown in either unit, and stays as it was written until another is typed") {
    const Survey survey = house::survey();
    CHECK(value_on(survey, "circuit:kitchen-east", "wire.length_ft", Units::metres) == "19");
    CHECK(value_on(survey, "circuit:kitchen-east", "wire.length_ft", Units::feet) == "62.3");
    CHECK(filled(survey, "circuit:kitchen-east", "wire.length_ft", "62.3", Units::feet) == survey);
    const Survey feet = filled(survey, "circuit:kitchen-east", "wire.length_ft", "65", Units::feet);
    CHECK(feet.circuits[0].wire->length == Length{65, false});
    CHECK(feet.circuits[0].wire->size == "12");
    const Survey metres = filled(feet, "circuit:kitchen-east", "wire.length_ft", "20 m", Units::metres);
    CHECK(metres.circuits[0].wire->length == Length{20, true});
    CHECK_FALSE(filled(metres, "circuit:kitchen-east", "wire.length_ft", "").circuits[0].wire->length.has_value());
}

TEST_CASE("choices read as the trade says them, and what stands in the file is among them") {
    const Survey survey = house::survey();
    const auto outlet = form_of(survey, "outlet:K2", Units::feet);
    CHECK(labels(*field_on(outlet, "circuit")) == ": not known|kitchen-east: 5 Kitchen counter|pump: 7 Sump");
    CHECK(labels(*field_on(outlet, "upstream")) == ": not known|home-run: straight from the panel|K1: K1|K2: K2");
    const auto circuit = form_of(survey, "circuit:pump", Units::feet);
    CHECK(labels(*field_on(circuit, "breaker")) ==
          ": not known|MAIN:5: 5 Kitchen counter|MAIN:7: 7 Sump|MAIN:2+4: 2+4");
    const Survey crossed = filled(survey, "circuit:pump", "breaker", "MAIN:5, MAIN:7");
    CHECK(crossed.circuits[1].breakers == Ids{"MAIN:5", "MAIN:7"});
    const auto two = form_of(crossed, "circuit:pump", Units::feet);
    CHECK(field_on(two, "breaker")->choices.back().value == field_on(two, "breaker")->value);
}

TEST_CASE("a hint says what is taken where nothing is said") {
    const Words words = Words::in("en");
    CHECK(words.say(hint_of("panel", "numbering")) == "taken as odd numbers left where nothing is said");
    CHECK(words.say(hint_of("dwelling", "laundry_circuits")) == "taken as 1 where nothing is said");
    CHECK(words.say(hint_of("breaker", "full_rated")) == "taken as no where nothing is said");
    CHECK(words.say(hint_of("circuit", "traced.on")) == "2026-05-14");
    CHECK(words.say(hint_of("dwelling", "units")) == "");
}

TEST_CASE("the slip of a row: its breaker, then each circuit on it, the rest folded away") {
    const auto slip = slip_of(house::survey(), "MAIN", {5, ' '}, Units::feet);
    CHECK(titles(slip) == std::vector<std::string>{"Breaker MAIN:5", "+ More of this breaker",
                                                   "Circuit: Kitchen counter", "+ More of this circuit"});
    CHECK(field_on(slip, "amps")->value == "20");
    CHECK(field_on(slip, "amps")->important);
    CHECK(labels(*field_on(slip, "neutral")) ==
          ": not traced|own: its own, shared with nobody|with:pump: shared with 7 Sump");
    CHECK(slip_of(house::survey(), "MAIN", {1, ' '}, Units::feet).empty());
}

TEST_CASE("a neutral shared with a neighbour is named in both circuits at once") {
    const Survey shared = filled(house::survey(), "circuit:kitchen-east", "neutral", "with:pump");
    CHECK(shared.circuits[0].neutral == "N1");
    CHECK(shared.circuits[1].neutral == "N1");
}

TEST_CASE("the arrival goes in the order of a call") {
    const auto arrival = arrival_of(house::survey(), "MAIN", Units::feet);
    CHECK(titles(arrival) == std::vector<std::string>{
                                 "Who works", "The story", "First look: heat, smell, water, cover", "What must stay on",
                                 "+ Must anything else stay on?", "Source utility", "The panel", "+ More of the panel",
                                 "The building", "+ If it is a dwelling", "+ Grounding", "+ For the papers"});
    const FormField* pump = field_on(arrival, "keep_on", "breaker:MAIN:7");
    REQUIRE(pump);
    CHECK(Words::in("en").say(pump->label) == "7 Sump");
    CHECK(pump->value == "sump pump");
    CHECK(titles(arrival_of(Survey{}, "", Units::feet)) ==
          std::vector<std::string>{"Who works", "The story", "The building", "+ If it is a dwelling", "+ Grounding",
                                   "+ For the papers"});
}

TEST_CASE("a dwelling, the grounding and what mapping reckons with begin with their first field") {
    const Survey survey = filled(house::survey(), "dwelling:", "floor_area_ft2", "1850 ft2");
    REQUIRE(survey.dwellings.size() == 1);
    CHECK(survey.dwellings[0].id == "dwelling");
    CHECK(survey.dwellings[0].floor_area->square_feet() == 1850);
    CHECK(filled(survey, "grounding:", "gec.size", "4 AWG").grounding->gec_size == "4");
    CHECK(filled(survey, "grounding:", "electrodes", "rod, water pipe").grounding->electrodes->size() == 2);
    CHECK(filled(survey, "mapping:", "walk_minutes", "8").mapping->walk_minutes == 8);
}

TEST_CASE("photos: one that was there keeps what is said of it") {
    Survey survey = filled(house::survey(), "panel:MAIN", "photos", "front.jpg");
    REQUIRE(survey.panels[0].photos->size() == 1);
    Panel panel = survey.panels[0];
    panel.photos->front().note = "as found";
    survey.panels = survey.panels.with_row(0, panel);
    const Survey more = filled(survey, "panel:MAIN", "photos", "front.jpg, \"side, left.jpg\"");
    REQUIRE(more.panels[0].photos->size() == 2);
    CHECK(more.panels[0].photos->front().note == "as found");
    CHECK(more.panels[0].photos->back().file == "side, left.jpg");
}

TEST_CASE("go there: a finding leads to its entry and to the key that mends it") {
    const Survey survey = house::survey();
    const auto at = [&](const char* rule, const char* of, Basis basis = Basis::required) {
        Finding finding;
        finding.rule = rule;
        finding.basis = basis;
        finding.of = *parse_address(of);
        const FieldAtFault field = field_at_fault(finding, survey);
        return field.address + " " + field.key;
    };
    CHECK(at("neutral-untraced", "circuit:pump", Basis::gap) == "circuit:pump neutral");
    CHECK(at("load-over-rating", "circuit:pump") == "breaker:MAIN:7 amps");
    CHECK(at("nameplate-missing", "circuit:kitchen-east", Basis::gap) == "load:toaster watts");
    CHECK(at("wire-too-small", "circuit:kitchen-east") == "circuit:kitchen-east wire.size");
    CHECK(at("wire-too-small", "panel:MAIN") == "panel:MAIN feeder.size");
    CHECK(at("voltage-out-of-range", "breaker:MAIN:7") == "breaker:MAIN:7 ");
    CHECK(at("legs-unbalanced", "breaker:MAIN:5") == "reading:1 amps");
    CHECK(at("label-vague", "breaker:MAIN:5") == "circuit:kitchen-east purpose");
    CHECK(at("label-missing", "breaker:MAIN:2+4") == "breaker:MAIN:2+4 state");
    CHECK(at("gec-too-small", "panel:MAIN") == "grounding: gec.size");
    CHECK(at("generator-no-interlock", "source:utility") == "source:utility interlock");
    CHECK(at("local-rule-laxer", "survey:") == "survey: local_rules");
    CHECK(at("breaker-overlap", "breaker:MAIN:5") == "breaker:MAIN:5 ");
    CHECK(at("a-rule-of-tomorrow", "outlet:K1") == "outlet:K1 ");
}
