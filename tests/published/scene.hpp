// SPDX-License-Identifier: MIT
#pragma once
#include <deque>
#include <string>

#include "assess/assessment.hpp"
#include "survey/survey.hpp"

/// A small survey built in code: one panel, and breakers put into its next free spaces by the legs they are to be on.
/// References that the functions give stay good.
class Scene {
public:
    explicit Scene(doorcard::System system);

    doorcard::Panel panel;
    std::deque<doorcard::Breaker> breakers;
    std::deque<doorcard::Circuit> circuits;
    std::deque<doorcard::Outlet> outlets;
    std::deque<doorcard::Load> loads;
    std::deque<doorcard::Reading> readings;
    bool occupancy = false;  ///< the panel is of an `[[occupancy]]`, not of a dwelling

    /// A breaker on the left side of the next rows whose legs are these ("A", "AB", "CA", "ABC").
    doorcard::Breaker& breaker(const std::string& legs, std::optional<double> amps);
    /// A circuit of its own breaker; the id is "c1", "c2" ...
    doorcard::Circuit& circuit(const std::string& legs, std::optional<double> amps);
    /// A load set straight on a circuit, known by its amperes.
    doorcard::Load& load(const doorcard::Circuit&, double amps);
    doorcard::Outlet& outlet(const doorcard::Circuit&, doorcard::OutletKind);
    doorcard::Load& load_at(const doorcard::Outlet&, double amps);
    /// A reading; readings of one scene are taken together.
    doorcard::Reading& reading(doorcard::ThingKind, const std::string& id, const std::string& legs = "");

    doorcard::Survey survey() const;

private:
    doorcard::Load& new_load(double amps);
    std::string down_;
    std::size_t next_row_ = 0;
};

/// The scene through network and assess, by the built-in NEC-2023.
doorcard::Assessment assessed(const Scene&);
/// The row of figures with this id; fails the test where there is none.
const doorcard::LoadFigures& circuit_row(const doorcard::Assessment&, const std::string& id);
const doorcard::NeutralFigures& neutral_row(const doorcard::Assessment&, const std::string& id);
/// The first finding of a rule, or null.
const doorcard::Finding* finding_of(const doorcard::Assessment&, const std::string& rule);

const doorcard::RuleBook& nec_2023();

/// The number in an optional quantity; not a number where there is none.
template <class Q>
double known(const std::optional<Q>& quantity) {
    return quantity ? quantity->value : std::numeric_limits<double>::quiet_NaN();
}
inline double known(const std::optional<double>& number) {
    return number.value_or(std::numeric_limits<double>::quiet_NaN());
}
