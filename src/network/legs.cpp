// SPDX-License-Identifier: MIT
#include "network/legs.hpp"

#include <algorithm>
#include <numbers>

namespace doorcard {

Phasor unit_phasor(double degrees) { return std::polar(1.0, degrees * std::numbers::pi / 180); }

std::optional<Volts> PanelSupply::volts_to_neutral(char leg) const {
    if (!system || !has(leg) || facts(*system).to_neutral.value == 0) return std::nullopt;
    if (leg == high_leg) return high_leg_volts;
    return facts(*system).to_neutral;
}

std::optional<Volts> PanelSupply::volts_line_to_line() const {
    if (!system || facts(*system).line_to_line.value == 0) return std::nullopt;
    return facts(*system).line_to_line;
}

std::string PanelSupply::neutral_legs() const {
    if (!system || facts(*system).to_neutral.value == 0) return "";
    std::string found = legs;
    std::erase(found, high_leg);
    return found;
}

Phasor PanelSupply::line_direction(char a, char b) const {
    const Phasor line = to_neutral.at(a) - to_neutral.at(b);
    return line / std::abs(line);
}

Phasor PanelSupply::middle_direction(char leg) const {
    Phasor middle = 0;
    for (const auto& [letter, volts] : to_neutral) middle += volts;
    const Phasor from_middle = to_neutral.at(leg) - middle / static_cast<double>(to_neutral.size());
    return from_middle / std::abs(from_middle);
}

SpaceGeometry::SpaceGeometry(const Panel& panel, int highest_used)
    : numbering_(panel.numbering.value_or(Numbering::odd_left)),
      turned_over_(panel.turned_over.value_or(false)),
      spaces_(panel.spaces ? std::max(*panel.spaces, highest_used) : highest_used + 2),
      rows_(single_column() ? spaces_ : (spaces_ + 1) / 2) {}

int SpaceGeometry::row_by_number(int space) const {
    if (single_column()) return space;
    if (numbering_ == Numbering::down_left) return space > rows_ ? space - rows_ : space;
    return (space + 1) / 2;
}

int SpaceGeometry::row(int space) const {
    return turned_over_ ? rows_ + 1 - row_by_number(space) : row_by_number(space);
}

bool SpaceGeometry::on_left(int space) const {
    switch (numbering_) {
        case Numbering::odd_left:
            return space % 2 == 1;
        case Numbering::odd_right:
            return space % 2 == 0;
        case Numbering::down_left:
            return space <= rows_;
        case Numbering::single_column:
            return true;
    }
    return true;
}

char SpaceGeometry::leg(const PanelSupply& supply, int space, char half, bool alternate_halves) const {
    if (supply.down.empty()) return '?';
    int by_number = row_by_number(space);
    if (half == 'b' && alternate_halves) ++by_number;  // reckoning: the next row by number
    const int row = supply.down_given && turned_over_ ? rows_ + 1 - by_number : by_number;
    const int count = static_cast<int>(supply.down.size());
    return supply.down[static_cast<std::size_t>(((row - 1) % count + count) % count)];
}

}  // namespace doorcard
