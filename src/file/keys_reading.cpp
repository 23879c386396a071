// SPDX-License-Identifier: MIT
#include <vector>

#include "file/keys.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view noises[] = {"quiet", "some", "strong"};
constexpr std::string_view apart_or_touching[] = {"apart", "touching"};
constexpr std::string_view stamps[] = {"start", "end"};
constexpr std::string_view units[] = {"A", "mA", "V", "W", "kW", "VA", "kVA", "Wh", "kWh"};
constexpr std::string_view reporters[] = {"utility", "recorder"};

constexpr Field reading_list[] = {
    clock<&Reading::at>("at", "when it was taken"),
    text<&Reading::together>("together", "readings of one name, or of one and the same at, were taken at one moment"),
    text<&Reading::of>("of", "what it is of").names(to_address).required(),
    number<&Reading::amps>("amps", "A", "RMS current"),
    number<&Reading::amps_min>("amps_min", "A", "lowest RMS current over the hours watched"),
    number<&Reading::amps_max>("amps_max", "A", "highest RMS current over the hours watched"),
    number<&Reading::amps_crest>("amps_crest", "A", "highest instantaneous current"),
    number<&Reading::inrush_a>("inrush_a", "A", "inrush current"),
    number<&Reading::volts>("volts", "V", "to neutral, or by the address line to line"),
    number<&Reading::volts_ground>("volts_ground", "V", "to ground"),
    number<&Reading::volts_neutral_ground>("volts_neutral_ground", "V", "neutral to ground"),
    number<&Reading::volts_unloaded>("volts_unloaded", "V", "before a test load was put on"),
    number<&Reading::test_load_a>("test_load_a", "A", "current of that test load"),
    plain<&Reading::volts_to>(Form::volts_by_address, "volts_to", "hot to hot; near 0 is the same leg")
        .names(to_address),
    number<&Reading::watts>("watts", "W", "real power"),
    number<&Reading::power_factor>("power_factor", "", "lagging; above 0, at most 1").above_zero().at_most(1),
    flag<&Reading::leading>("leading", "the current leads; = false"),
    number<&Reading::third_harmonic>("third_harmonic", "", "third harmonic over the fundamental, RMS"),
    number<&Reading::leakage_ma>("leakage_ma", "mA", "hot minus neutral"),
    text<&Reading::noise>("noise", "high-frequency noise").one_of(noises).either("noise"),
    number<&Reading::noise_db>("noise_db", "dB", "high-frequency noise").either("noise"),
    text<&Reading::neutral_to_ground>("neutral_to_ground", "with the neutral lifted")
        .one_of(apart_or_touching)
        .either("neutral to ground"),
    number<&Reading::neutral_to_ground_ohm>("neutral_to_ground_ohm", "ohm", "with the neutral lifted")
        .either("neutral to ground"),
    number<&Reading::temp_c>("temp_c", "degrees C", "temperature measured"),
    number<&Reading::ambient_c>("ambient_c", "degrees C", "temperature of the surroundings"),
    flag<&Reading::low_impedance>("low_impedance", "volts taken under a load or with a low-impedance input"),
    number<&Reading::hours>("hours", "hours", "how long it was watched"),
    text<&Reading::instrument>("instrument", "what it was taken with"),
    text<&Reading::by>("by", "who took it"),
    text<&Reading::note>("note", "a remark"),
    plain<&Reading::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field column_list[] = {
    text<&RecordingColumn::of>("of", "what the column is of").names(to_address).required(),
    text<&RecordingColumn::unit>("unit", "its unit; absent: as detected").one_of(units),
    number<&RecordingColumn::scale>("scale", "", "what its figures are multiplied by; = 1"),
};

constexpr Field recording_list[] = {
    text<&Recording::file>("file", "where it lies, relative to the survey file").required(),
    plain<&Recording::columns>(Form::columns, "columns", "what each column is of: an address, or a table (below)")
        .names(to_address),
    text<&Recording::labels>("labels", "whether a stamp opens or closes its interval; = \"start\"").one_of(stamps),
    text<&Recording::time_zone>("time_zone", "overrides what is detected"),
    text<&Recording::date_order>("date_order", "overrides what is detected"),
    text<&Recording::decimal>("decimal", "overrides what is detected"),
    text<&Recording::delimiter>("delimiter", "overrides what is detected"),
    text<&Recording::note>("note", "a remark"),
    plain<&Recording::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field waveform_list[] = {
    text<&Waveform::file>("file", "where it lies, relative to the survey file").required(),
    text<&Waveform::of>("of", "what it is of").names(to_address),
    clock<&Waveform::at>("at", "when it was captured"),
    text<&Waveform::note>("note", "a remark"),
    plain<&Waveform::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field demand_list[] = {
    text<&Demand::of>("of", "what it is of").names(to_address).required(),
    date<&Demand::from>("from", "first day of the time it covers"),
    date<&Demand::to>("to", "last day of the time it covers"),
    number<&Demand::kw>("kw", "kW", "largest demand").either("demand"),
    number<&Demand::kva>("kva", "kVA", "largest demand").either("demand"),
    number<&Demand::amps>("amps", "A", "largest demand").either("demand"),
    whole<&Demand::interval_min>("interval_min", "minutes", "time it is averaged over"),
    text<&Demand::by>("by", "who recorded it").one_of(reporters),
    flag<&Demand::occupied>("occupied", "the premises were occupied in that time"),
    flag<&Demand::seasonal_included>("seasonal_included",
                                     "the larger of heating or cooling ran in that time; absent: not known"),
    text<&Demand::note>("note", "a remark"),
    plain<&Demand::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field limit_list[] = {
    text<&Limit::of>("of", "what is watched").names(to_address).required(),
    text<&Limit::key>("key", "a numeric key of readings or of a recording's figures, such as \"amps\"").marked(),
    number<&Limit::above>("above", "", "passed when above it, in the key's own unit").either("level"),
    number<&Limit::below>("below", "", "passed when below it, in the key's own unit").either("level"),
    text<&Limit::note>("note", "a remark"),
    plain<&Limit::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field accepted_list[] = {
    text<&Accepted::rule>("rule", "name of the finding"),
    text<&Accepted::of>("of", "what it is of").names(to_address),
    text<&Accepted::reason>("reason", "why it is accepted"),
    date<&Accepted::on>("on", "when"),
    text<&Accepted::by>("by", "who"),
    text<&Accepted::note>("note", "a remark"),
    plain<&Accepted::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field photo_list[] = {
    text<&Photo::file>("file", "where it lies, relative to the survey file").required(),
    clock<&Photo::at>("at", "when it was taken"),
    text<&Photo::note>("note", "a remark"),
    text<&Photo::of>("of", "what it shows; not in the photos of a thing, which show that thing").names(to_address),
};

// Contract 7, `recording`.
constexpr std::string_view figures_of_recordings[] = {
    "mean_a",        "max_a",    "p95_a",    "p99_a",     "demand15_a", "sustained3h_a",
    "mean3h_a",      "mean_w",   "max_w",    "p95_w",     "p99_w",      "demand15_w",
    "sustained3h_w", "mean3h_w", "total_wh", "missing_s", "interval_s", "count"};

}  // namespace

FieldList reading_keys() { return reading_list; }
FieldList recording_keys() { return recording_list; }
FieldList recording_column_keys() { return column_list; }
FieldList waveform_keys() { return waveform_list; }
FieldList demand_keys() { return demand_list; }
FieldList limit_keys() { return limit_list; }
FieldList accepted_keys() { return accepted_list; }
FieldList photo_keys() { return photo_list; }

WordList measured_keys() {
    static const auto words = [] {
        std::vector<std::string_view> all;
        for (const Field& field : reading_list)
            if (field.form == Form::number) all.push_back(field.name);
        all.insert(all.end(), std::begin(figures_of_recordings), std::end(figures_of_recordings));
        return all;
    }();
    return words;
}

}  // namespace doorcard
