// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "survey/address.hpp"
#include "survey/common.hpp"

namespace doorcard {

struct RecordingColumn {
    Address of;
    std::optional<std::string> unit;  ///< A mA V W kW VA kVA Wh kWh
    std::optional<double> scale;
    bool operator==(const RecordingColumn&) const = default;
};

/// `[[recording]]`: an interval recording that stays beside the survey. Kept; not read yet.
struct Recording {
    std::string file;
    std::map<std::string, RecordingColumn> columns;
    std::optional<std::string> labels;  ///< start (=) | end
    std::optional<std::string> time_zone, date_order, decimal, delimiter;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Recording&) const = default;
};

/// `[[waveform]]`: a captured waveform beside the survey. Kept; not read yet.
struct Waveform {
    std::string file;
    std::optional<Address> of;
    std::optional<Moment> at;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Waveform&) const = default;
};

/// `[[demand]]`: demand known from bills or a recorder's own report.
struct Demand {
    Address of;
    std::optional<Moment> from, to;
    std::optional<double> kw, kva;
    std::optional<Amperes> amps;
    std::optional<int> interval_min;
    std::optional<std::string> by;  ///< utility | recorder
    std::optional<bool> occupied, seasonal_included;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Demand&) const = default;
};

/// `[[limit]]`: a watch level of the surveyor's own.
struct Limit {
    Address of;
    std::optional<std::string> key;
    std::optional<double> above, below;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Limit&) const = default;
};

/// `[[accepted]]`: a finding taken note of.
struct Accepted {
    std::optional<std::string> rule;
    std::optional<std::string> of;
    std::optional<std::string> reason;
    std::optional<Moment> on;
    std::optional<std::string> by;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Accepted&) const = default;
};

}  // namespace doorcard
