// SPDX-License-Identifier: MIT
#include "cli/check_tables.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "assess/directory.hpp"
#include "cli/text_table.hpp"
#include "network/panel_supply.hpp"

namespace doorcard {
namespace {

using Kind = TextTable::Kind;

constexpr const char* dash = "-";
constexpr int longest_id = 16;

std::string amps(std::optional<Amperes> value) { return value ? fmt::format("{:.1f}", value->value) : dash; }
std::string rating(std::optional<Amperes> value) { return value ? fmt::format("{:g}", value->value) : dash; }
std::string percent(std::optional<double> value) { return value ? fmt::format("{:.0f} %", *value) : dash; }

/// Whole volt-amperes with a comma between thousands, as on the sheets.
std::string volt_amperes(std::optional<VoltAmperes> value) {
    if (!value) return dash;
    std::string digits = fmt::format("{:.0f}", value->value);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
}

/// The figures of a breaker's only circuit, or of the only panel that it feeds; null where there are several, or none.
const LoadFigures* figures_of(const Network& network, const Assessment& assessment, std::size_t breaker) {
    const auto& circuits = network.circuits_on(breaker);
    const auto& panels = network.panels_fed_by(breaker);
    if (circuits.size() == 1) return &assessment.circuits[circuits.front()];
    if (circuits.empty() && panels.size() == 1) return &assessment.feeders[panels.front()];
    return nullptr;
}

/// What lasted when it was measured, else what is declared to last.
std::optional<Amperes> lasting(const LoadFigures& figures) {
    if (figures.sustained_a) return figures.sustained_a;
    if (figures.continuous_a && figures.continuous_a->value > 0) return figures.continuous_a;
    return std::nullopt;
}

std::vector<std::string> row_of(const Network& network, const Assessment& assessment, std::size_t breaker,
                                const std::string& text) {
    const Breaker& given = network.survey().breakers[breaker];
    std::vector<std::string> row = {spaces_text(given), text, network.breaker_legs(breaker), rating(given.amps)};
    const LoadFigures* figures = figures_of(network, assessment, breaker);
    row.push_back(volt_amperes(figures ? figures->connected_va : std::nullopt));
    row.push_back(amps(figures ? lasting(*figures) : std::nullopt));
    row.push_back(amps(figures ? figures->measured_a : std::nullopt));
    row.push_back(percent(figures ? figures->percent_of_rating : std::nullopt));
    return row;
}

/// What a panel's table is headed with: id, title, system, main.
std::vector<std::string> panel_head(const Network& network, std::size_t p, const Words& words) {
    const Panel& panel = network.survey().panels[p];
    std::vector<std::string> pieces = {panel.id};
    if (panel.title && *panel.title != panel.id) pieces.push_back(*panel.title);
    if (const auto system = network.supply(p).system) pieces.emplace_back(facts(*system).name);
    if (panel.main_a) pieces.push_back(fmt::format(fmt::runtime(words(tr("main {0:g} A"))), panel.main_a->value));
    return pieces;
}

/// Breakers of a neutral's hots, each once: "5, 7", with the panel where there are several.
std::string hots_text(const Network& network, const SharedNeutral& neutral) {
    std::string text, panel;
    std::vector<std::size_t> named;
    for (const Hot& hot : neutral.hots) {
        if (std::ranges::find(named, hot.breaker) != named.end()) continue;
        named.push_back(hot.breaker);
        const Breaker& breaker = network.survey().breakers[hot.breaker];
        text += text.empty() ? "" : ", ";
        if (network.survey().panels.size() > 1 && breaker.panel != panel) text += breaker.panel + " ";
        panel = breaker.panel;
        text += spaces_text(breaker);
    }
    return text.empty() ? dash : text;
}

/// What feeds a panel: its breakers, else its sources.
std::string fed_from(const Network& network, std::size_t p) {
    const Survey& survey = network.survey();
    std::string text;
    for (const std::string& feed : survey.panels[p].fed_by) {
        const Breaker* breaker = survey.breakers.find(feed);
        text += (text.empty() ? "" : ", ") + (breaker ? breaker->panel + " " + spaces_text(*breaker) : feed);
    }
    return text.empty() ? dash : text;
}

/// 'A 160, B 80': what each leg would get with the neutral open.
std::string open_volts(const NeutralFigures& figures) {
    std::string text;
    for (const auto& [leg, volts] : figures.open_volts)
        if (volts) text += fmt::format("{}{} {:.0f}", text.empty() ? "" : ", ", leg, volts->value);
    return text.empty() ? dash : text;
}

void write_title(std::ostream& out, const std::string& title, const Terminal& terminal) {
    for (const std::string& line : wrapped(title, terminal.columns)) out << line << '\n';
}

void write_legs(std::ostream& out, const Assessment& assessment, const Words& words, const Terminal& terminal) {
    TextTable table({{words(tr("panel")), Kind::word, 0},
                     {words(tr("leg")), Kind::word, 0},
                     {"VA", Kind::figure, 0},
                     {"A", Kind::figure, 0},
                     {words(tr("measured")), Kind::figure, 0}});
    for (const PanelFigures& panel : assessment.panels)
        for (const PanelLegFigures& leg : panel.legs)
            table.add({clipped(panel.id, longest_id), std::string(1, leg.leg), volt_amperes(leg.va), amps(leg.amps),
                       amps(leg.measured_a)});
    write_title(out, words(tr("Legs: nameplates added, no demand; judged by measured load only")), terminal);
    table.write(out, terminal);
    out << '\n';
}

void write_feeders(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                   const Terminal& terminal) {
    TextTable table({{words(tr("panel")), Kind::word, 0},
                     {words(tr("fed from")), Kind::text, 0},
                     {words(tr("rated")), Kind::figure, 0},
                     {words(tr("may carry")), Kind::figure, 0},
                     {words(tr("measured")), Kind::figure, 0},
                     {words(tr("neutral")), Kind::figure, 1},
                     {words(tr("unbalanced")), Kind::figure, 2}});
    for (std::size_t p = 0; p < assessment.panels.size(); ++p) {
        const LoadFigures& feeder = assessment.feeders[p];
        const PanelFigures& panel = assessment.panels[p];
        table.add({clipped(panel.id, longest_id), fed_from(network, p), rating(feeder.rating_a),
                   amps(feeder.ampacity_a), amps(feeder.measured_a), amps(panel.neutral_amps),
                   percent(panel.imbalance_percent)});
    }
    write_title(out, words(tr("Feeders of panels, A; neutral and unbalance as of nameplates")), terminal);
    table.write(out, terminal);
    out << '\n';
}

}  // namespace

std::string spaces_text(const Breaker& breaker) {
    std::string text;
    for (const std::size_t pole : poles_by_space(breaker)) {
        text += (text.empty() ? "" : "+") + std::to_string(breaker.spaces[pole]);
        if (pole < breaker.halves.size() && breaker.halves[pole] != ' ') text += breaker.halves[pole];
    }
    return text;
}

void write_circuit_tables(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                          const Terminal& terminal) {
    bool any_claimed = false;
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        for (const std::string& line : flowed(panel_head(network, p, words), 2, terminal.columns)) out << line << '\n';
        TextTable table({{words(tr("no.")), Kind::figure, 0},
                         {words(tr("circuit")), Kind::text, 0},
                         {words(tr("leg")), Kind::word, 0},
                         {"A", Kind::figure, 0},
                         {"VA", Kind::figure, 1},
                         {words(tr("lasting")), Kind::figure, 2},
                         {words(tr("measured")), Kind::figure, 1},
                         {words(tr("of A")), Kind::figure, 0}});
        for (const DirectoryRow& row : directory_of(network, p).rows) {
            if (!row.breaker) continue;
            any_claimed = any_claimed || row.claimed;
            table.add(row_of(network, assessment, *row.breaker, (row.claimed ? "[?] " : "") + words.say(row.text)));
        }
        if (network.breakers_in(p).empty())
            out << ' ' << words(tr("no breakers entered")) << '\n';
        else
            table.write(out, terminal);
        out << '\n';
    }
    if (any_claimed) out << "[?] " << words(tr("only said, not traced: treat as live.")) << "\n\n";
}

void write_neutral_table(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                         const Terminal& terminal) {
    if (assessment.neutrals.empty()) return;
    std::vector<TextTable::Column> columns = {
        {words(tr("neutral")), Kind::word, 0},    {words(tr("of")), Kind::text, 0},
        {words(tr("legs")), Kind::word, 0},       {words(tr("loads")), Kind::figure, 1},
        {words(tr("measured")), Kind::figure, 0}, {words(tr("explained")), Kind::figure, 2},
        {words(tr("may carry")), Kind::figure, 0}};
    const bool any_open = std::ranges::any_of(
        assessment.neutrals, [](const NeutralFigures& figures) { return open_volts(figures) != dash; });
    if (any_open) columns.push_back({words(tr("if open, V")), Kind::word, 2});
    TextTable table(std::move(columns));
    for (std::size_t n = 0; n < assessment.neutrals.size(); ++n) {
        const NeutralFigures& figures = assessment.neutrals[n];
        std::vector<std::string> row = {clipped(figures.id, longest_id),
                                        hots_text(network, network.neutrals()[n]),
                                        figures.legs.empty() ? dash : figures.legs,
                                        amps(figures.amps),
                                        amps(figures.measured_a),
                                        amps(figures.explained_a),
                                        amps(figures.ampacity_a)};
        if (any_open) row.push_back(open_volts(figures));
        table.add(std::move(row));
    }
    write_title(out, words(tr("Shared neutrals, A")), terminal);
    table.write(out, terminal);
    out << '\n';
}

void write_joint_table(std::ostream& out, const Assessment& assessment, const Words& words, const Terminal& terminal) {
    if (assessment.joints.empty()) return;
    const auto ohms = [](std::optional<Ohms> value) { return value ? fmt::format("{:.2f}", value->value) : dash; };
    TextTable table({{words(tr("outlet")), Kind::word, 0},
                     {words(tr("there and back")), Kind::figure, 0},
                     {words(tr("its wire")), Kind::figure, 0},
                     {words(tr("joints")), Kind::figure, 0}});
    for (const JointFigures& joint : assessment.joints)
        table.add({clipped(joint.outlet, longest_id), ohms(joint.loop), ohms(joint.wire), ohms(joint.joint)});
    write_title(out, words(tr("Outlets read with and without load, ohm")), terminal);
    table.write(out, terminal);
    out << '\n';
}

void write_panel_table(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                       const Terminal& terminal) {
    if (assessment.panels.empty()) return;
    write_legs(out, assessment, words, terminal);
    write_feeders(out, network, assessment, words, terminal);
}

}  // namespace doorcard
