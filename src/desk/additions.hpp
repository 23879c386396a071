// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "survey/edits/edit.hpp"

// Things that a survey gets more of, with nothing known of them but where they belong.
namespace doorcard {

/// A panel fed by a breaker; by nobody knows what where the breaker's id is empty. `id` comes back as the new panel's.
struct Added {
    Edit edit;
    std::string address;
};
Added panel_added(const Survey&, const std::string& fed_by);
/// A second source; a utility where there is none yet.
Added source_added(const Survey&);
Added dwelling_added(const Survey&);
/// A picture of a thing, by its file.
Added photo_added(const Survey&, const std::string& file, const std::string& of);

}  // namespace doorcard
