// SPDX-License-Identifier: MIT
#pragma once
#include <tl/expected.hpp>

#include "base/place.hpp"

namespace doorcard {

/// A value, or every complaint about the text it was to be read from; never half a value.
template <class T>
using Outcome = tl::expected<T, std::vector<Complaint>>;

}  // namespace doorcard
