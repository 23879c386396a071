// SPDX-License-Identifier: MIT
#include "file/keys.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view proofs[] = {"lamp", "meter", "noncontact", "sound"};
constexpr std::string_view noises[] = {"quiet", "some", "strong"};
constexpr std::string_view apart_or_touching[] = {"apart", "touching"};
constexpr std::string_view events[] = {"motor-start", "switch-on", "switch-off", "plugged-in", "lamp-failed"};
constexpr std::string_view weathers[] = {"dry", "rain", "damp", "thaw", "hot", "wind"};
constexpr std::string_view indications[] = {"overcurrent", "arc", "ground", "self-test"};
constexpr std::string_view bare_resets[] = {"holds", "at-once", "later", "not-tried"};
constexpr std::string_view resets[] = {"at-once", "after-minutes", "no"};
constexpr std::string_view trip_signs[] = {"hot",   "buzz",    "smell",      "smoke",
                                           "shock", "flicker", "bright-dim", "half-dead"};
constexpr std::string_view trial_kinds[] = {"watch",          "bare-reset", "wire-off",    "breaker-swapped",
                                            "neighbour-swap", "load-moved", "ohms",        "insulation",
                                            "net-clamp",      "loop-drop",  "test-button", "wetting"};
constexpr std::string_view pass_or_fail[] = {"pass", "fail"};
constexpr std::string_view followers[] = {"circuit", "breaker", "load"};

constexpr Field round_list[] = {
    texts<&Round::off>("off", "the full set that is off; any one of tied handles means all")
        .names(to_breaker)
        .required(),
    texts<&Round::went_out>("went_out", "outlets or loads that went out; not listed anywhere: not seen")
        .names(to_outlet | to_load),
    texts<&Round::stayed_on>("stayed_on", "outlets or loads that stayed on").names(to_outlet | to_load),
    texts<&Round::odd>("odd", "dim, buzzing, half").names(to_outlet | to_load),
    texts<&Round::stuck>("stuck", "did not come back when power did").names(to_outlet | to_load),
    texts<&Round::would_not_reset>("would_not_reset", "handles that did not go back on: they stay off")
        .names(to_breaker),
    text<&Round::with>("with", "how outlets were judged").one_of(proofs),
    clock<&Round::at>("at", "when; the order of the file is the order of time").marked(),
    text<&Round::by>("by", "who"),
    text<&Round::note>("note", "a remark"),
    plain<&Round::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field mapping_list[] = {
    number<&Mapping::walk_minutes>("walk_minutes", "minutes", "one walk round all outlets; = 6"),
    number<&Mapping::throw_minutes>("throw_minutes", "minutes", "throwing one handle; = 0.1"),
    number<&Mapping::outlet_minutes>("outlet_minutes", "minutes", "worth of one unsettled outlet; = 10"),
    number<&Mapping::misread>("misread", "", "probability of a wrong answer; = 0.02").at_most(1),
    number<&Mapping::off_panel>("off_panel", "", "probability that an outlet is fed from elsewhere; = 0.03").at_most(1),
    number<&Mapping::two_feeds>("two_feeds", "", "probability of a double feed; = 0.001").at_most(1),
    number<&Mapping::directory_right>("directory_right", "", "probability that the old directory is right; = 0.7")
        .at_most(1),
    text<&Mapping::note>("note", "a remark"),
    plain<&Mapping::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field trip_list[] = {
    text<&Trip::of>("of", "what tripped: a breaker, an outlet with a guard, a circuit, a panel, or \"survey:\"")
        .names(to_trip_of)
        .required(),
    clock<&Trip::at>("at", "when"),
    texts<&Trip::running>("running", "loads that ran").names(to_load | to_outlet),
    number<&Trip::amps>("amps", "A", "just before, where a recorder caught it"),
    number<&Trip::amps_crest>("amps_crest", "A", "highest instantaneous current just before"),
    number<&Trip::leakage_ma>("leakage_ma", "mA", "hot minus neutral, just before"),
    text<&Trip::noise>("noise", "high-frequency noise, just before").one_of(noises),
    text<&Trip::neutral_to_ground>("neutral_to_ground", "with the neutral lifted").one_of(apart_or_touching),
    number<&Trip::delay_s>("delay_s", "seconds", "from switching on to the trip"),
    texts<&Trip::just_before>("just_before", "what happened just before").one_of(events),
    text<&Trip::weather>("weather", "the weather then").one_of(weathers),
    text<&Trip::device_says>("device_says", "what its indicator says").one_of(indications),
    text<&Trip::bare_reset>("bare_reset", "reset with everything unplugged").one_of(bare_resets),
    text<&Trip::resets>("resets", "whether it goes back on").one_of(resets),
    texts<&Trip::signs>("signs", "signs of trouble; []: looked, none").one_of(trip_signs),
    texts<&Trip::also_tripped>("also_tripped", "breakers, or outlets with a guard, that tripped too")
        .names(to_breaker | to_outlet),
    text<&Trip::new_since>("new_since", "what is new since it held"),
    text<&Trip::by>("by", "who says so"),
    text<&Trip::note>("note", "a remark"),
    plain<&Trip::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field hunt_list[] = {
    text<&Hunt::circuit>("circuit", "the circuit under hunt").names(to_circuit).either("what is hunted"),
    text<&Hunt::breaker>("breaker", "in its place while nothing is traced").names(to_breaker).either("what is hunted"),
    date<&Hunt::watched_from>("watched_from", "the log is complete from here on"),
    number<&Hunt::background_per_day>("background_per_day", "per day", "trips that have nothing to do with it; = 0"),
    text<&Hunt::complaint>("complaint", "what is wrong, in the caller's words"),
    text<&Hunt::note>("note", "a remark"),
    plain<&Hunt::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field trial_list[] = {
    text<&Trial::circuit>("circuit", "the circuit under hunt, or the breaker while nothing is traced")
        .names(to_circuit | to_breaker)
        .required(),
    text<&Trial::kind>("kind", "what was done").one_of(trial_kinds).required(),
    texts<&Trial::removed>("removed", "places opened (all downstream goes too) and loads unplugged")
        .names(to_hunt_place),
    number<&Trial::hours>("hours", "hours", "how long; absent with started: still running"),
    date<&Trial::started>("started", "when it began"),
    whole<&Trial::trips>("trips", "", "trips in that time"),
    texts<&Trial::section>("section", "ohms, insulation: exactly these places").names(to_hunt_place),
    number<&Trial::megohms>("megohms", "megohm", "what the insulation test showed").either("resistance"),
    number<&Trial::ohms>("ohms", "ohm", "what the ohmmeter showed").either("resistance"),
    number<&Trial::test_volts>("test_volts", "V", "voltage of the insulation test"),
    text<&Trial::result>("result", "absent: insulation fails below 1 megohm").one_of(pass_or_fail),
    plain<&Trial::new_guards>(Form::texts, "new_guards", "breaker-swapped: guards of the one put in")
        .one_of(enum_words<Guard>),
    text<&Trial::followed>("followed", "neighbour-swap, load-moved: what the trouble went with").one_of(followers),
    clock<&Trial::at>("at", "when; the order of the file is the order of time").marked(),
    text<&Trial::by>("by", "who"),
    text<&Trial::note>("note", "a remark"),
    plain<&Trial::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

}  // namespace

FieldList round_keys() { return round_list; }
FieldList mapping_keys() { return mapping_list; }
FieldList trip_keys() { return trip_list; }
FieldList hunt_keys() { return hunt_list; }
FieldList trial_keys() { return trial_list; }

}  // namespace doorcard
