// SPDX-License-Identifier: MIT
#pragma once
#include <array>
#include <string>
#include <unordered_map>
#include <vector>

#include "survey/row_changes.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What an edit of a survey changed in the tables that are judged panel by panel.
struct ThingChanges {
    RowChanges breakers, circuits, outlets, loads;
    ThingChanges(const Survey& before, const Survey& after);
};

/// The panel in which each thing of a survey is judged: that of its first breaker. Things without one have a home of
/// their own, behind the last panel. Panels that share something (a circuit, a neutral, a tie, a strap, a box, a run of
/// outlets, an old directory) are judged together; once together they stay so.
class Homes {
public:
    explicit Homes(const Survey&);

    std::size_t nowhere() const { return nowhere_; }
    std::size_t of_breaker(std::size_t at) const { return breakers_[at]; }
    std::size_t of_circuit(std::size_t at) const { return circuits_[at]; }
    std::size_t of_outlet(std::size_t at) const { return outlets_[at]; }
    std::size_t of_load(std::size_t at) const { return loads_[at]; }
    /// The home of what an address names.
    std::size_t of(const Survey&, const Address&) const;
    /// Adds to `chosen` (by home) all that are judged together with one chosen.
    void add_those_together(std::vector<bool>& chosen) const;
    /// The homes after an edit; panels must have kept their ids and order.
    void follow(const Survey& after, const ThingChanges&);

private:
    using Homed = std::vector<std::size_t>;  // by position
    using Named = std::unordered_map<std::string, std::size_t>;

    std::size_t of_first(const Survey&, const Ids& breakers) const;
    void settle(const Survey&, const std::array<std::vector<bool>, 4>& anew);
    void settle_outlet(const Survey&, std::size_t at, std::vector<bool>& unsettled);
    std::size_t upstream_of(const Survey&, std::size_t outlet) const;
    void link_breaker(const Survey&, std::size_t at);
    void link_circuit(const Survey&, std::size_t at);
    void link_outlet(const Survey&, std::size_t at);
    void link_name(const std::string& name, std::size_t home);
    void link(std::size_t a, std::size_t b);
    std::size_t root(std::size_t home) const;

    std::size_t nowhere_ = 0;
    Homed breakers_, circuits_, outlets_, loads_;
    Homed group_;  // by home: another that it is judged with, or itself
    Named names_;  // of neutrals, straps and boxes, each with its kind before it
};

}  // namespace doorcard
