// SPDX-License-Identifier: MIT
#pragma once
#include "assess/directory.hpp"
#include "sheet/correction_list.hpp"
#include "sheet/drawing.hpp"
#include "sheet/finding_words.hpp"

namespace doorcard {

/// The findings of one panel; of none where `panel` lies past the last.
struct CorrectionPart {
    std::size_t panel = 0;
    std::vector<const Finding*> items;  ///< dangers, warnings, cautions
    std::vector<NoticeGroup> notices;
    long accepted = 0;  ///< findings that the survey takes note of
};

/// What every part of the list is drawn from.
struct CorrectionContent {
    const Network& network;
    const Assessment& assessment;
    const CorrectionChoice& choice;
    const Words& words;
    const CorrectionPart& part;

    const Survey& survey() const { return network.survey(); }
    bool of_panel() const { return part.panel < survey().panels.size(); }
    const Panel& panel() const { return survey().panels[part.panel]; }
};

/// Columns, mm from the paper's left edge: tick, signal word, what and remedy, figure, source, date, initials.
struct CorrectionColumns {
    double left = 0, right = 0;
    double signal = 0, what = 0, figure = 0, source = 0, date = 0, initials = 0;
    double width() const { return right - left; }
};
CorrectionColumns correction_columns(const Paper&);

/// "26.3 A", "limit 20 A"; empty where the finding has no figure.
std::string figure_text(const Finding&, const Words&);
std::string limit_text(const Finding&, const Words&);
/// A figure keeps its unit: the blank between them does not break.
std::string with_units_kept(const std::string&);
/// 'required', 'advised', 'common practice', 'gap'; for new or existing work.
std::string basis_text(const Finding&, const Words&);
/// "1 danger, 2 warnings"
std::string counts_text(const CorrectionPart&, const Words&);
std::string part_name(const CorrectionContent&);
std::string part_title(const CorrectionContent&);
/// 'Nothing found ... not a proof'; 'Off is not proof of dead ...'.
std::string nothing_found(const Words&);

/// One finding with its boxes and its number in the list from `top`; returns the bottom.
double draw_item(Drawing&, const CorrectionContent&, const CorrectionColumns&, const Finding&, std::size_t number,
                 double top);
/// A line of a group of notices.
double draw_notice(Drawing&, const CorrectionContent&, const CorrectionColumns&, const NoticeGroup&, double top);

/// The list of one panel as plain lines.
std::vector<std::string> correction_lines(const CorrectionContent&);

}  // namespace doorcard
