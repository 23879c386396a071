// SPDX-License-Identifier: MIT
#include "assess/directory.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "assess/circuit_text.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

bool contains(const std::vector<int>& spaces, int space) {
    return std::find(spaces.begin(), spaces.end(), space) != spaces.end();
}

// Joined without saying anything twice.
Message joined(const std::vector<Message>& texts) {
    Parts parts;
    std::set<std::string> said;
    for (const Message& text : texts)
        if (!text.empty() && said.insert(plain_form(text)).second) parts.emplace_back(text);
    return and_list(std::move(parts));
}

class Rows {
public:
    Rows(const Network& network, std::size_t panel)
        : network_(network), survey_(network.survey()), panel_(panel), thing_(survey_.panels[panel]) {}

    PanelDirectory directory() {
        find_texts();
        PanelDirectory found;
        found.panel = panel_;
        for (const std::size_t breaker : network_.breakers_in(panel_)) found.rows.push_back(breaker_row(breaker));
        add_free_positions(found.rows);
        std::stable_sort(found.rows.begin(), found.rows.end(), [](const DirectoryRow& a, const DirectoryRow& b) {
            return a.positions.front() < b.positions.front();
        });
        for (const DirectoryRow& row : found.rows) count(row, found);
        return found;
    }

private:
    // Circuits of the panel by space, so that 'circuit 1' is the one with the lower number.
    void find_texts() {
        std::vector<std::size_t> breakers = network_.breakers_in(panel_);
        std::stable_sort(breakers.begin(), breakers.end(), [&](std::size_t a, std::size_t b) {
            return positions_of(survey_.breakers[a]) < positions_of(survey_.breakers[b]);
        });
        std::vector<std::size_t> circuits;
        for (const std::size_t breaker : breakers)
            for (const std::size_t circuit : network_.circuits_on(breaker))
                if (std::find(circuits.begin(), circuits.end(), circuit) == circuits.end()) circuits.push_back(circuit);
        std::vector<Message> texts = distinct_texts(network_, circuits);
        for (std::size_t i = 0; i < circuits.size(); ++i) texts_[circuits[i]] = std::move(texts[i]);
    }

    // A purpose that says 'spare' is no description of a circuit, and only `state = "spare"` prints as one.
    Message circuits_text(std::size_t breaker) const {
        std::vector<Message> texts;
        for (const std::size_t circuit : network_.circuits_on(breaker)) {
            const Message& text = texts_.at(circuit);
            if (!says_spare(text)) texts.push_back(text);
        }
        return joined(texts);
    }

    bool proved(std::size_t breaker) const {
        const auto& circuits = network_.circuits_on(breaker);
        return std::all_of(circuits.begin(), circuits.end(), [&](std::size_t circuit) {
            const auto& traced = survey_.circuits[circuit].traced;
            return traced && traced->proves();
        });
    }

    const Source* source_through(std::size_t breaker) const {
        for (const Source& source : survey_.sources)
            if (source.through == survey_.breakers[breaker].id) return &source;
        return nullptr;
    }

    DirectoryRow breaker_row(std::size_t index) const {
        const Breaker& breaker = survey_.breakers[index];
        DirectoryRow row;
        row.breaker = index;
        row.positions = positions_of(breaker);
        row.circuits = network_.circuits_on(index);
        for (const std::size_t circuit : row.circuits) row.circuit_texts.push_back(texts_.at(circuit));
        row.fire_alarm = breaker.system == "fire-alarm";
        describe(index, row);
        if (breaker.state == BreakerState::off) mark_off(breaker, row);
        if (row.fire_alarm) mark_fire_alarm(row);
        return row;
    }

    void describe(std::size_t index, DirectoryRow& row) const {
        const Breaker& breaker = survey_.breakers[index];
        if (const Source* source = source_through(index)) return describe_source(*source, row);
        if (!network_.panels_fed_by(index).empty()) return describe_feeder(index, row);
        row.text = circuits_text(index);
        if (!row.text.empty()) return describe_circuits(index, row);
        if (breaker.state == BreakerState::spare) return set(row, RowKind::spare, tr("Spare"));
        if (breaker.serves_as_main.value_or(false)) return set(row, RowKind::main, tr("Main: shuts off this panel"));
        if (row.circuits.empty()) return set(row, RowKind::not_traced, tr("Not traced: treat as live"));
        row.claimed = !proved(index);
        if (row.claimed)
            set(row, RowKind::not_described, tr("Not described: treat as live"));
        else
            set(row, RowKind::not_described, tr("Traced, not described"));
    }

    static void set(DirectoryRow& row, RowKind kind, const char* text) {
        row.kind = kind;
        row.text = {text, {}};
    }

    void describe_circuits(std::size_t index, DirectoryRow& row) const {
        row.kind = RowKind::circuits;
        row.claimed = !proved(index);
        row.under = volts_text(index, row);
        if (Parts others = handles(other_feeds(index, row)); !others.empty())
            row.under = {tr("Also fed by {0}: switch off all"), {and_list(std::move(others))}};
        else if (Parts joined_in = handles(feeds_of_outlets(row)); !joined_in.empty())
            row.under = {tr("An outlet is also fed by {0}: switch off all"), {and_list(std::move(joined_in))}};
    }

    // A circuit that is fed by several breakers at once is dead only when all are off.
    std::set<std::size_t> other_feeds(std::size_t index, const DirectoryRow& row) const {
        std::set<std::size_t> others;
        for (const std::size_t circuit : row.circuits)
            for (const std::size_t breaker : network_.breakers_of(circuit))
                if (breaker != index) others.insert(breaker);
        return others;
    }

    // Likewise an outlet where circuits of several breakers are joined.
    std::set<std::size_t> feeds_of_outlets(const DirectoryRow& row) const {
        std::set<std::size_t> others;
        for (const std::size_t circuit : row.circuits)
            for (const std::size_t outlet : network_.outlets_on(circuit))
                for (const std::size_t other : network_.circuits_at(outlet))
                    for (const std::size_t breaker : network_.breakers_of(other)) others.insert(breaker);
        others.erase(*row.breaker);
        return others;
    }

    Parts handles(const std::set<std::size_t>& breakers) const {
        Parts parts;
        for (const std::size_t breaker : breakers) parts.emplace_back(handle_name(breaker));
        return parts;
    }

    std::string handle_name(std::size_t breaker) const {
        const std::string spaces = name_of(positions_of(survey_.breakers[breaker]));
        if (network_.panel_of(breaker) == panel_) return spaces;
        return survey_.breakers[breaker].panel + " " + spaces;
    }

    // Said of line-to-line circuits only: others go without saying.
    Message volts_text(std::size_t index, const DirectoryRow& row) const {
        if (survey_.breakers[index].poles() < 2 || row.circuits.size() != 1) return {};
        const auto volts = network_.circuit_volts(row.circuits.front());
        if (!volts) return {};
        return {tr("{0:.0f} V"), {volts->value}};
    }

    void describe_source(const Source& source, DirectoryRow& row) const {
        row.kind = RowKind::source;
        row.text = {tr("{0}: feeds in"), {source_name(source)}};
        if (source.disconnect) row.under = {tr("off switch: {0}"), {*source.disconnect}};
    }

    void describe_feeder(std::size_t index, DirectoryRow& row) const {
        row.kind = RowKind::feeder;
        Parts names;
        for (const std::size_t panel : network_.panels_fed_by(index))
            names.emplace_back(panel_name(survey_.panels[panel]));
        row.text = {tr("Feeder to {0}"), {and_list(std::move(names))}};
        const Panel& fed = survey_.panels[network_.panels_fed_by(index).front()];
        if (fed.title && fed.title != fed.id && fed.location)
            row.under = {tr("panel {0}, {1}"), {fed.id, *fed.location}};
        else if (fed.title && fed.title != fed.id)
            row.under = {tr("panel {0}"), {fed.id}};
        else if (fed.location)
            row.under = verbatim(*fed.location);
    }

    static void mark_off(const Breaker& breaker, DirectoryRow& row) {
        const bool described =
            row.kind == RowKind::circuits || row.kind == RowKind::feeder || row.kind == RowKind::source;
        Message what = described || row.kind == RowKind::not_traced ? row.text : Message{};
        row.kind = RowKind::off;
        row.text = {tr("Off: {0}"),
                    {breaker.off_why ? verbatim(*breaker.off_why) : Message{tr("reason not noted"), {}}}};
        if (!what.empty()) row.under = std::move(what);
    }

    static void mark_fire_alarm(DirectoryRow& row) {
        if (plain_form(row.text).find("fire alarm circuit") != std::string::npos) return;
        row.under = std::move(row.text);
        row.text = {tr("FIRE ALARM CIRCUIT"), {}};
    }

    void add_free_positions(std::vector<DirectoryRow>& rows) const {
        std::set<Position> taken;
        std::set<int> halved;
        for (const DirectoryRow& row : rows)
            for (const Position position : row.positions) {
                taken.insert(position);
                if (position.half != ' ') halved.insert(position.space);
            }
        for (int space = 1; space <= network_.geometry(panel_).spaces(); ++space) {
            if (taken.contains({space, ' '})) continue;
            if (!halved.contains(space)) {
                rows.push_back(free_row({space, ' '}));
                continue;
            }
            for (const char half : {'a', 'b'})
                if (!taken.contains({space, half})) rows.push_back(free_row({space, half}));
        }
    }

    DirectoryRow free_row(Position position) const {
        const bool looked = thing_.all_breakers_entered.value_or(false) ||
                            (thing_.empty_spaces && contains(*thing_.empty_spaces, position.space));
        DirectoryRow row;
        row.positions = {position};
        if (looked)
            set(row, RowKind::space, tr("Space"));
        else
            set(row, RowKind::not_seen, tr("Not seen"));
        return row;
    }

    // Spares, mains, sources and empty positions are no circuits to trace.
    void count(const DirectoryRow& row, PanelDirectory& directory) const {
        if (!row.breaker || row.kind == RowKind::spare || row.kind == RowKind::main || row.kind == RowKind::source)
            return;
        const bool feeds = !network_.panels_fed_by(*row.breaker).empty();
        if (row.claimed)
            ++directory.claimed;
        else if (feeds || (!row.circuits.empty() && row.kind != RowKind::not_described))
            ++directory.traced;
        else
            ++directory.not_traced;
    }

    const Network& network_;
    const Survey& survey_;
    std::size_t panel_;
    const Panel& thing_;
    std::map<std::size_t, Message> texts_;
};

// Panels at or below this one: a source that comes in there reaches this panel's bus.
std::set<std::size_t> panels_at_and_below(const Network& network, std::size_t panel) {
    std::set<std::size_t> found{panel};
    for (const Thing thing : network.downstream_of({ThingKind::panel, panel}))
        if (thing.kind == ThingKind::panel) found.insert(thing.index);
    return found;
}

}  // namespace

bool says_spare(const Message& text) {
    static const std::set<std::string> words = {"spare",    "space", "blank",   "unused",
                                                "not used", "empty", "reserva", "libre"};
    return words.contains(plain_form(text));
}

std::string name_of(Position position) {
    return position.half == ' ' ? fmt::format("{}", position.space)
                                : fmt::format("{}{}", position.space, position.half);
}

std::string name_of(const std::vector<Position>& positions) {
    std::string name;
    for (const Position position : positions) name += (name.empty() ? "" : "+") + name_of(position);
    return name;
}

std::vector<Position> positions_of(const Breaker& breaker) {
    std::vector<Position> positions;
    for (std::size_t i = 0; i < breaker.spaces.size(); ++i)
        positions.push_back({breaker.spaces[i], breaker.halves.empty() ? ' ' : breaker.halves[i]});
    std::sort(positions.begin(), positions.end());
    return positions;
}

PanelDirectory directory_of(const Network& network, std::size_t panel) { return Rows(network, panel).directory(); }

std::vector<PanelSource> sources_at(const Network& network, std::size_t panel) {
    const Survey& survey = network.survey();
    const std::set<std::size_t> below = panels_at_and_below(network, panel);
    const Ids& feeds = survey.panels[panel].fed_by;
    std::vector<PanelSource> found;
    for (std::size_t i = 0; i < survey.sources.size(); ++i) {
        const Source& source = survey.sources[i];
        if (std::find(feeds.begin(), feeds.end(), source.id) != feeds.end()) {
            found.push_back({i, std::nullopt});
            continue;
        }
        const std::size_t breaker = source.through ? survey.breakers.position(*source.through) : survey.breakers.size();
        if (breaker < survey.breakers.size() && below.contains(network.panel_of(breaker)))
            found.push_back({i, breaker});
    }
    return found;
}

}  // namespace doorcard
