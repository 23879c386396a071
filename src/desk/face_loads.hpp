// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>

#include "desk/face_facts.hpp"

namespace doorcard {

/// The loads of the rows of a part's panel, from the figures of the whole survey.
class FaceLoads {
public:
    FaceLoads(const Assessed&, const Network& part);
    RowLoad of(const DirectoryRow&) const;

private:
    const LoadFigures* circuit_figures(std::size_t circuit_of_part) const;
    const LoadFigures* feeder_figures(std::size_t panel_of_part) const;
    std::optional<Amperes> calculated(const DirectoryRow&) const;
    std::optional<Amperes> highest_leg(const DirectoryRow&) const;
    std::optional<Amperes> measured(const DirectoryRow&) const;
    bool all_known(std::size_t circuit) const;

    const Assessed& all_;
    const Network& part_;
    std::map<std::string, std::optional<Amperes>> read_at_;  ///< the highest reading of a breaker, by its id
};

}  // namespace doorcard
