// SPDX-License-Identifier: MIT
#pragma once
#include "assess/directory.hpp"
#include "base/words.hpp"

namespace doorcard {

// Printed facts of a panel that several sheets share.
std::string dated(const Survey&, const Words&);  ///< "2026-05-14" or 'undated'
/// "12 of 16 traced   2026-05-14   revision 2   by rk"
std::string traced_line(const Survey&, const PanelDirectory&, const Words&);
std::string rating_text(const Breaker&);  ///< "20", "12.5", a dash where not known
std::string system_text(const Network&, std::size_t panel, const Words&);
std::string fed_from_text(const Network&, std::size_t panel, const Words&);
std::string main_caption(const Panel&, const Words&);
std::string main_text(const Network&, std::size_t panel, const Words&);
/// "Shut off all: main, here; solar, north wall." Empty with one source.
std::string sources_text(const Network&, std::size_t panel, const Words&);
/// What takes the whole panel down, a step for each: "Main: top of this panel, cellar stair", "Solar: 22+24 and north
/// wall".
std::vector<std::string> all_off_steps(const Network&, std::size_t panel, const Words&);
/// True where the panel has a main of its own, or nobody looked.
bool has_own_main(const Panel&);
/// Breakers that are kept off: "18 and 20"; empty where none is.
std::string kept_off_text(const Network&, const PanelDirectory&, const Words&);
/// "HVAC: heating ..." of the abbreviations that the rows use.
std::string abbreviations_text(const Network&, const PanelDirectory&, const Words&);
/// "14 (sump pump)" for each handle to ask about.
std::vector<std::string> ask_before(const Network&, const PanelDirectory&);

/// "Main panel, cellar stair"
std::string title_and_place(const Panel&, const Words&);
/// The sources that come in through a breaker here or below.
std::vector<PanelSource> further_sources(const Network&, std::size_t panel);
/// "Solar at 22+24; off: north wall"
std::string further_text(const Network&, std::size_t panel, const std::vector<PanelSource>&, const Words&);
/// "SHOP at 17+19": the panels that its feeders feed.
std::string fed_text(const Network&, const PanelDirectory&, const Words&);
/// Named in the list, or the list is empty.
bool is_chosen(const std::vector<std::string>& panels, const std::string& panel);

}  // namespace doorcard
