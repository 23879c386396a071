// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <chrono>
#include <map>
#include <unordered_map>

#include "file/checks.hpp"

namespace doorcard {
namespace {

using Nanoseconds = std::int64_t;

/// On the clock on the wall, or, where an offset is given, on that of the world. Minutes and nanoseconds apart: a year
/// of 9999 in nanoseconds is too large.
struct Instant {
    std::int64_t minutes;
    Nanoseconds rest;
    auto operator<=>(const Instant&) const = default;
};

Instant instant_of(const Moment& moment) {
    constexpr Nanoseconds minute = 60'000'000'000;
    const std::chrono::year_month_day day{std::chrono::year(moment.year),
                                          std::chrono::month(static_cast<unsigned>(moment.month)),
                                          std::chrono::day(static_cast<unsigned>(moment.day))};
    const auto days = std::chrono::sys_days(day).time_since_epoch().count();
    const Nanoseconds of_day = moment.nanosecond_of_day.value_or(0);
    return {std::int64_t{days} * 24 * 60 + of_day / minute - moment.offset_minutes.value_or(0), of_day % minute};
}

/// The latest moment so far, of those with and those without offset: only these can be set against each other.
class Sequence {
public:
    /// The line of an earlier entry with a later time; 0 where there is none.
    std::uint32_t earlier_entry_after(const Moment& moment, std::uint32_t line) {
        Last& last = moment.offset_minutes ? with_offset_ : without_;
        const Instant now = instant_of(moment);
        if (last.line != 0 && now < last.instant) return last.line;
        last = {now, line};
        return 0;
    }

private:
    struct Last {
        Instant instant{};
        std::uint32_t line = 0;
    };
    Last with_offset_, without_;
};

void check_next(Sequence& sequence, const Moment& at, const Mark& mark, std::string_view kind, Complaints& complaints) {
    const std::uint32_t line = sequence.earlier_entry_after(at, mark.key.line);
    if (line == 0) return;
    complaints.add(mark.value, fmt::format("this {} is dated before the {} above it, at line {}", kind, kind, line),
                   "the order of the file is the order of time: move the entry, or mend the time");
}

}  // namespace

void check_order(const Checked& checked) {
    Sequence rounds;
    for (const Mark& mark : checked.marks.of("round", "at"))
        check_next(rounds, *checked.survey.rounds[mark.row].at, mark, "round", checked.complaints);
    std::unordered_map<std::string_view, Sequence> trials;
    for (const Mark& mark : checked.marks.of("trial", "at")) {
        const Trial& trial = checked.survey.trials[mark.row];
        check_next(trials[trial.circuit], *trial.at, mark, "trial", checked.complaints);
    }
}

}  // namespace doorcard
