// SPDX-License-Identifier: MIT
#pragma once
#include "assess/assessment.hpp"
#include "base/words.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

/// What is to be printed of the findings.
struct CorrectionChoice {
    Paper paper;
    std::string rules;     ///< the edition they were judged by: "NEC-2023"
    std::string left_out;  ///< what was asked for alone, in words; empty: all findings
};

/// The findings by panel for the inspector and whoever mends them: place, figure, source, remedy, a box to tick, date
/// and initials. Gaps and other notices stand in one line per rule and panel at each panel's end, with a box and no
/// signature: somebody has to look. A sheet without findings says that this proves nothing.
Sheet correction_list(const Network&, const Assessment&, const CorrectionChoice&, const Words&);

}  // namespace doorcard
