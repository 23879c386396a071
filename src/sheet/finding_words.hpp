// SPDX-License-Identifier: MIT
#pragma once
#include "assess/assessment.hpp"
#include "base/words.hpp"

// How findings are said, in the terminal and on paper.
namespace doorcard {

/// 'DANGER' ...
std::string signal_word(Severity, const Words&);

/// Each standard once: "NEC 2023 210.4(B), 240.15(B)(1)".
std::string short_sources(const std::vector<Citation>&, const Words&);

/// Notices of one rule and one panel, in the order in which they first come.
struct NoticeGroup {
    std::size_t panel = 0;  ///< past the last panel: of none
    std::vector<const Finding*> findings;
};
std::vector<NoticeGroup> notice_groups(const std::vector<Finding>&);

/// The lines of a group: one that names up to `shown` things; where a thing has no name to list, each finding's own.
std::vector<std::string> notice_lines(const Network&, const NoticeGroup&, std::size_t shown, const Words&);

}  // namespace doorcard
