// SPDX-License-Identifier: MIT
#pragma once
#include <tl/expected.hpp>

#include "file/list_spaces.hpp"
#include "survey/common.hpp"

namespace doorcard {

/// What a cell for amperes says: `20`, `20A`, `20/1`, `30/2P`, `2P30`; nothing where it is blank.
struct AmpsCell {
    std::optional<double> amps;
    std::optional<int> poles;
};
tl::expected<AmpsCell, CellFault> amps_in(std::string_view cell);

/// `2`, `2P`, `2-pole`.
tl::expected<std::optional<int>, CellFault> poles_in(std::string_view cell);

/// `1200`, `1,200`, `1.2`; nullopt where it is no figure.
std::optional<double> figure_in(std::string_view cell);

/// Volt-amperes or watts of a cell: its own unit (`4.5 kW`) holds, else the `scale` of its column. `1.200` without k is
/// refused: read as 1.2 it would hide a load.
tl::expected<double, CellFault> load_in(std::string_view cell, double scale);

/// GFCI, AFCI, dual function and the like, as guards; what is left of the text without them. None where the text
/// puts it at an outlet, or says that it is wanted, missing or doubtful.
struct GuardWords {
    std::vector<Guard> guards;
    std::string rest;
};
GuardWords guards_in(std::string_view text);

/// `12`, `#12`, `12 AWG Cu THHN`, `12/2 NM-B`, `4/0 AL`; nullopt where it is not understood whole.
std::optional<Wire> wire_in(std::string_view cell);

/// 'A', 'B', 'L1' as leg letters; empty where it says none.
std::string legs_in(std::string_view cell);

/// A ditto: '"', 'ditto', 'do.', 'idem', '|', 'cont.' ...
bool is_ditto(std::string_view cell);
/// Blank, or only dashes and dots.
bool is_nothing(std::string_view cell);
/// 'Spare', 'reserva'.
bool says_spare(std::string_view text);
/// 'Space', 'blank', 'empty', 'espacio': looked, nothing there.
bool says_space(std::string_view text);
/// A line of sums at the foot: 'Total', 'Connected load', 'Demand' ...
bool says_total(std::string_view text);

}  // namespace doorcard
