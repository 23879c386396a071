// SPDX-License-Identifier: MIT
#include <algorithm>
#include <numeric>

#include "network/network_body.hpp"

namespace doorcard {
namespace {

void keep_once(Positions& positions) {
    std::sort(positions.begin(), positions.end());
    positions.erase(std::unique(positions.begin(), positions.end()), positions.end());
}

/// Fills both directions of one reference: `to[i]` lists what thing i names, `from[j]` what names thing j.
template <class Named>
Positions positions_of(const Ids& ids, const Table<Named>& table) {
    Positions found;
    for (const std::string& id : ids)
        if (const std::size_t at = table.position(id); at < table.size()) found.push_back(at);
    return found;
}

class Builder {
public:
    explicit Builder(const Survey& survey) : body_(std::make_shared<Network::Body>()), survey_(survey) {
        body_->survey = survey;
    }

    std::shared_ptr<const Network::Body> build() {
        place_breakers();
        body_->supplies = resolve_supplies(survey_, body_->panel_of, body_->breakers_in);
        place_circuits();
        place_outlets();
        place_loads();
        chain_ties();
        for (std::size_t c = 0; c < survey_.circuits.size(); ++c) find_legs(c);
        gather_neutrals();
        draw_feeds();
        cover_occupancies();
        return body_;
    }

private:
    void place_breakers() {
        body_->breakers_in.resize(survey_.panels.size());
        body_->panels_fed_by.resize(survey_.breakers.size());
        for (std::size_t b = 0; b < survey_.breakers.size(); ++b) {
            body_->panel_of.push_back(survey_.panels.position(survey_.breakers[b].panel));
            if (body_->panel_of[b] < survey_.panels.size()) body_->breakers_in[body_->panel_of[b]].push_back(b);
        }
        for (std::size_t p = 0; p < survey_.panels.size(); ++p) {
            body_->breakers_feeding.push_back(positions_of(survey_.panels[p].fed_by, survey_.breakers));
            for (const std::size_t b : body_->breakers_feeding[p]) body_->panels_fed_by[b].push_back(p);
        }
    }

    void place_circuits() {
        body_->circuits_on.resize(survey_.breakers.size());
        for (std::size_t c = 0; c < survey_.circuits.size(); ++c) {
            body_->breakers_of.push_back(positions_of(survey_.circuits[c].breakers, survey_.breakers));
            for (const std::size_t b : body_->breakers_of[c]) body_->circuits_on[b].push_back(c);
        }
        for (Positions& circuits : body_->circuits_on) keep_once(circuits);
    }

    void place_outlets() {
        const std::size_t count = survey_.outlets.size();
        body_->circuits_at.resize(count);
        body_->outlets_on.resize(survey_.circuits.size());
        std::vector<bool> known(count);
        for (std::size_t o = 0; o < count; ++o) inherit_circuits(o, known);
        for (std::size_t o = 0; o < count; ++o)
            for (const std::size_t c : body_->circuits_at[o]) body_->outlets_on[c].push_back(o);
    }

    /// An outlet that names no circuit has that of its `upstream`, up the chain.
    void inherit_circuits(std::size_t outlet, std::vector<bool>& known) {
        Positions chain;
        std::size_t at = outlet;
        while (at < survey_.outlets.size() && !known[at]) {
            known[at] = true;
            chain.push_back(at);
            if (!survey_.outlets[at].circuits.empty()) break;
            const auto& upstream = survey_.outlets[at].upstream;
            at = upstream ? survey_.outlets.position(*upstream) : survey_.outlets.size();
        }
        Positions circuits;
        if (at < survey_.outlets.size() && survey_.outlets[at].circuits.empty()) circuits = body_->circuits_at[at];
        for (auto link = chain.rbegin(); link != chain.rend(); ++link) {
            if (const Ids& own = survey_.outlets[*link].circuits; !own.empty())
                circuits = positions_of(own, survey_.circuits);
            else if (link == chain.rbegin() && at < survey_.outlets.size() && at != *link)
                circuits = body_->circuits_at[at];
            keep_once(circuits);
            body_->circuits_at[*link] = circuits;
        }
    }

    void place_loads() {
        body_->loads_at.resize(survey_.outlets.size());
        body_->loads_on.resize(survey_.circuits.size());
        for (std::size_t l = 0; l < survey_.loads.size(); ++l) {
            const Load& load = survey_.loads[l];
            if (load.outlet) {
                const std::size_t o = survey_.outlets.position(*load.outlet);
                if (o >= survey_.outlets.size()) continue;
                body_->loads_at[o].push_back(l);
                for (const std::size_t c : body_->circuits_at[o]) body_->loads_on[c].push_back(l);
            } else if (load.circuit) {
                const std::size_t c = survey_.circuits.position(*load.circuit);
                if (c < survey_.circuits.size()) body_->loads_on[c].push_back(l);
            }
        }
    }

    /// Ties count both ways and chain.
    void chain_ties() {
        const std::size_t count = survey_.breakers.size();
        Positions group(count);
        std::iota(group.begin(), group.end(), std::size_t{0});
        const auto root = [&](std::size_t b) {
            while (group[b] != b) b = group[b] = group[group[b]];
            return b;
        };
        for (std::size_t b = 0; b < count; ++b)
            if (const auto& tied = survey_.breakers[b].tied_with)
                for (const std::size_t other : positions_of(*tied, survey_.breakers)) group[root(b)] = root(other);
        std::vector<Positions> members(count);
        for (std::size_t b = 0; b < count; ++b) members[root(b)].push_back(b);
        for (std::size_t b = 0; b < count; ++b) body_->opened_with.push_back(members[root(b)]);
    }

    void find_legs(std::size_t circuit) {
        const Circuit& given = survey_.circuits[circuit];
        std::string legs;
        bool doubled = false;
        std::vector<Hot> hots;
        for (const std::size_t b : body_->breakers_of[circuit]) {
            std::string poles = body_->supplies.breaker_legs[b];
            if (given.leg && poles.size() > 1)
                poles = std::string(1, poles.find(*given.leg) == std::string::npos ? '?' : *given.leg);
            for (std::size_t i = 0; i < poles.size(); ++i) {
                doubled = doubled || poles.find(poles[i], i + 1) != std::string::npos;
                if (poles[i] != '?') hots.push_back({b, poles[i]});
            }
            legs += poles;
        }
        std::sort(legs.begin(), legs.end());
        legs.erase(std::unique(legs.begin(), legs.end()), legs.end());
        std::sort(hots.begin(), hots.end());
        hots.erase(std::unique(hots.begin(), hots.end()), hots.end());
        if (legs.find('?') != std::string::npos) legs.clear();
        body_->circuit_volts.push_back(legs.empty() || doubled ? std::nullopt : volts_between(circuit, legs));
        body_->circuit_legs.push_back(std::move(legs));
        body_->circuit_hots.push_back(std::move(hots));
    }

    std::optional<Volts> volts_between(std::size_t circuit, const std::string& legs) const {
        std::optional<Volts> volts;
        for (const std::size_t b : body_->breakers_of[circuit]) {
            if (body_->panel_of[b] >= survey_.panels.size()) return std::nullopt;
            const PanelSupply& supply = body_->supplies.panels[body_->panel_of[b]];
            const auto here = legs.size() == 1 ? supply.volts_to_neutral(legs.front()) : supply.volts_line_to_line();
            if (!here || (volts && *volts != *here)) return std::nullopt;
            volts = here;
        }
        return volts;
    }

    void gather_neutrals() {
        std::map<std::string, std::size_t> places;
        for (std::size_t c = 0; c < survey_.circuits.size(); ++c) {
            const Circuit& circuit = survey_.circuits[c];
            if (!circuit.names_neutral()) continue;
            const auto [at, is_new] = places.emplace(*circuit.neutral, body_->neutrals.size());
            if (is_new) body_->neutrals.push_back({*circuit.neutral, {}, {}, "", {}});
            SharedNeutral& neutral = body_->neutrals[at->second];
            neutral.circuits.push_back(c);
            neutral.hots.insert(neutral.hots.end(), body_->circuit_hots[c].begin(), body_->circuit_hots[c].end());
            for (const std::size_t b : body_->breakers_of[c]) neutral.panels.push_back(body_->panel_of[b]);
        }
        for (SharedNeutral& neutral : body_->neutrals) {
            std::sort(neutral.hots.begin(), neutral.hots.end());
            neutral.hots.erase(std::unique(neutral.hots.begin(), neutral.hots.end()), neutral.hots.end());
            keep_once(neutral.panels);
            for (const Hot& hot : neutral.hots) neutral.legs += hot.leg;
            std::sort(neutral.legs.begin(), neutral.legs.end());
            neutral.legs.erase(std::unique(neutral.legs.begin(), neutral.legs.end()), neutral.legs.end());
        }
    }

    void feed(Thing from, Thing to, const std::optional<Wire>* conductors = nullptr) {
        body_->feeds.push_back({from, to, conductors && *conductors ? &**conductors : nullptr});
    }

    void draw_feeds() {
        const Survey& survey = body_->survey;
        for (std::size_t p = 0; p < survey.panels.size(); ++p) feed_panel(p);
        for (std::size_t b = 0; b < survey.breakers.size(); ++b) {
            if (body_->panel_of[b] < survey.panels.size())
                feed({ThingKind::panel, body_->panel_of[b]}, {ThingKind::breaker, b});
            for (const std::size_t c : body_->circuits_on[b])
                feed({ThingKind::breaker, b}, {ThingKind::circuit, c}, &survey.circuits[c].wire);
        }
        for (std::size_t o = 0; o < survey.outlets.size(); ++o) feed_outlet(o);
        for (std::size_t l = 0; l < survey.loads.size(); ++l) feed_load(l);
        std::vector<Feed> back_feeds;
        for (std::size_t s = 0; s < survey.sources.size(); ++s) add_back_feed(s, back_feeds);
        body_->graph =
            std::make_unique<FeedsGraph>(Positions{survey.sources.size(), survey.panels.size(), survey.breakers.size(),
                                                   survey.circuits.size(), survey.outlets.size(), survey.loads.size()},
                                         body_->feeds, back_feeds);
        body_->feeds.insert(body_->feeds.end(), back_feeds.begin(), back_feeds.end());
        for (const Thing& thing : body_->graph->from_the_top())
            if (thing.kind == ThingKind::panel) body_->panels_from_the_top.push_back(thing.index);
    }

    void feed_panel(std::size_t p) {
        const Panel& panel = body_->survey.panels[p];
        for (const std::size_t s : positions_of(panel.fed_by, survey_.sources))
            feed({ThingKind::source, s}, {ThingKind::panel, p}, &panel.feeder);
        for (const std::size_t b : body_->breakers_feeding[p])
            feed({ThingKind::breaker, b}, {ThingKind::panel, p}, &panel.feeder);
    }

    void feed_outlet(std::size_t o) {
        const Outlet& outlet = survey_.outlets[o];
        const std::size_t upstream =
            outlet.upstream ? survey_.outlets.position(*outlet.upstream) : survey_.outlets.size();
        if (upstream < survey_.outlets.size()) feed({ThingKind::outlet, upstream}, {ThingKind::outlet, o});
        const Positions inherited = upstream < survey_.outlets.size() ? body_->circuits_at[upstream] : Positions{};
        for (const std::size_t c : body_->circuits_at[o])
            if (std::find(inherited.begin(), inherited.end(), c) == inherited.end())
                feed({ThingKind::circuit, c}, {ThingKind::outlet, o});
    }

    void feed_load(std::size_t l) {
        const Load& load = survey_.loads[l];
        const Thing thing{ThingKind::load, l};
        const auto from = [&](ThingKind kind, const auto& id, const auto& table) {
            if (id && table.position(*id) < table.size()) feed({kind, table.position(*id)}, thing);
        };
        from(ThingKind::outlet, load.outlet, survey_.outlets);
        from(ThingKind::circuit, load.circuit, survey_.circuits);
        from(ThingKind::panel, load.panel, survey_.panels);
    }

    /// A source that comes in through a breaker, beside what feeds the panel.
    void add_back_feed(std::size_t s, std::vector<Feed>& back_feeds) const {
        const auto& through = survey_.sources[s].through;
        const std::size_t b = through ? survey_.breakers.position(*through) : survey_.breakers.size();
        if (b >= survey_.breakers.size()) return;
        back_feeds.push_back({{ThingKind::source, s}, {ThingKind::breaker, b}, nullptr});
        if (body_->panel_of[b] < survey_.panels.size())
            back_feeds.push_back({{ThingKind::breaker, b}, {ThingKind::panel, body_->panel_of[b]}, nullptr});
    }

    void cover_occupancies() {
        body_->in_occupancy.assign(survey_.panels.size(), false);
        for (const Occupancy& occupancy : survey_.occupancies) {
            if (!occupancy.panel)
                body_->in_occupancy.assign(survey_.panels.size(), true);
            else if (const std::size_t p = survey_.panels.position(*occupancy.panel); p < survey_.panels.size())
                body_->in_occupancy[p] = true;
        }
        for (const std::size_t p : body_->panels_from_the_top)
            for (const std::size_t b : body_->breakers_feeding[p])
                if (body_->panel_of[b] < survey_.panels.size() && body_->in_occupancy[body_->panel_of[b]])
                    body_->in_occupancy[p] = true;
    }

    std::shared_ptr<Network::Body> body_;
    const Survey& survey_;
};

}  // namespace

Network network_of(const Survey& survey) { return Network(Builder(survey).build()); }

}  // namespace doorcard
