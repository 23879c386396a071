// SPDX-License-Identifier: MIT
// The sound house again, now with every figure looked at: ground wires, fault current, leakage, temperatures, solar, an
// electrode conductor, outlets read with and without load. It still deserves no danger, no warning, no caution.
#include <fstream>
#include <sstream>

#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

std::string file(const std::string& name) {
    std::ifstream in(std::string(DOORCARD_SOURCE) + "/tests/assess/surveys/" + name, std::ios::binary);
    REQUIRE(in);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The ground wire that a cable of this size comes with.
std::string ground_beside(const std::string& line) {
    const std::string size = line.substr(line.find('"') + 1, line.find('"', line.find('"') + 1) - line.find('"') - 1);
    const std::string ground = size == "6" || size == "8" || size == "4" ? "10" : size;
    return "ground = { size = \"" + ground + "\", kind = \"wire\" }\n";
}

/// Every entry with what a careful surveyor may have written beside it.
std::string looked_at(const std::string& survey) {
    std::istringstream lines(survey);
    std::string all;
    for (std::string line; std::getline(lines, line);) {
        all += line + "\n";
        if (line == "[[breaker]]") all += "interrupting_ka = 10\nsigns = []\n";
        if (line == "[[load]]") all += "leakage_ma = 0.2\n";
        if (line.starts_with("wire = {")) all += ground_beside(line);
    }
    return all;
}

std::string warm(const std::string& breaker, double degrees, double amps) {
    std::ostringstream text;
    text << "together = \"T\"\ntemp_c = " << degrees << "\namps = " << amps;
    return reading("breaker:" + breaker, text.str());
}

const std::string beside =
    "[grounding]\nelectrodes = [\"ufer\", \"rod\"]\ngec = { size = \"4\", metal = \"cu\" }\n"
    "[[source]]\nid = \"roof\"\nkind = \"pv\"\nthrough = \"MAIN:40+42\"\noutput_a = 32\ndisconnect = \"south wall\"\n"
    "labelled = true\n[[breaker]]\npanel = \"MAIN\"\nspaces = [40, 42]\namps = 40\nguards = []\nhold_down = false\n"
    "[[limit]]\nof = \"circuit:kitchen-east\"\nkey = \"amps\"\nabove = 16.0\n";

const std::string readings = warm("MAIN:1", 31.5, 9) + warm("MAIN:7", 29, 8) +
                             reading("circuit:kitchen-east", "amps = 12.5") +
                             reading("outlet:K1", "together = \"J\"\nvolts = 121.2") +
                             reading("outlet:K1", "together = \"J\"\nvolts = 119.0\namps = 12.5");

}  // namespace

TEST_CASE("sound house: with every figure looked at still no danger, no warning, no caution") {
    const Assessment assessment = assessment_of(looked_at(file("sound.survey.toml")) + beside + readings);
    CHECK(at_least(assessment, Severity::caution) == Lines{});
}

TEST_CASE("older house: cables' own ground wires and what appliances leak are no warning") {
    const Assessment assessment = assessment_of(looked_at(file("older.survey.toml")));
    CHECK(at_least(assessment, Severity::warning) == Lines{});
    CHECK(at_least(assessment, Severity::caution).size() <= 3);
}
