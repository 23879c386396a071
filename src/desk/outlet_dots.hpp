// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "survey/survey.hpp"

namespace doorcard {

/// What stands on the tape dot of an outlet: the letters of its room and a number, "K3". Ids of that form are dots.
struct OutletDot {
    std::string letters;
    int number = 0;
};
std::optional<OutletDot> dot_of(std::string_view id);

/// A room that outlets are in: by its entry, or by the plain text that they name.
struct KnownRoom {
    std::string named;  ///< what an outlet in it writes: the room's id, or its text
    std::string title;
};

/// The room of that name, whatever its case and accents; nullopt where there is none.
std::optional<KnownRoom> room_named(const Survey&, std::string_view name);

/// The letters of a room's dots: those that its outlets have, else new ones out of its name that no other room has,
/// the fewer the better: Kitchen K, Knee wall KN. Nullopt where none are left.
std::optional<std::string> letters_of_room(const Survey&, const KnownRoom&);

/// The number after the highest dot of these letters.
int next_dot(const Survey&, std::string_view letters);

/// Outlets with dots of these letters, whatever their case, by number.
std::vector<std::size_t> outlets_with_dots(const Survey&, std::string_view letters);

}  // namespace doorcard
