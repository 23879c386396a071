// SPDX-License-Identifier: MIT
#pragma once
#include "file/list_table.hpp"
#include "file/read_list.hpp"

namespace doorcard {

/// Whether a row is the first line of `schedule -o X.csv`.
bool is_schedule_header(const ListRow&);

/// The rows of such a file, a line per pole, below its header: what the survey file has keys for lands in them; what
/// only a reckoning says (measured, percent, completeness) stays behind.
ListRead read_schedule_rows(const std::vector<ListRow>&, const ListOptions&);

}  // namespace doorcard
