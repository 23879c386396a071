// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

/// What the appliances of each leg would get if this neutral opened at its panel with all nameplate loads on. Each
/// leg's loads stand for the admittance that draws their fundamental at nominal volts; the neutral's end floats to
/// sum(V Y) / sum(Y), and a leg gets |V - that|. Nullopt for a leg without known loads, and for all where some load's
/// leg is not known. Source: circuit theory.
std::map<char, std::optional<Volts>> open_volts(const Reckoned&, const SharedNeutral&, const LegSums&);

/// 'leg A 160 V and leg B 80 V', where a leg would stand well above nominal; empty else.
Message open_volts_text(const Reckoned&, const SharedNeutral&, const NeutralFigures&);

}  // namespace doorcard
