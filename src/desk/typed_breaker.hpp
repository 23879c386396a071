// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "desk/face_places.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {

/// What typing on a row of the face does, and the row to go on with.
struct TypedBreaker {
    Edit edit;
    Position next;
};

/// A whole breaker as it is typed on its row: `20 Kitchen?`, `30/2 Dryer` (two poles, from here down the side),
/// `15t Hall|Bath` (a tandem), `20 gf`, `20 arc`, `s` spare, `-` empty: looked, nothing there. A number alone rates
/// what is there, words alone name it. Words of a new breaker are taken from the old directory until they are traced.
Outcome<TypedBreaker> typed_breaker(const Survey&, std::string_view panel, Position, std::string_view typed);

/// What one would type on a row to get what is there; empty where nothing is known of it.
std::string typed_text_of(const Survey&, std::string_view panel, Position);

}  // namespace doorcard
