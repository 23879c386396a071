// SPDX-License-Identifier: MIT
#pragma once
#include <nlohmann/json.hpp>
#include <optional>

#include "assess/directory.hpp"

// What the results of several commands write alike.
namespace doorcard {

using Json = nlohmann::ordered_json;

/// A number, unrounded; null where it is not known.
template <class T>
Json number(const std::optional<T>& value) {
    if (!value) return nullptr;
    if constexpr (requires { value->value; })
        return value->value;
    else
        return *value;
}

/// Numbers of the spaces, ascending.
Json spaces_json(const std::vector<Position>&);
/// One letter per space; empty for full spaces.
Json halves_json(const std::vector<Position>&);
/// Null: not looked at; []: none.
Json guards_json(const Breaker&);

}  // namespace doorcard
