// SPDX-License-Identifier: MIT
#include "sheet/panel_facts.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "assess/circuit_text.hpp"
#include "assess/labels.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

const char* not_known() { return tr("not known"); }

Message joined_place(Message what, const std::optional<std::string>& where) {
    if (!where || where->empty()) return what;
    return {tr("{0}, {1}"), {std::move(what), *where}};
}

// A feeding source or breaker: name and place.
Message feed_message(const Survey& survey, const std::string& id) {
    if (const Source* source = survey.sources.find(id))
        return joined_place(source_name(*source), source->location ? source->location : source->disconnect);
    const Breaker* breaker = survey.breakers.find(id);
    if (breaker == nullptr) return verbatim(id);
    const Panel* panel = survey.panels.find(breaker->panel);
    Message handle = verbatim(breaker->panel + " " + name_of(positions_of(*breaker)));
    return joined_place(std::move(handle), panel ? panel->location : std::nullopt);
}

// Where the panel's own feed is shut off.
Message main_shut_off(const Survey& survey, const Panel& panel) {
    if (panel.main == MainKind::breaker || panel.main == MainKind::fuses) return {tr("main, here"), {}};
    if (panel.main == MainKind::split_bus) return {tr("every main, here"), {}};
    if (!panel.fed_by.empty() && survey.breakers.contains(panel.fed_by.front()))
        return feed_message(survey, panel.fed_by.front());
    return {tr("main: not seen"), {}};
}

Message source_shut_off(const Survey& survey, const PanelSource& source, const std::string& panel_id) {
    const Source& thing = survey.sources[source.source];
    Parts places;
    if (source.through) {
        const Breaker& breaker = survey.breakers[*source.through];
        const std::string spaces = name_of(positions_of(breaker));
        places.emplace_back(breaker.panel == panel_id ? spaces : breaker.panel + " " + spaces);
    }
    if (thing.disconnect) places.emplace_back(*thing.disconnect);
    Message where = places.empty() ? Message{tr("shut-off not noted"), {}} : and_list(std::move(places));
    return {tr("{0}: {1}"), {source_name(thing), std::move(where)}};
}

// A generator that starts by itself comes back when the utility goes.
Message source_step(const Survey& survey, const PanelSource& source, const std::string& panel_id) {
    Message step = source_shut_off(survey, source, panel_id);
    if (survey.sources[source.source].starts != "auto") return step;
    return {tr("{0}; it starts by itself: set it to OFF"), {std::move(step)}};
}

std::string phases_and_wires(const SystemFacts& facts) {
    const std::string name(facts.name);
    const auto space = name.find(' ');
    return name.substr(space + 1);
}

Message feeds_message(const Survey& survey, const Ids& feeds) {
    if (feeds.size() == 1) return feed_message(survey, feeds.front());
    Parts parts;
    for (const std::string& feed : feeds) parts.emplace_back(feed_message(survey, feed));
    return {tr("one at a time: {0}"), {and_list(std::move(parts))}};
}

Message through_transformer(Message feed, const Panel& panel) {
    if (!panel.transformer) return feed;
    if (!panel.transformer->kva) return {tr("{0}, through a transformer"), {std::move(feed)}};
    return {tr("{0}, through a transformer of {1:g} kVA"), {std::move(feed), *panel.transformer->kva}};
}

}  // namespace

std::string dated(const Survey& survey, const Words& words) {
    const auto& date = survey.heading.date;
    return date ? fmt::format("{:04}-{:02}-{:02}", date->year, date->month, date->day) : words(tr("undated"));
}

std::string traced_line(const Survey& survey, const PanelDirectory& directory, const Words& words) {
    std::string line = words.say({tr("{0:.0f} of {1:.0f} traced"),
                                  {static_cast<double>(directory.traced), static_cast<double>(directory.in_use())}}) +
                       "   " + dated(survey, words);
    if (survey.heading.revision) line += "   " + words.say({tr("revision {0}"), {*survey.heading.revision}});
    if (survey.heading.surveyor) line += "   " + words.say({tr("by {0}"), {*survey.heading.surveyor}});
    return line;
}

std::string rating_text(const Breaker& breaker) {
    return breaker.amps ? fmt::format("{:g}", breaker.amps->value) : "–";
}

std::string system_text(const Network& network, std::size_t panel, const Words& words) {
    const auto& system = network.supply(panel).system;
    if (!system) return words(tr("system not known"));
    const std::string name(facts(*system).name);
    const std::string rest = phases_and_wires(facts(*system));
    const Message volts{tr("{0} V"), {name.substr(0, name.find(' '))}};
    const std::string phase = rest.substr(0, 1);
    const auto wires = rest.find('w');
    const std::string wire = wires == std::string::npos || wires == 0 ? "" : rest.substr(wires - 1, 1);
    std::string text = words.say({tr("{0}, {1}-phase, {2}-wire"), {volts, phase, wire}});
    if (rest.find("high-leg") != std::string::npos)
        text += ", " + words.say({tr("high leg {0}"), {std::string(1, network.supply(panel).high_leg)}});
    return text;
}

std::string fed_from_text(const Network& network, std::size_t panel, const Words& words) {
    const Survey& survey = network.survey();
    const Ids& feeds = survey.panels[panel].fed_by;
    if (feeds.empty()) return words(not_known());
    return words.say(through_transformer(feeds_message(survey, feeds), survey.panels[panel]));
}

std::string main_caption(const Panel& panel, const Words& words) {
    const Message amps =
        panel.main_a ? Message{tr("{0:g} A"), {panel.main_a->value}} : Message{tr("rating not seen"), {}};
    if (panel.main == MainKind::breaker) return words.say({tr("main, {0} breaker"), {amps}});
    if (panel.main == MainKind::fuses) return words.say({tr("main, {0} fuses"), {amps}});
    if (panel.main == MainKind::lugs) return words(tr("no main here: lugs"));
    if (panel.main == MainKind::split_bus) return words(tr("split bus: several mains"));
    return words(tr("main"));
}

std::string main_text(const Network& network, std::size_t panel, const Words& words) {
    const Survey& survey = network.survey();
    const Panel& thing = survey.panels[panel];
    if (!thing.main) return words(tr("not seen"));
    if (thing.main == MainKind::lugs) {
        if (thing.fed_by.empty() || !survey.breakers.contains(thing.fed_by.front()))
            return words(tr("shut-off not known"));
        return words.say({tr("shut off at {0}"), {feed_message(survey, thing.fed_by.front())}});
    }
    Message place{tr("in this panel"), {}};
    if (thing.main_at == "top") place = {tr("top of this panel"), {}};
    if (thing.main_at == "bottom") place = {tr("bottom of this panel"), {}};
    if (thing.main_at == "center") place = {tr("middle of this panel"), {}};
    return words.say(joined_place(std::move(place), thing.location));
}

std::string sources_text(const Network& network, std::size_t panel, const Words& words) {
    const Survey& survey = network.survey();
    const Panel& thing = survey.panels[panel];
    const std::vector<PanelSource> sources = sources_at(network, panel);
    const auto by_breaker = std::count_if(thing.fed_by.begin(), thing.fed_by.end(),
                                          [&](const std::string& id) { return survey.breakers.contains(id); });
    const auto ways = sources.size() + static_cast<std::size_t>(by_breaker) + (thing.fed_by.empty() ? 1 : 0);
    if (sources.empty() || ways < 2) return "";
    const bool own_feed = by_breaker > 0 || thing.fed_by.empty() ||
                          std::any_of(sources.begin(), sources.end(), [](const PanelSource& s) { return !s.through; });
    Message list;
    const auto append = [&list](Message next) {
        list = list.empty() ? std::move(next) : Message{tr("{0}; {1}"), {std::move(list), std::move(next)}};
    };
    if (own_feed) append(main_shut_off(survey, thing));
    for (const PanelSource& source : sources) {
        const Source& what = survey.sources[source.source];
        if (source.through || (what.kind && *what.kind != "utility")) append(source_shut_off(survey, source, thing.id));
    }
    return words.say({ways == 2 ? tr("Shut off both: {0}. The line side of the main stays live.")
                                : tr("Shut off all: {0}. The line side of the main stays live."),
                      {std::move(list)}});
}

bool has_own_main(const Panel& panel) { return panel.main != MainKind::lugs; }

std::vector<std::string> all_off_steps(const Network& network, std::size_t panel, const Words& words) {
    const Survey& survey = network.survey();
    const Panel& thing = survey.panels[panel];
    std::vector<std::string> steps;
    const auto& feeders = network.breakers_feeding(panel);
    if (thing.main == MainKind::split_bus)
        steps.push_back(words.say({tr("Every main, for there are several: {0}"), {main_text(network, panel, words)}}));
    else if (thing.main && has_own_main(thing))
        steps.push_back(words.say({tr("Main: {0}"), {main_text(network, panel, words)}}));
    else if (feeders.empty())
        steps.push_back(thing.main ? words(tr("Main: not in this panel, not known where"))
                                   : words(tr("Main: not seen")));
    else
        for (const std::size_t feeder : feeders)
            steps.push_back(words.say({tr("Handle {0}"), {feed_message(survey, survey.breakers[feeder].id)}}));
    for (const PanelSource& source : sources_at(network, panel)) {
        const Source& what = survey.sources[source.source];
        if (source.through || (what.kind && *what.kind != "utility"))
            steps.push_back(words.say(source_step(survey, source, thing.id)));
    }
    return steps;
}

std::string kept_off_text(const Network&, const PanelDirectory& directory, const Words& words) {
    Parts parts;
    for (const DirectoryRow& row : directory.rows)
        if (row.kind == RowKind::off || (row.fire_alarm && row.under.pattern == "Off: {0}"))
            parts.emplace_back(name_of(row.positions));
    return words.say(and_list(std::move(parts)));
}

std::string abbreviations_text(const Network& network, const PanelDirectory& directory, const Words& words) {
    std::string text;
    for (const Abbreviation& known : explained_abbreviations(network, directory))
        text += (text.empty() ? "" : "; ") + known.written + ": " + words(known.meaning);
    return text.empty() ? text : text + ".";
}

std::vector<std::string> ask_before(const Network& network, const PanelDirectory& directory) {
    const Survey& survey = network.survey();
    std::vector<std::string> found;
    for (const DirectoryRow& row : directory.rows) {
        std::vector<std::string> reasons;
        const auto add = [&reasons](const std::optional<std::string>& reason) {
            if (reason && std::find(reasons.begin(), reasons.end(), *reason) == reasons.end())
                reasons.push_back(*reason);
        };
        if (row.breaker) add(survey.breakers[*row.breaker].keep_on);
        for (const std::size_t circuit : row.circuits) {
            for (const std::size_t outlet : network.outlets_on(circuit)) add(survey.outlets[outlet].keep_on);
            for (const std::size_t load : network.loads_on(circuit)) add(survey.loads[load].keep_on);
        }
        if (!reasons.empty()) found.push_back(fmt::format("{} ({})", name_of(row.positions), fmt::join(reasons, ", ")));
    }
    return found;
}

std::string title_and_place(const Panel& panel, const Words& words) {
    const std::string title = panel.title && panel.title != panel.id ? *panel.title : "";
    if (title.empty()) return panel.location.value_or("");
    return panel.location ? words.say({tr("{0}, {1}"), {title, *panel.location}}) : title;
}

std::vector<PanelSource> further_sources(const Network& network, std::size_t panel) {
    std::vector<PanelSource> sources = sources_at(network, panel);
    std::erase_if(sources, [](const PanelSource& source) { return !source.through; });
    return sources;
}

std::string further_text(const Network& network, std::size_t panel, const std::vector<PanelSource>& sources,
                         const Words& words) {
    std::string text;
    for (const PanelSource& source : sources) {
        const Source& thing = network.survey().sources[source.source];
        const Breaker& breaker = network.survey().breakers[*source.through];
        const std::string spaces = (breaker.panel == network.survey().panels[panel].id ? "" : breaker.panel + " ") +
                                   name_of(positions_of(breaker));
        const Message at{tr("{0} at {1}"), {source_name(thing), spaces}};
        const Message whole = thing.disconnect ? Message{tr("{0}; off: {1}"), {at, *thing.disconnect}} : at;
        text += (text.empty() ? "" : "; ") + words.say(whole);
    }
    return text;
}

std::string fed_text(const Network& network, const PanelDirectory& directory, const Words& words) {
    std::vector<Message::Part> parts;
    for (const DirectoryRow& row : directory.rows)
        if (row.kind == RowKind::feeder)
            for (const std::size_t fed : network.panels_fed_by(*row.breaker))
                parts.emplace_back(
                    Message{tr("{0} at {1}"), {network.survey().panels[fed].id, name_of(row.positions)}});
    return words.say(and_list(std::move(parts)));
}

bool is_chosen(const std::vector<std::string>& panels, const std::string& panel) {
    return panels.empty() || std::find(panels.begin(), panels.end(), panel) != panels.end();
}

}  // namespace doorcard
