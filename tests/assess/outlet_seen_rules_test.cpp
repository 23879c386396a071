// SPDX-License-Identifier: MIT
// receptacle-miswired, strap-two-breakers, neutral-through-device, aluminum-branch.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

std::string at_c(const std::string& outlet_keys, const std::string& breaker_keys = "") {
    return house + branch("c", "1", 20, "", breaker_keys) + outlet("o", "c", "kind = \"receptacle\"\n" + outlet_keys);
}
Lines wired(const std::string& how) { return found(at_c("wired = \"" + how + "\""), "receptacle-miswired"); }

/// Two breakers that feed the halves of one device.
std::string split(const std::string& first_keys, const std::string& second_strap = "S1") {
    return house + branch("a", "1", 20, "", first_keys) + branch("b", "3", 20) +
           outlet("upper", "a", "strap = \"S1\"") + outlet("lower", "b", "strap = \"" + second_strap + "\"");
}

Lines spliced(const std::string& keys_a, const std::string& keys_b) {
    return found(house + branch("a", "1", 20, keys_a) + branch("b", "3", 20, keys_b), "neutral-through-device");
}

Lines aluminum(const std::string& size, double rating, const std::string& metal = "al") {
    return found(house + branch("c", "1", rating, "wire = { size = \"" + size + "\", metal = \"" + metal + "\" }"),
                 "aluminum-branch");
}

}  // namespace

TEST_CASE("receptacle-miswired: what a tester showed") {
    const auto finding = only(at_c("wired = \"reversed\""), "receptacle-miswired");
    CHECK(line_of(finding) == "outlet:o warning required");
    CHECK(sources_of(finding) == "NEC 2023 200.11");
    CHECK(wired("open-ground").size() == 1);
    CHECK(wired("open-neutral").size() == 1);
    CHECK(wired("neutral-as-ground") == Lines{"outlet:o warning required"});
    CHECK(wired("ok") == Lines{});
    CHECK(found(at_c(""), "receptacle-miswired") == Lines{});
}

TEST_CASE("receptacle-miswired: without a ground, but behind a ground guard, a notice to look for the marking") {
    const auto notice = Lines{"outlet:o notice required"};
    const std::string open = "wired = \"open-ground\"";
    CHECK(found(at_c(open, "guards = [\"ground\"]"), "receptacle-miswired") == notice);
    CHECK(found(at_c(open + "\nguards = [\"ground\"]"), "receptacle-miswired") == notice);
    CHECK(found(at_c(open, "guards = [\"arc\"]"), "receptacle-miswired") == Lines{"outlet:o warning required"});
    CHECK(found(at_c("wired = \"reversed\"", "guards = [\"ground\"]"), "receptacle-miswired") ==
          Lines{"outlet:o warning required"});
}

TEST_CASE("strap-two-breakers: one device, two breakers that do not open together") {
    const auto finding = only(split(""), "strap-two-breakers");
    CHECK(line_of(finding) == "outlet:upper warning required");
    CHECK(sources_of(finding) == "NEC 2023 210.7");
    CHECK(found(split("tied_with = [\"MAIN:3\"]"), "strap-two-breakers") == Lines{});
    CHECK(found(split("", "S2"), "strap-two-breakers") == Lines{});
    CHECK(found(house + branch("a", "1", 20) + outlet("upper", "a", "strap = \"S1\"") +
                    outlet("lower", "a", "strap = \"S1\""),
                "strap-two-breakers") == Lines{});
    CHECK(found(house + branch("a", "1, 3", 20) + circuit("b", "\"MAIN:1+3\"") +
                    outlet("upper", "a", "strap = \"S1\"") + outlet("lower", "b", "strap = \"S1\""),
                "strap-two-breakers") == Lines{});
}

TEST_CASE("neutral-through-device: a shared neutral that is not joined in the boxes") {
    const auto told = Lines{"neutral:N1 warning required"};
    CHECK(spliced("neutral = \"N1\"\nneutral_spliced = false", "neutral = \"N1\"") == told);
    CHECK(spliced("neutral = \"N1\"\nneutral_spliced = false", "neutral = \"N1\"\nneutral_spliced = false") == told);
    CHECK(spliced("three_wire = true\nneutral_spliced = false", "") == Lines{"circuit:a warning required"});
    CHECK(spliced("neutral = \"N1\"\nneutral_spliced = true", "neutral = \"N1\"") == Lines{});
    CHECK(spliced("neutral = \"N1\"", "neutral = \"N1\"") == Lines{});
    CHECK(spliced("neutral = \"own\"\nneutral_spliced = false", "neutral = \"own\"") == Lines{});  // not shared
    CHECK(spliced("neutral = \"N1\"\nneutral_spliced = false", "neutral = \"own\"") == Lines{});
}

TEST_CASE("aluminum-branch: 12 and 10 AWG aluminum on 15 to 30 A") {
    const auto told = Lines{"circuit:c warning advised"};
    CHECK(aluminum("12", 15) == told);
    CHECK(aluminum("10", 30) == told);
    CHECK(aluminum("10", 25) == told);
    CHECK(aluminum("8", 30) == Lines{});
    CHECK(aluminum("10", 40) == Lines{});
    CHECK(aluminum("10", 10) == Lines{});
    CHECK(aluminum("12", 15, "cu") == Lines{});
    CHECK(found(house + branch("c", "1", 15, "wire = { size = \"12\" }"), "aluminum-branch") == Lines{});
}
