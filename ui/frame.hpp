// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>

#include "base/words.hpp"
#include "file/settings.hpp"

class wxFrame;

namespace doorcard {

/// Where the program keeps what is not a survey.
struct Folders {
    std::string settings_file;  ///< under the user's configuration
    std::string state;          ///< journals of surveys without a file
    std::string examples;       ///< as installed, or of the source tree; empty: none
};

/// The window: one survey, its feeds, the panel's face, the pages of the call, the findings. With a file it opens on
/// it, without on the start.
wxFrame* new_frame(const Words&, const Settings&, const Folders&, const std::optional<std::string>& file);

}  // namespace doorcard
