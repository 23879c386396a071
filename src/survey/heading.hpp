// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"

namespace doorcard {

/// `[survey]`: who surveyed what, when, and by which rules.
struct Heading {
    std::optional<std::string> title;
    std::optional<Moment> date;
    std::optional<std::string> revision;
    std::optional<std::string> surveyor;
    std::optional<std::string> worker;  ///< "occupant" (=) or "qualified"
    std::optional<std::string> complaint;
    std::optional<int> built;  ///< year
    std::optional<std::string> address, contact, permit, licence, notes;
    std::optional<std::string> rules;        ///< = "NEC-2023"
    std::optional<std::string> local_rules;  ///< relative to the survey file
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Heading&) const = default;
};

/// `[[dwelling]]`: one kind of dwelling unit.
struct Dwelling {
    std::string id = "dwelling";
    std::optional<Area> floor_area;
    std::optional<Area> garage;
    std::optional<int> small_appliance_circuits;
    std::optional<int> laundry_circuits;
    std::optional<Ids> panels;  ///< absent: the whole premises
    std::optional<std::vector<int>> stands_for;
    std::optional<int> units;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Dwelling&) const = default;
};

/// `[[occupancy]]`: nondwelling space, one per use.
struct Occupancy {
    std::optional<std::string> kind;
    std::optional<Area> floor_area;
    std::optional<std::string> panel;  ///< absent: the whole premises
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Occupancy&) const = default;
};

/// `[grounding]`: as seen.
struct Grounding {
    std::optional<Ids> electrodes;
    std::optional<std::string> gec_size;
    std::optional<Metal> gec_metal;
    std::optional<bool> bonded;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Grounding&) const = default;
};

}  // namespace doorcard
