// SPDX-License-Identifier: MIT
#pragma once
#include <array>
#include <string>

#include "assess/reassess.hpp"
#include "base/words.hpp"
#include "sheet/card.hpp"

namespace doorcard {

/// The papers of a panel.
enum class PaperKind { front, back, schedule, corrections };
inline constexpr std::array paper_kinds = {PaperKind::front, PaperKind::back, PaperKind::schedule,
                                           PaperKind::corrections};
enum class PaperSize { letter, a4, half_letter };

Message name_of(PaperKind);

struct PaperChoice {
    PaperKind kind = PaperKind::front;
    std::string panel;
    PaperSize size = PaperSize::letter;
};

/// One paper of one panel, laid out as the command line would; no pages where the survey has no such panel.
Sheet paper_sheet(const PaperChoice&, const Assessed&, const RuleBook&, const Words&);

}  // namespace doorcard
