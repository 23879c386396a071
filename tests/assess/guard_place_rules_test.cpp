// SPDX-License-Identifier: MIT
// guard-missing: 210.8(A), 210.8(B), 210.12.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

const std::string none = "guards = []";
const std::string shop = "[[occupancy]]\nkind = \"retail\"\n";

std::string at(const std::string& place) { return "kind = \"receptacle\"\nplace = \"" + place + "\""; }
Lines missing(const std::string& survey) { return found(survey, "guard-missing"); }
/// One circuit with one receptacle at a place.
std::string one(const std::string& place, const std::string& circuit_keys = "",
                const std::string& breaker_keys = none) {
    return house + branch("c", "1", 20, circuit_keys, breaker_keys) + outlet("o", "c", at(place));
}
/// Two receptacles in a row, the first with these keys.
std::string row(const std::string& first_keys, const std::string& second_keys) {
    return house + branch("c", "1", 20, "", none) + outlet("first", "c", at("garage") + "\n" + first_keys) +
           outlet("second", "c", at("garage") + "\n" + second_keys);
}

const auto notice = Lines{"circuit:c notice required"};
const auto warning = Lines{"circuit:c warning required"};

}  // namespace

TEST_CASE("guard-missing: a bath receptacle behind a breaker on which none was seen") {
    const auto finding = only(one("bath"), "guard-missing");
    CHECK(line_of(finding) == "circuit:c notice required");
    CHECK(finding.applies == Applies::new_work);
    CHECK(sources_of(finding) == "NEC 2023 210.8(A)");
    CHECK(said(finding.text).ends_with("no ground guard was seen, and it serves: bath"));
}

TEST_CASE("guard-missing: silent where nobody looked, and where a guard stands") {
    CHECK(missing(one("bath", "", "")) == Lines{});
    CHECK(missing(one("bath", "", "guards = [\"ground\"]")) == Lines{});
    CHECK(missing(one("attic")) == Lines{});
    CHECK(missing(house + branch("c", "1", 20, "", none) + outlet("o", "c", "kind = \"receptacle\"")) == Lines{});
    CHECK(missing(house + branch("c", "1", 20, "", none) + outlet("o", "c", "kind = \"lighting\"\nplace = \"bath\"")) ==
          Lines{});
}

TEST_CASE("guard-missing: a guard in the outlet or in one that feeds it") {
    const std::string guarded = "upstream = \"home-run\"\nguards = [\"ground\"]";
    CHECK(missing(row(guarded, "upstream = \"first\"")) == Lines{});
    CHECK(missing(row("upstream = \"home-run\"", "upstream = \"first\"\nguards = [\"ground\"]")) == notice);
    CHECK(missing(row(guarded, "upstream = \"home-run\"")) == notice);
    CHECK(missing(row(guarded, "")) == Lines{});  // the order is not known: it may be fed through the first
    CHECK(missing(row("guards = [\"equipment-ground\"]", "")) == notice);
}

TEST_CASE("guard-missing: a guard at the breaker of the feeder above") {
    const auto below = [](const std::string& feeder_keys) {
        return house + breaker("10, 12", 60, feeder_keys) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n" +
               "[[breaker]]\npanel = \"SUB\"\nspaces = [1]\namps = 20\nguards = []\n" + circuit("c", "\"SUB:1\"") +
               outlet("o", "c", at("garage"));
    };
    CHECK(missing(below("")) == notice);
    CHECK(missing(below("guards = [\"ground\"]")) == Lines{});
}

TEST_CASE("guard-missing: one per circuit and place") {
    CHECK(missing(row("upstream = \"home-run\"", "upstream = \"first\"")) == notice);
    CHECK(missing(one("garage") + outlet("p", "c", at("outdoors"))).size() == 2);
    const auto kitchen = only(one("kitchen"), "guard-missing");
    CHECK(sources_of(kitchen) == "NEC 2023 210.12(B); NEC 2023 210.8(A)");
    CHECK(said(kitchen.text).find("neither arc nor ground guard") != std::string::npos);
}

TEST_CASE("guard-missing: the room says the place where the outlet does not") {
    const std::string room = "[[room]]\nid = \"r\"\nplace = \"laundry\"\n";
    const std::string in = house + branch("c", "1", 20, "", none) + room;
    CHECK(missing(in + outlet("o", "c", "kind = \"receptacle\"\nroom = \"r\"")) == notice);
    CHECK(missing(in + outlet("o", "c", "kind = \"receptacle\"\nroom = \"Laundry\"")) == Lines{});
}

TEST_CASE("guard-missing: arc guards for lights and switches of rooms too, up to 20 A at 120 V") {
    const auto lamp = [](double rating, const std::string& spaces = "1") {
        return missing(house + branch("c", spaces, rating, "", none) +
                       outlet("o", "c", "kind = \"lighting\"\nplace = \"bedroom\""));
    };
    CHECK(lamp(15) == notice);
    CHECK(lamp(30) == Lines{});
    CHECK(lamp(20, "1, 3") == Lines{});
    CHECK(missing(house + branch("c", "1", 15, "", none) + outlet("o", "c", "kind = \"box\"\nplace = \"bedroom\"")) ==
          Lines{});
}

TEST_CASE("guard-missing: new work is warned of, old work told") {
    CHECK(missing(one("bath", "installed = 2023")) == warning);
    CHECK(missing(one("bath", "installed = 2022")) == notice);
    const auto year = [](int built, const std::string& keys = "") {
        return "format = 1\n[survey]\nbuilt = " + std::to_string(built) + "\n" +
               one("bath", keys).substr(std::string("format = 1\n").size());
    };
    CHECK(missing(year(2024)) == warning);
    CHECK(missing(year(1978, "installed = 2024")) == warning);
    CHECK(missing(year(2024, "installed = 1990")) == notice);
    const auto old = only(year(1970), "guard-missing");
    CHECK(old.applies == Applies::existing);
    CHECK(said(old.text).find("may have been lawful when installed") != std::string::npos);
    CHECK(only(year(1990), "guard-missing").applies == Applies::any);  // baths since 1975
}

TEST_CASE("guard-missing: other than dwellings have places of their own and no arc guards") {
    CHECK(missing(one("bedroom") + shop) == Lines{});
    CHECK(sources_of(only(one("kitchen") + shop, "guard-missing")) == "NEC 2023 210.8(B)");
    CHECK(missing(one("rooftop") + shop) == notice);
    CHECK(missing(one("rooftop")) == Lines{});
    const auto rated = [](double amps) {
        return missing(house + branch("c", "1, 3", amps, "", none) + outlet("o", "c", at("garage")) + shop);
    };
    CHECK(rated(50) == notice);
    CHECK(rated(60) == Lines{});
}

TEST_CASE("guard-missing: not above 150 V to ground, not for fire alarms, not without rules") {
    const auto on = [](const std::string& system, const std::string& spaces) {
        return missing(supply(system, "main = \"breaker\"") + branch("c", spaces, 20, "", none) +
                       outlet("o", "c", at("garage")));
    };
    CHECK(on("208Y/120 3ph 4w", "1, 3") == notice);
    CHECK(on("480Y/277 3ph 4w", "1") == Lines{});
    CHECK(on("240/120 3ph 4w high-leg", "3") == Lines{});
    CHECK(on("230 1ph 2w", "1") == Lines{});
    CHECK(missing(one("garage", "", none + "\nsystem = \"fire-alarm\"")) == Lines{});
}
