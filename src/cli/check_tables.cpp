// SPDX-License-Identifier: MIT
#include "cli/check_tables.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "assess/directory.hpp"
#include "network/panel_supply.hpp"

namespace doorcard {
namespace {

constexpr const char* dash = "-";

std::string amps(std::optional<Amperes> value) { return value ? fmt::format("{:.1f}", value->value) : dash; }
std::string percent(std::optional<double> value) { return value ? fmt::format("{:.0f} %", *value) : dash; }

/// Whole volt-amperes with a comma between thousands, as on the sheets.
std::string volt_amperes(std::optional<VoltAmperes> value) {
    if (!value) return dash;
    std::string digits = fmt::format("{:.0f}", value->value);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
}

/// Width left for the text of a row: the columns beside it take this many.
constexpr int figures_width = 47;

struct Row {
    std::string number, text, legs, rating, connected, lasting, measured, share;
};

void write_row(std::ostream& out, const Row& row, const Terminal& terminal) {
    const int width = std::max(12, terminal.columns - figures_width - 8);
    out << padded_left(row.number, 6) << "  " << padded(clipped(row.text, width), width) << padded_left(row.legs, 4)
        << padded_left(row.rating, 5) << padded_left(row.connected, 11) << padded_left(row.lasting, 9)
        << padded_left(row.measured, 10) << padded_left(row.share, 8) << '\n';
}

Row row_of(const Network& network, const Assessment& assessment, std::size_t breaker, const std::string& text) {
    const Breaker& given = network.survey().breakers[breaker];
    Row row{spaces_text(given),
            text,
            network.breaker_legs(breaker),
            given.amps ? fmt::format("{:g}", given.amps->value) : dash,
            dash,
            dash,
            dash,
            dash};
    const LoadFigures* figures = nullptr;
    if (network.circuits_on(breaker).size() == 1)
        figures = &assessment.circuits[network.circuits_on(breaker).front()];
    else if (network.panels_fed_by(breaker).size() == 1)
        figures = &assessment.feeders[network.panels_fed_by(breaker).front()];
    if (!figures) return row;
    row.connected = volt_amperes(figures->connected_va);
    row.lasting = figures->sustained_a                                        ? amps(figures->sustained_a)
                  : figures->continuous_a && figures->continuous_a->value > 0 ? amps(figures->continuous_a)
                                                                              : dash;
    row.measured = amps(figures->measured_a);
    row.share = percent(figures->percent_of_rating);
    return row;
}

std::string panel_line(const Network& network, std::size_t p, const Words& words) {
    const Panel& panel = network.survey().panels[p];
    std::string line = panel.id;
    if (const auto system = network.supply(p).system) line += "  " + std::string(facts(*system).name);
    if (panel.main_a) line += "  " + fmt::format(fmt::runtime(words(tr("main {0:g} A"))), panel.main_a->value);
    return line;
}

std::string letters(const std::string& legs) { return legs.empty() ? dash : legs; }

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
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        out << panel_line(network, p, words) << '\n';
        write_row(out,
                  {words(tr("no.")), words(tr("circuit")), words(tr("leg")), "A", words(tr("VA conn.")),
                   words(tr("lasting")), words(tr("measured")), words(tr("of A"))},
                  terminal);
        for (const DirectoryRow& row : directory_of(network, p).rows) {
            if (!row.breaker) continue;
            const std::string text = words.say(row.text) + (row.claimed ? " (?)" : "");
            write_row(out, row_of(network, assessment, *row.breaker, text), terminal);
        }
        out << '\n';
    }
}

void write_neutral_table(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                         const Terminal&) {
    if (assessment.neutrals.empty()) return;
    out << words(tr("Shared neutrals, A")) << '\n';
    out << "  " << padded(words(tr("neutral")), 10) << padded(words(tr("of")), 22) << padded_left(words(tr("legs")), 5)
        << padded_left(words(tr("loads")), 9) << padded_left(words(tr("measured")), 10)
        << padded_left(words(tr("explained")), 11) << padded_left(words(tr("may carry")), 11) << '\n';
    for (std::size_t n = 0; n < assessment.neutrals.size(); ++n) {
        const NeutralFigures& figures = assessment.neutrals[n];
        std::string spaces;
        for (const Hot& hot : network.neutrals()[n].hots) {
            const std::string text = spaces_text(network.survey().breakers[hot.breaker]);
            if (spaces != text) spaces += (spaces.empty() ? "" : ", ") + text;
        }
        out << "  " << padded(clipped(figures.id, 9), 10) << padded(clipped(spaces, 21), 22)
            << padded_left(letters(figures.legs), 5) << padded_left(amps(figures.amps), 9)
            << padded_left(amps(figures.measured_a), 10) << padded_left(amps(figures.explained_a), 11)
            << padded_left(amps(figures.ampacity_a), 11) << '\n';
    }
    out << '\n';
}

void write_panel_table(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                       const Terminal&) {
    out << words(tr("Legs: nameplates added, no demand; judged by measured load only")) << '\n';
    for (std::size_t p = 0; p < assessment.panels.size(); ++p) {
        const PanelFigures& panel = assessment.panels[p];
        for (const PanelLegFigures& leg : panel.legs)
            out << "  " << padded(clipped(panel.id, 11) + " " + leg.leg, 14) << padded_left(volt_amperes(leg.va), 9)
                << " VA" << padded_left(amps(leg.amps), 8) << " A" << padded_left(amps(leg.measured_a), 8) << " A "
                << words(tr("measured")) << '\n';
        const LoadFigures& feeder = assessment.feeders[p];
        out << "  "
            << fmt::format(fmt::runtime(words(tr(
                               "{0}: neutral {1} A, imbalance {2}; feeder rated {3} A, wire {4} A, measured {5} A"))),
                           network.survey().panels[p].id, amps(panel.neutral_amps), percent(panel.imbalance_percent),
                           amps(feeder.rating_a), amps(feeder.ampacity_a), amps(feeder.measured_a))
            << '\n';
    }
    out << '\n';
}

}  // namespace doorcard
