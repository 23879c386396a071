// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/card_back.hpp"

namespace doorcard {

/// `doorcard card FILE -o OUT`: the panel directory.
struct CardOptions {
    std::string file;
    std::vector<std::string> rules;   ///< files of local rules laid over those of the survey
    std::string output;               ///< empty or "-": text to standard output; else the ending says what is painted
    std::vector<std::string> panels;  ///< ids; empty: all
    std::string side = "panel";       ///< panel (the front), rooms (the back), or both, front then back
    std::string paper = "letter";     ///< letter | a4 | half-letter | WxHmm, the door pocket as measured
    std::string since;                ///< refused: surveys are not compared yet
    bool json = false;
};

/// What `--paper` means: a sheet of paper, or the size of the card (then the paper follows from it).
struct PaperChoice {
    Paper paper;
    std::optional<Paper> cut;
};
/// Nullopt: no paper, or a card smaller than its smallest type allows, or larger than any door (1000 mm).
std::optional<PaperChoice> paper_choice(const std::string&);

/// Exit 0; 2 for an unknown panel, paper, ending or side; 3 where the file is wrong. Throws where the output cannot be
/// written.
int run_card(const CardOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
