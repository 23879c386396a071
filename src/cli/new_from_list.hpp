// SPDX-License-Identifier: MIT
#pragma once
#include "cli/new_command.hpp"

namespace doorcard {

/// `doorcard new FILE --from LIST`, once the other options are found right. Complaints go to `err`, all of them; the
/// last line says how many rows were read and how many were not understood.
int run_new_from_list(const NewOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
