// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>

#include "file/read_list.hpp"
#include "reading.hpp"

namespace doorcard {

/// A breaker in one line: "MAIN:2+4 50 A arc Range", with what differs from a plain one.
inline std::string line_of(const Breaker& breaker) {
    std::string line = breaker.id;
    if (breaker.amps) line += " " + std::to_string(static_cast<int>(breaker.amps->value)) + " A";
    for (const Guard guard : breaker.guards.value_or(std::vector<Guard>{}))
        line += guard == Guard::arc ? " arc" : guard == Guard::ground ? " ground" : " equipment-ground";
    if (breaker.device) line += " " + *breaker.device;
    if (breaker.state == BreakerState::spare) line += " spare";
    if (breaker.state == BreakerState::off) line += " off";
    if (breaker.old_label) line += " '" + *breaker.old_label + "'";
    if (breaker.note) line += " (" + *breaker.note + ")";
    return line;
}

/// A list as it was understood, and as what was written of it reads again.
struct Listed {
    ListRead read;
    Lines breakers;
    Lines refused;

    const Survey& survey() const { return read.survey; }
    std::string counts() const {
        return std::to_string(read.read) + " read, " + std::to_string(refused.size()) + " not";
    }
};

inline Listed listed(std::string_view text, const ListOptions& options = {}) {
    Listed result{read_list(text, options), {}, {}};
    for (const Breaker& breaker : result.read.survey.breakers) result.breakers.push_back(line_of(breaker));
    for (const Complaint& complaint : result.read.refused) result.refused.push_back(complaint_line("l", complaint));
    CHECK(survey_of(listed_survey_text(result.read.survey)) == result.read.survey);
    return result;
}

inline Lines breakers_of(std::string_view text, const ListOptions& options = {}) {
    const Listed result = listed(text, options);
    CHECK(result.refused == Lines{});
    return result.breakers;
}

inline Lines refused_of(std::string_view text, const ListOptions& options = {}) {
    return listed(text, options).refused;
}

}  // namespace doorcard
