// SPDX-License-Identifier: MIT
#include "survey/edits/entry_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {
namespace {

/// `change` makes another table of one that has a row at that place.
template <class T, class Change>
Edit change_rows(Message name, TableOf<T> table, std::size_t at, Change change) {
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                if (at >= (survey.*table).size()) return refused("there is no such entry", "name one that is there");
                const Survey before = survey;
                survey.*table = change(survey.*table);
                return kept_laws(before, std::move(survey));
            }};
}

template <class T>
Edit change_row(Message name, TableOf<T> table, std::size_t at, const T& entry) {
    return change_rows<T>(std::move(name), table, at, [=](const Table<T>& rows) { return rows.with_row(at, entry); });
}

template <class T>
Edit remove_row(Message name, TableOf<T> table, std::size_t at) {
    return change_rows<T>(std::move(name), table, at, [=](const Table<T>& rows) { return rows.without_row(at); });
}

}  // namespace

Edit add_reading(const Reading& entry) {
    return add_thing<Reading>({tr("add a reading"), {}}, &Survey::readings, entry);
}
Edit change_reading(std::size_t at, const Reading& entry) {
    return change_row<Reading>({tr("change a reading"), {}}, &Survey::readings, at, entry);
}
Edit remove_reading(std::size_t at) {
    return remove_row<Reading>({tr("take out a reading"), {}}, &Survey::readings, at);
}

Edit add_recording(const Recording& entry) {
    return add_thing<Recording>({tr("add a recording"), {}}, &Survey::recordings, entry);
}
Edit change_recording(std::size_t at, const Recording& entry) {
    return change_row<Recording>({tr("change a recording"), {}}, &Survey::recordings, at, entry);
}
Edit remove_recording(std::size_t at) {
    return remove_row<Recording>({tr("take out a recording"), {}}, &Survey::recordings, at);
}

Edit add_round(const Round& entry) { return add_thing<Round>({tr("add a round"), {}}, &Survey::rounds, entry); }
Edit change_round(std::size_t at, const Round& entry) {
    return change_row<Round>({tr("change a round"), {}}, &Survey::rounds, at, entry);
}
Edit remove_round(std::size_t at) { return remove_row<Round>({tr("take out a round"), {}}, &Survey::rounds, at); }

Edit add_trip(const Trip& entry) { return add_thing<Trip>({tr("add a trip"), {}}, &Survey::trips, entry); }
Edit change_trip(std::size_t at, const Trip& entry) {
    return change_row<Trip>({tr("change a trip"), {}}, &Survey::trips, at, entry);
}
Edit remove_trip(std::size_t at) { return remove_row<Trip>({tr("take out a trip"), {}}, &Survey::trips, at); }

Edit add_hunt(const Hunt& entry) { return add_thing<Hunt>({tr("add a hunt"), {}}, &Survey::hunts, entry); }
Edit change_hunt(std::size_t at, const Hunt& entry) {
    return change_row<Hunt>({tr("change a hunt"), {}}, &Survey::hunts, at, entry);
}
Edit remove_hunt(std::size_t at) { return remove_row<Hunt>({tr("take out a hunt"), {}}, &Survey::hunts, at); }

Edit add_trial(const Trial& entry) { return add_thing<Trial>({tr("add a trial"), {}}, &Survey::trials, entry); }
Edit change_trial(std::size_t at, const Trial& entry) {
    return change_row<Trial>({tr("change a trial"), {}}, &Survey::trials, at, entry);
}
Edit remove_trial(std::size_t at) { return remove_row<Trial>({tr("take out a trial"), {}}, &Survey::trials, at); }

Edit add_demand(const Demand& entry) { return add_thing<Demand>({tr("add a demand"), {}}, &Survey::demands, entry); }
Edit change_demand(std::size_t at, const Demand& entry) {
    return change_row<Demand>({tr("change a demand"), {}}, &Survey::demands, at, entry);
}
Edit remove_demand(std::size_t at) { return remove_row<Demand>({tr("take out a demand"), {}}, &Survey::demands, at); }

Edit add_limit(const Limit& entry) { return add_thing<Limit>({tr("add a limit"), {}}, &Survey::limits, entry); }
Edit change_limit(std::size_t at, const Limit& entry) {
    return change_row<Limit>({tr("change a limit"), {}}, &Survey::limits, at, entry);
}
Edit remove_limit(std::size_t at) { return remove_row<Limit>({tr("take out a limit"), {}}, &Survey::limits, at); }

Edit add_accepted(const Accepted& entry) {
    return add_thing<Accepted>({tr("add an accepted finding"), {}}, &Survey::accepted, entry);
}
Edit change_accepted(std::size_t at, const Accepted& entry) {
    return change_row<Accepted>({tr("change an accepted finding"), {}}, &Survey::accepted, at, entry);
}
Edit remove_accepted(std::size_t at) {
    return remove_row<Accepted>({tr("take out an accepted finding"), {}}, &Survey::accepted, at);
}

Edit change_heading(const Heading& heading) {
    return {{tr("change the heading"), {}}, [=](Survey survey) -> Outcome<Survey> {
                survey.heading = heading;
                return survey;
            }};
}

Edit change_grounding(const std::optional<Grounding>& grounding) {
    return {{tr("change the grounding"), {}}, [=](Survey survey) -> Outcome<Survey> {
                survey.grounding = grounding;
                return survey;
            }};
}

Edit change_mapping(const std::optional<Mapping>& mapping) {
    return {{tr("change what mapping reckons with"), {}}, [=](Survey survey) -> Outcome<Survey> {
                survey.mapping = mapping;
                return survey;
            }};
}

}  // namespace doorcard
