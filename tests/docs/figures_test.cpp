// SPDX-License-Identifier: MIT
// docs/figures.md: what its examples give, to the digits that it shows.
#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>
#include <vector>

#include "assess/assessment.hpp"
#include "cli/check_json.hpp"
#include "cli/ran_program.hpp"
#include "file/read_survey.hpp"

using namespace doorcard;
using nlohmann::json;

namespace {

struct Example {
    std::string survey;
    std::vector<std::string> gives;
};

/// Fenced blocks in order: what stands behind the fence, and the lines inside.
std::vector<std::pair<std::string, std::string>> fenced_blocks() {
    std::vector<std::pair<std::string, std::string>> blocks;
    std::istringstream lines(file_text(DOORCARD_SOURCE "/docs/figures.md"));
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("```")) {
            inside = !inside;
            if (inside) blocks.emplace_back(line.substr(3), "");
        } else if (inside) {
            blocks.back().second += line + "\n";
        }
    }
    return blocks;
}

/// Each example with the building that it is added to.
std::vector<Example> examples() {
    std::map<std::string, std::string> buildings;
    std::vector<Example> found;
    for (const auto& [kind, text] : fenced_blocks()) {
        if (kind == "toml house" || kind == "toml shop") buildings[kind.substr(5)] = text;
        if (kind.starts_with("toml in the ")) found.push_back({buildings.at(kind.substr(12)) + text, {}});
        if (kind != "gives") continue;
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);) found.back().gives.push_back(line);
    }
    return found;
}

json result_of(const std::string& survey) {
    const auto read = read_survey({"figures.md", survey});
    if (!read) FAIL(complaint_line("figures.md", read.error().front()) << "\n" << survey);
    const RuleBook book = built_in_book("NEC-2023").value();
    return json::parse(check_json(assess(network_of(read->survey), book), Words::in("en")).dump());
}

/// "circuits.a.legs_a.A": members by name, rows of a list by their id, leg or outlet.
json figure(json at, const std::string& path) {
    std::istringstream parts(path);
    for (std::string part; std::getline(parts, part, '.');) {
        if (at.is_object()) {
            REQUIRE_MESSAGE(at.contains(part), path);
            at = json(at[part]);
            continue;
        }
        json found;
        for (const json& row : at)
            if (row.value("id", row.value("leg", row.value("outlet", ""))) == part) found = row;
        REQUIRE_MESSAGE(!found.is_null(), path);
        at = found;
    }
    return at;
}

/// True where a number rounds to what is printed.
bool prints_as(double value, const std::string& printed) {
    const auto point = printed.find('.');
    const double digits = point == std::string::npos ? 0 : static_cast<double>(printed.size() - point - 1);
    return std::abs(value - std::stod(printed)) <= 0.5 * std::pow(10, -digits) + 1e-9 &&
           (digits > 0 || std::abs(value - std::stod(printed)) < 1e-6);
}

}  // namespace

TEST_CASE("figures: the worked examples give what the document says") {
    std::size_t compared = 0;
    for (const Example& example : examples()) {
        CAPTURE(example.survey);
        CHECK_FALSE(example.gives.empty());
        const json result = result_of(example.survey);
        for (const std::string& line : example.gives) {
            CAPTURE(line);
            const auto equals = line.find(" = ");
            REQUIRE(equals != std::string::npos);
            const json found = figure(result, line.substr(0, equals));
            const std::string printed = line.substr(equals + 3);
            if (printed == "null")
                CHECK(found.is_null());
            else
                CHECK_MESSAGE((found.is_number() && prints_as(found.get<double>(), printed)), found.dump());
            ++compared;
        }
    }
    CHECK(compared >= 50);
}

TEST_CASE("figures: every figure of the results is explained") {
    const std::string document = file_text(DOORCARD_SOURCE "/docs/figures.md");
    for (const char* key : {"volts",
                            "rating_a",
                            "connected_va",
                            "continuous_a",
                            "noncontinuous_a",
                            "required_a",
                            "measured_a",
                            "sustained_a",
                            "legs_a",
                            "percent_of_rating",
                            "ampacity_a",
                            "voltage_drop_percent",
                            "total_drop_percent",
                            "triplen_amps",
                            "explained_a",
                            "residual_a",
                            "imbalance_percent",
                            "neutral_amps",
                            "open_volts",
                            "outlet_drops",
                            "loop_ohm",
                            "wire_ohm",
                            "joint_ohm"})
        CHECK_MESSAGE(document.find(key) != std::string::npos, key);
}
