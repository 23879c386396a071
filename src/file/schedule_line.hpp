// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "file/list_spaces.hpp"
#include "file/list_table.hpp"
#include "file/read_list.hpp"

namespace doorcard {

/// One line of `schedule -o X.csv`: a pole of a breaker, or a space without one. `breaker` and `circuit` hold what the
/// line says of them, without ids, spaces and references.
struct ScheduleLine {
    enum class Kind { breaker, space, not_seen };

    Place place;
    Kind kind = Kind::breaker;
    std::string panel;
    ListSpace space;
    std::string leg;
    int pole = 1;
    int poles = 1;
    Breaker breaker;
    Circuit circuit;
    bool has_circuit = false;
    std::string tied_with;  ///< ids of breakers, blanks between them
    std::optional<Duty> duty;
    std::optional<double> va, continuous_va, measured_a;
};

/// Whether nothing stands in a row.
bool is_blank_row(const ListRow&);

/// The columns of such a file, by the words of its first line.
class ScheduleColumns {
public:
    explicit ScheduleColumns(const ListRow& header);

    tl::expected<ScheduleLine, Complaint> line(const ListRow&, const ListOptions&) const;

private:
    class Cells;
    std::map<std::string, std::size_t> at_;
};

}  // namespace doorcard
