// SPDX-License-Identifier: MIT
#pragma once
#include <memory>
#include <span>
#include <vector>

#include "network/legs.hpp"
#include "rules/book.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A vertex of the network: a thing by kind (source, panel, breaker, circuit, outlet, load) and position in the
/// survey's table.
struct Thing {
    ThingKind kind = ThingKind::survey;
    std::size_t index = 0;
    auto operator<=>(const Thing&) const = default;
};

/// The id of a thing; empty for a kind that is no vertex.
const std::string& id_of(const Survey&, Thing);

/// 'Feeds': an edge of the network, with the conductors where they are known (null else).
struct Feed {
    Thing from;
    Thing to;
    const Wire* conductors = nullptr;
};

/// What a feed carries: the nameplate loads that hang below it, and the readings taken where it begins or ends;
/// positions in the survey's tables.
struct Carried {
    std::vector<std::size_t> loads;
    std::vector<std::size_t> readings;
};

/// A hot: one breaker on one leg.
struct Hot {
    std::size_t breaker = 0;
    char leg = 0;
    auto operator<=>(const Hot&) const = default;
};

/// A neutral that circuits name: a thing of its own, in the order in which circuits first name it.
struct SharedNeutral {
    std::string id;
    std::vector<std::size_t> circuits;
    std::vector<Hot> hots;            ///< each once
    std::string legs;                 ///< of its hots, ascending, each once
    std::vector<std::size_t> panels;  ///< of its hots' breakers, each once
};

/// The survey as a graph of what feeds what. Holds the survey it was made of (shared, not copied deeply); asks nothing
/// of files. Made anew after an edit: 73 us for a house.
class Network {
public:
    const Survey& survey() const;

    // --- legs
    const PanelSupply& supply(std::size_t panel) const;
    const SpaceGeometry& geometry(std::size_t panel) const;
    /// Letter of each pole by ascending space (as `breaker_spaces`); '?' where unknown.
    const std::string& breaker_legs(std::size_t breaker) const;
    std::size_t panel_of(std::size_t breaker) const;
    /// The legs a circuit is on, ascending, each once; empty where unknown.
    const std::string& circuit_legs(std::size_t circuit) const;
    std::optional<Volts> circuit_volts(std::size_t circuit) const;
    const std::vector<Hot>& circuit_hots(std::size_t circuit) const;

    // --- what hangs where (positions in the survey's tables, in file order)
    const std::vector<std::size_t>& breakers_in(std::size_t panel) const;
    const std::vector<std::size_t>& circuits_on(std::size_t breaker) const;
    const std::vector<std::size_t>& breakers_of(std::size_t circuit) const;
    const std::vector<std::size_t>& outlets_on(std::size_t circuit) const;  ///< its own and those that inherit it
    const std::vector<std::size_t>& circuits_at(std::size_t outlet) const;  ///< own, else through `upstream`
    const std::vector<std::size_t>& loads_at(std::size_t outlet) const;
    const std::vector<std::size_t>& loads_on(std::size_t circuit) const;  ///< through outlets or set straight on it
    const std::vector<std::size_t>& panels_fed_by(std::size_t breaker) const;
    const std::vector<std::size_t>& breakers_feeding(std::size_t panel) const;  ///< in the order of its `fed_by`
    const std::vector<SharedNeutral>& neutrals() const;
    /// True where an `[[occupancy]]` covers the panel: its own, one that feeds it, or the whole premises.
    bool in_occupancy(std::size_t panel) const;
    bool circuit_in_occupancy(std::size_t circuit) const;
    /// Handles that open together with this one: itself and all that are tied to it, both ways, chained; ascending.
    const std::vector<std::size_t>& opened_with(std::size_t breaker) const;

    // --- questions to the graph
    const std::vector<Feed>& feeds() const;
    Carried carried_by(const Feed&) const;
    /// Panels, each before all that it feeds.
    const std::vector<std::size_t>& panels_from_the_top() const;
    /// All that has no way left from any source or unfed panel once these devices are open, in the order of kinds and
    /// tables. An outlet with two feeds goes dead only when both are open.
    std::vector<Thing> dead_when_open(std::span<const Thing> opened) const;
    /// All that is upstream of a point.
    std::vector<Thing> upstream_of(Thing) const;
    /// All that is downstream of a point.
    std::vector<Thing> downstream_of(Thing) const;
    /// Outlets and circuits that several ways feed at once.
    std::vector<Thing> fed_twice() const;

    struct Body;
    explicit Network(std::shared_ptr<const Body> body);

private:
    std::shared_ptr<const Body> body_;
};

Network network_of(const Survey&);

}  // namespace doorcard
