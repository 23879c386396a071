// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "survey/survey.hpp"

namespace doorcard {

/// An id made of words: lower case, hyphens, at most 32 characters; "thing" where nothing is left of them.
std::string id_of_words(std::string_view words, std::string_view otherwise);

/// Such an id that no outlet and no load has; `skip` passes over so many that would be free, for several at once.
std::string new_thing_id(const Survey&, std::string_view words, std::size_t skip = 0);

}  // namespace doorcard
