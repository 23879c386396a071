// SPDX-License-Identifier: MIT
#pragma once
#include "file/list_breakers.hpp"
#include "file/read_list.hpp"

namespace doorcard {

/// The breakers of a list as a survey of claims.
Survey survey_of_list(const ListBreakers&, const ListOptions&);

/// The panels of a list with what is known beside it: --system, --spaces and --main where there is one panel. MAIN
/// alone, named by nobody, hangs on a utility as in a new survey.
Survey survey_of_panels(std::vector<Panel>, const ListOptions&);

/// The name of a circuit that a list puts on a breaker: 'MAIN-2+4', as long as it is not too long for an id.
std::string circuit_name(const Breaker&, std::size_t position);
/// The name, where it can be an id, else the other one with a number.
std::string name_or(const std::string& name, std::string_view other, std::size_t position);

}  // namespace doorcard
