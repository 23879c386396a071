// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <iosfwd>

#include "base/words.hpp"

namespace CLI {
class App;
}

namespace doorcard {

/// What a parsed command line asks for: run it with the streams and the words of the language; it returns the exit
/// status.
using Run = std::function<int(std::ostream& out, std::ostream& err, const Words&)>;

/// Adds the commands and their options to the application; `run` is set to the one that is given.
void add_commands(CLI::App&, Run& run);

}  // namespace doorcard
