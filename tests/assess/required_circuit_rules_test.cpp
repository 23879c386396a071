// SPDX-License-Identifier: MIT
// required-circuit-missing, appliance-circuits-differ: 210.11(C).
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

const std::string seen = "traced = { how = \"switching\" }";

std::string serving(const std::string& id, const std::string& space, const std::string& place, double amps = 20,
                    const std::string& keys = seen) {
    return branch(id, space, amps, keys) + outlet("at-" + id, id, "kind = \"receptacle\"\nplace = \"" + place + "\"");
}
std::string dwelling(const std::string& keys = "") { return house + "[[dwelling]]\n" + keys + "\n"; }
std::string whole() {
    return serving("k1", "1", "kitchen") + serving("k2", "3", "dining room") + serving("l", "5", "laundry") +
           serving("b", "7", "bath");
}
Lines missing(const std::string& survey) { return found(survey, "required-circuit-missing"); }
Lines differ(const std::string& survey) { return found(survey, "appliance-circuits-differ"); }

const auto one_of_two = Lines{"survey: notice required 1 count, limit 2 count"};

}  // namespace

TEST_CASE("required-circuit-missing: all that 210.11(C) asks for, and one fewer") {
    CHECK(missing(dwelling() + whole()) == Lines{});
    const std::string less =
        dwelling() + serving("k1", "1", "kitchen") + serving("l", "5", "laundry") + serving("b", "7", "bath");
    const auto finding = only(less, "required-circuit-missing");
    CHECK(line_of(finding) == one_of_two.front());
    CHECK(sources_of(finding) == "NEC 2023 210.11(C)");
    CHECK(finding.applies == Applies::new_work);  // the year is not known
    CHECK(said(finding.text).starts_with("small-appliance circuits (kitchen, pantry, dining) of 20 A"));
}

TEST_CASE("required-circuit-missing: a circuit of another rating does not count, two hots count twice") {
    CHECK(missing(dwelling() + whole() + serving("k3", "9", "kitchen", 15)) == Lines{});
    const std::string rest = serving("l", "5", "laundry") + serving("b", "7", "bath");
    CHECK(missing(dwelling() + serving("k1", "1", "kitchen") + serving("k2", "3", "kitchen", 15) + rest) == one_of_two);
    CHECK(missing(dwelling() + serving("k", "9, 11", "kitchen") + rest) == Lines{});
}

TEST_CASE("required-circuit-missing: silent until all is traced, and where a place is not known") {
    const std::string less = serving("k1", "1", "kitchen") + serving("l", "5", "laundry") + serving("b", "7", "bath");
    CHECK(missing(dwelling() + less + serving("x", "9", "attic", 20, "")) == Lines{});
    CHECK(missing(dwelling() + less + serving("x", "9", "attic", 20, "traced = { how = \"told\" }")) == Lines{});
    CHECK(missing(dwelling() + less + breaker("9", 20)) == Lines{});
    CHECK(missing(dwelling() + less + breaker("9", 20, "state = \"spare\"")) == one_of_two);
    CHECK(missing(dwelling() + less + branch("x", "9", 20, seen)) == Lines{});
    CHECK(missing(dwelling() + less + branch("x", "9", 20, seen) + outlet("o", "x", "kind = \"receptacle\"")) ==
          Lines{});
    CHECK(missing(dwelling() + less + branch("x", "9", 20, seen) + outlet("o", "x", "kind = \"lighting\"")) ==
          one_of_two);
}

TEST_CASE("required-circuit-missing: dwellings alone, by their year, and a garage where there is one") {
    CHECK(missing(house + serving("k1", "1", "kitchen")) == Lines{});  // nobody said it is a dwelling
    CHECK(missing(house + "[[occupancy]]\nkind = \"retail\"\n" + serving("k1", "1", "kitchen")) == Lines{});
    const std::string garage = "garage_ft2 = 400\n";
    CHECK(missing(dwelling(garage) + whole()) == Lines{"survey: notice required 0 count, limit 1 count"});
    CHECK(missing(dwelling("garage_ft2 = 0\n") + whole()) == Lines{});
    const std::string old =
        "format = 1\n[survey]\nbuilt = 1978\n" + dwelling(garage).substr(std::string("format = 1\n").size()) +
        serving("k1", "1", "kitchen") + serving("k2", "3", "kitchen") + serving("l", "5", "laundry");
    CHECK(missing(old) == Lines{});  // bath and garage circuits came later
}

TEST_CASE("required-circuit-missing: each panel of a dwelling that names them is a unit") {
    const std::string flats = "format = 1\n[[source]]\nid = \"u\"\nsystem = \"120/240 1ph 3w\"\n";
    const auto flat = [](const std::string& id) {
        return "[[panel]]\nid = \"" + id + "\"\nspaces = 20\nfed_by = \"u\"\n[[breaker]]\npanel = \"" + id +
               "\"\nspaces = [1]\namps = 20\n" + circuit("k-" + id, "\"" + id + ":1\"", seen) +
               outlet("o-" + id, "k-" + id, "kind = \"receptacle\"\nplace = \"laundry\"");
    };
    CHECK(missing(flats + "[[dwelling]]\npanels = [\"F1\", \"F2\"]\n" + flat("F1") + flat("F2")) ==
          Lines{"panel:F1 notice required 0 count, limit 2 count", "panel:F1 notice required 0 count, limit 1 count",
                "panel:F2 notice required 0 count, limit 2 count", "panel:F2 notice required 0 count, limit 1 count"});
    CHECK(missing(flats + "[[dwelling]]\nunits = 2\n" + flat("F1") + flat("F2")) == Lines{});
}

TEST_CASE("appliance-circuits-differ: what the load calculation was told, against what was traced") {
    CHECK(differ(dwelling("small_appliance_circuits = 3") + whole()) ==
          Lines{"survey: notice required 2 count, limit 3 count"});
    CHECK(differ(dwelling("small_appliance_circuits = 2\nlaundry_circuits = 1") + whole()) == Lines{});
    CHECK(differ(dwelling("laundry_circuits = 2") + whole()) ==
          Lines{"survey: notice required 1 count, limit 2 count"});
    CHECK(differ(dwelling() + whole() + serving("k3", "9", "kitchen")) == Lines{});  // nothing was declared
    CHECK(differ(dwelling("small_appliance_circuits = 3") + whole() + branch("x", "9", 20, seen)) == Lines{});
    CHECK(differ(dwelling("small_appliance_circuits = 3") + whole() + serving("x", "9", "attic", 20, "")) == Lines{});
}

TEST_CASE("appliance-circuits-differ: a kitchen outlet alone on its circuit may be the refrigerator's own") {
    const std::string fridge = serving("fridge", "9", "kitchen");
    const std::string more = outlet("k1-2", "k1", "kind = \"receptacle\"\nplace = \"kitchen\"") +
                             outlet("k2-2", "k2", "kind = \"receptacle\"\nplace = \"kitchen\"");
    CHECK(differ(dwelling("small_appliance_circuits = 2") + whole() + more + fridge) == Lines{});
    CHECK(differ(dwelling("small_appliance_circuits = 3") + whole() + more + fridge) == Lines{});
    CHECK(differ(dwelling("small_appliance_circuits = 1") + whole() + more + fridge) ==
          Lines{"survey: notice required 2 count, limit 1 count"});
}
