// SPDX-License-Identifier: MIT
#pragma once
#include "survey/survey.hpp"

namespace doorcard {

/// Calls `visit(name, member)` for every list of things of a survey, by the name that its entries have in the file, in
/// the order of the contract.
template <class Visit>
void each_table(Visit visit) {
    visit("dwelling", &Survey::dwellings);
    visit("occupancy", &Survey::occupancies);
    visit("source", &Survey::sources);
    visit("panel", &Survey::panels);
    visit("breaker", &Survey::breakers);
    visit("circuit", &Survey::circuits);
    visit("room", &Survey::rooms);
    visit("outlet", &Survey::outlets);
    visit("load", &Survey::loads);
    visit("managed", &Survey::managed);
    visit("reading", &Survey::readings);
    visit("recording", &Survey::recordings);
    visit("waveform", &Survey::waveforms);
    visit("demand", &Survey::demands);
    visit("limit", &Survey::limits);
    visit("round", &Survey::rounds);
    visit("trip", &Survey::trips);
    visit("hunt", &Survey::hunts);
    visit("trial", &Survey::trials);
    visit("accepted", &Survey::accepted);
    visit("photo", &Survey::photos);
}

}  // namespace doorcard
