// SPDX-License-Identifier: MIT
// joint-resistance: two readings of one outlet taken together.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

Lines joints(const std::string& survey) { return found(survey, "joint-resistance"); }

/// 15 A on 75 ft of 12 AWG solid copper: 0.2895 ohm there and back.
const std::string outlet_at_75_ft = house + branch("c", "1", 15, wire("12", "insulation = \"NM-B\", length_ft = 75")) +
                                    outlet("K1", "c", "kind = \"receptacle\"\nupstream = \"home-run\"");

std::string together(double volts, const std::string& loaded) {
    return reading("outlet:K1", "together = \"R\"\nvolts = " + std::to_string(volts)) +
           reading("outlet:K1", "together = \"R\"\n" + loaded);
}

const JointFigures& joint_of(const Assessment& assessment) {
    REQUIRE(assessment.joints.size() == 1);
    return assessment.joints.front();
}

}  // namespace

TEST_CASE("joint-resistance: a joint of 0.2 ohm in the hot is a warning on 15 A") {
    // 121 V falls to 114.8062 V at 11.48062 A: a loop of 0.5395 ohm, 0.25 ohm more than the wire
    const auto finding =
        only(outlet_at_75_ft + together(121, "volts = 114.8062052\namps = 11.48062052"), "joint-resistance");
    CHECK(line_of(finding) == "outlet:K1 warning practice 0.25 ohm, limit 0.245198 ohm");
    CHECK(said(finding.text).find("45 W") != std::string::npos);  // (0.25 - 0.05) x 15 x 15
    CHECK(said(finding.remedy).find("lock out") != std::string::npos);
}

TEST_CASE("joint-resistance: a caution below, quiet for the service and ordinary joints") {
    // loops of 0.48, 0.45, 0.37 ohm at 12 A; the limit of a caution is 0.05 + 0.2 / 12 + 20 / 225 = 0.15556 ohm
    CHECK(joints(outlet_at_75_ft + together(120, "volts = 114.24\namps = 12")) ==
          Lines{"outlet:K1 caution practice 0.1905 ohm, limit 0.155556 ohm"});
    CHECK(joints(outlet_at_75_ft + together(120, "volts = 114.66\namps = 12")) == Lines{});  // 0.1555 ohm
    CHECK(joints(outlet_at_75_ft + together(120, "volts = 115.56\namps = 12")) == Lines{});
}

TEST_CASE("joint-resistance: a small test load says little, for the meter's own step may be all of it") {
    CHECK(joints(outlet_at_75_ft + together(120, "volts = 119.5\namps = 1")) == Lines{});  // 0.5 ohm, give or take 0.2
}

TEST_CASE("joint-resistance: one reading with its test load says the same") {
    const std::string one =
        reading("outlet:K1", "volts_unloaded = 121\nvolts = 114.8062052\ntest_load_a = 11.48062052");
    CHECK(joints(outlet_at_75_ft + one).size() == 1);
}

TEST_CASE("joint-resistance: the loop is shown, and no joint where the wire's own is not known") {
    const std::string no_length = house + branch("c", "1", 15, wire("12", "insulation = \"NM-B\"")) +
                                  outlet("K1", "c", "kind = \"receptacle\"\nupstream = \"home-run\"");
    const Assessment assessment = assessment_of(no_length + together(121, "volts = 115.6\namps = 12"));
    CHECK(joint_of(assessment).loop.value == doctest::Approx(0.45));
    CHECK_FALSE(joint_of(assessment).wire);
    CHECK_FALSE(joint_of(assessment).joint);
    CHECK(joints(no_length + together(121, "volts = 105\namps = 12")) == Lines{});
}

TEST_CASE("joint-resistance: readings of different moments, or without a load, are not set against each other") {
    CHECK(joints(outlet_at_75_ft + reading("outlet:K1", "volts = 121") +
                 reading("outlet:K1", "volts = 105\namps = 12")) == Lines{});
    CHECK(joints(outlet_at_75_ft + together(121, "volts = 105")) == Lines{});
    CHECK(assessment_of(outlet_at_75_ft + together(121, "volts = 105")).joints.empty());
}

TEST_CASE("joint-resistance: silent without the device's rating") {
    const std::string no_rating = house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" +
                                  circuit("c", "\"MAIN:1\"", wire("12", "length_ft = 75")) +
                                  outlet("K1", "c", "kind = \"receptacle\"\nupstream = \"home-run\"");
    CHECK(joints(no_rating + together(121, "volts = 105\namps = 12")) == Lines{});
}

TEST_CASE("joint-resistance: feeders from a breaker are wire too; an unknown one leaves the joint open") {
    const auto shed = [](const std::string& feeder) {
        return house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\namps = 60\n" +
               "[[panel]]\nid = \"SHED\"\nfed_by = \"MAIN:2+4\"\nspaces = 8\nmain = \"lugs\"\n" + feeder +
               "[[breaker]]\npanel = \"SHED\"\nspaces = [1]\namps = 15\n" +
               circuit("c", "\"SHED:1\"", wire("12", "length_ft = 75")) +
               outlet("K1", "c", "kind = \"receptacle\"\nupstream = \"home-run\"");
    };
    const std::string far = together(121, "volts = 114.8062052\namps = 11.48062052");
    const Assessment known = assessment_of(shed("feeder = { size = \"6\", metal = \"cu\", length_ft = 100 }\n") + far);
    CHECK(joint_of(known).wire->value == doctest::Approx(0.2895 + 2 * 0.0491));
    CHECK(joint_of(known).joint->value == doctest::Approx(0.25 - 2 * 0.0491));
    CHECK_FALSE(joint_of(assessment_of(shed("") + far)).joint);
}
