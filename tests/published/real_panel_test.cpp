// SPDX-License-Identifier: MIT
// A real panel of a house, from a public data set (data/panel_rae_house1.toml beside the project, which names its
// source): turned into a survey file, read, laid out as a card, and its labels judged after 408.4(A). Nobody traced it,
// so all its labels are claims.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <map>
#include <set>

#include "assess/labels.hpp"
#include "file/read_survey.hpp"
#include "network/network.hpp"
#include "published/reference.hpp"
#include "published/scene.hpp"
#include "sheet/card.hpp"

using namespace doorcard;

namespace {

const char* const panel_file = "data/panel_rae_house1.toml";

/// One handle: the figure does not say whether two alike neighbours trip together. Of 30 A and over they are taken as
/// one two-pole breaker (equipment of 240 V; common practice, no source), the 15 A ones as two breakers.
struct Handle {
    std::vector<int> spaces;
    double amps;
    std::string label;
};

std::vector<Handle> handles_of(const reference::RealPanel& panel) {
    std::vector<Handle> handles;
    for (const reference::Pole& pole : panel.poles) {
        const auto same = std::ranges::find_if(handles, [&](const Handle& handle) {
            return handle.label == pole.label && handle.spaces == std::vector<int>{pole.position - 2} &&
                   pole.amps >= 30;
        });
        if (same != handles.end())
            same->spaces.push_back(pole.position);
        else
            handles.push_back({{pole.position}, pole.amps, pole.label});
    }
    return handles;
}

std::string survey_text(const reference::RealPanel& panel) {
    std::string text = fmt::format(
        "format = 1\n[survey]\ntitle = \"A real panel\"\n[[panel]]\nid = \"MAIN\"\nsystem = \"120/240 1ph 3w\"\n"
        "main = \"breaker\"\nmain_a = {}\nspaces = {}\nempty_spaces = {}\nlegs_down = \"AB\"\n",
        panel.service_a, panel.positions, panel.without_breaker);
    for (const Handle& handle : handles_of(panel)) {
        const std::string id = fmt::format("{}", fmt::join(handle.spaces, "+"));
        text += fmt::format("[[breaker]]\npanel = \"MAIN\"\nspaces = {0}\namps = {1}\nold_label = \"{2}\"\n",
                            handle.spaces, handle.amps, handle.label);
        text += fmt::format(
            "[[circuit]]\nid = \"{0}\"\nbreaker = \"MAIN:{0}\"\npurpose = \"{1}\"\ntraced = {{ how = \"old-directory\" "
            "}}\n",
            id, handle.label);
    }
    return text;
}

/// The panel as read, assessed.
struct RealHouse {
    RealHouse()
        : given(reference::real_panel()),
          network(network_of(read_survey({"panel", survey_text(given)}).value().survey)),
          found(assess(network, nec_2023())) {}
    reference::RealPanel given;
    Network network;
    Assessment found;
};

using Names = std::set<std::string>;

/// Ids of the circuits that a rule names.
Names named(const std::vector<Finding>& findings, const std::string& rule) {
    Names ids;
    for (const Finding& finding : findings)
        if (finding.rule == rule) ids.insert(finding.of.id);
    return ids;
}

}  // namespace

TEST_CASE("real panel: every pole on the leg that the data say, and ratings of 380 A on each") {
    if (!reference::present(panel_file)) return;
    const RealHouse house;
    REQUIRE(house.given.poles.size() == 26);
    std::map<int, char> legs;
    std::map<char, double> sums;
    const Survey& survey = house.network.survey();
    for (std::size_t b = 0; b < survey.breakers.size(); ++b)
        for (std::size_t pole = 0; pole < survey.breakers[b].spaces.size(); ++pole) {
            const char leg = house.network.breaker_legs(b)[pole];
            legs[survey.breakers[b].spaces[pole]] = leg;
            sums[leg] += survey.breakers[b].amps.value().value;
        }
    for (const reference::Pole& pole : house.given.poles) {
        CAPTURE(pole.position);
        CHECK(legs.at(pole.position) == (pole.leg == "L1" ? 'A' : 'B'));
    }
    CHECK(sums == std::map<char, double>{{'A', house.given.sum_l1}, {'B', house.given.sum_l2}});
    CHECK(house.given.sum_l1 == 380);
}

TEST_CASE("real panel: its directory has each of the 28 positions once, and claims what nobody traced") {
    if (!reference::present(panel_file)) return;
    const RealHouse house;
    const PanelDirectory directory = directory_of(house.network, 0);
    std::vector<int> positions;
    for (const DirectoryRow& row : directory.rows)
        for (const Position& position : row.positions) {
            positions.push_back(position.space);
            const bool empty = std::ranges::count(house.given.without_breaker, position.space) > 0;
            CHECK(row.kind == (empty ? RowKind::space : RowKind::circuits));
            CHECK(row.claimed == !empty);
        }
    std::ranges::sort(positions);
    std::vector<int> all(28);
    for (int space = 1; space <= 28; ++space) all[static_cast<std::size_t>(space - 1)] = space;
    CHECK(positions == all);
    CHECK(directory.traced == 0);
    CHECK(directory.claimed == static_cast<int>(house.network.survey().breakers.size()));
}

TEST_CASE("real panel: its labels judged") {
    if (!reference::present(panel_file)) return;
    const RealHouse house;
    const std::vector<Finding> labels = label_findings(house.network, nec_2023());
    CHECK(named(labels, "label-vague") == Names{"22"});  // 'Misc. Plugs'
    CHECK(named(labels, "label-duplicate") ==
          Names{"10", "12", "26", "28", "5", "7"});             // alike on two one-pole breakers
    CHECK(named(labels, "label-transient") == Names{"18+20"});  // 'Rental Suite': a tenancy
    CHECK(named(labels, "label-abbreviation").empty());         // the card prints what AFCI means
    CHECK(named(labels, "label-missing").empty());
    CHECK(named(labels, "label-spare-unmarked").empty());
    const std::vector<Abbreviation> explained = explained_abbreviations(house.network, directory_of(house.network, 0));
    CHECK(std::ranges::any_of(explained, [](const Abbreviation& one) { return one.written == "AFCI"; }));
}

TEST_CASE("real panel: only claims, so every circuit is told of as such, and nothing is a danger or a warning") {
    if (!reference::present(panel_file)) return;
    const RealHouse house;
    Names circuits;
    for (const Circuit& circuit : house.network.survey().circuits) circuits.insert(circuit.id);
    CHECK(named(house.found.findings, "claim-only") == circuits);
    for (const Finding& finding : house.found.findings) {
        CAPTURE(finding.rule);
        CHECK(finding.severity >= Severity::caution);
    }
}

TEST_CASE("real panel: laid out as a card, in both languages, every label and number on it") {
    if (!reference::present(panel_file)) return;
    const RealHouse house;
    for (const char* language : {"en", "es"}) {
        const Words words = Words::in(language);
        const Sheet sheet = card_sheet(house.network, house.found, {}, words);
        CHECK(sheet.pages.size() == 1);
        std::string printed;
        for (const Page& page : sheet.pages)
            for (const Mark& mark : page.marks)
                if (const TextMark* text = std::get_if<TextMark>(&mark)) printed += text->text + "\n";
        std::string lines;
        for (const std::string& line : card_lines(house.network, 0, words)) lines += line + "\n";
        for (const reference::Pole& pole : house.given.poles) {
            CAPTURE(pole.label);
            CHECK(lines.find(pole.label) != std::string::npos);
            for (std::size_t from = 0; from < pole.label.size();) {  // a label may be broken into lines between words
                const std::size_t to = std::min(pole.label.find(' ', from), pole.label.size());
                CHECK(printed.find(pole.label.substr(from, to - from)) != std::string::npos);
                from = to + 1;
            }
            CHECK(printed.find(std::to_string(pole.position)) != std::string::npos);
        }
    }
}
