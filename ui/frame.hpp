// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>

#include "base/words.hpp"

class wxFrame;

namespace doorcard {

/// The one window: shows the door card of a survey, read-only. With a file it opens with that file's card, without one
/// it says how to open one. The toolkit owns it.
wxFrame* new_frame(const Words&, const std::optional<std::string>& file);

}  // namespace doorcard
