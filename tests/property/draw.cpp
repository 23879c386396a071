// SPDX-License-Identifier: MIT
#include "property/draw.hpp"

#include <algorithm>

using namespace doorcard;

namespace {

const std::vector<System> systems = {System::split_120_240, System::split_120_240, System::network_120_208,
                                     System::wye_208,       System::high_leg_240,  System::wye_480};

/// Puts a survey together, list by list.
class Maker {
public:
    explicit Maker(Draw& draw) : draw_(draw) {}

    Survey make() {
        Source utility;
        utility.id = "u";
        utility.system = draw_.of(systems);
        add_panels();
        for (std::size_t c = 0, count = static_cast<std::size_t>(draw_.number(1, 12)); c < count; ++c) add_circuit();
        for (std::size_t o = 0, count = static_cast<std::size_t>(draw_.number(0, 15)); o < count; ++o) add_outlet();
        for (std::size_t l = 0, count = static_cast<std::size_t>(draw_.number(1, 20)); l < count; ++l) add_load();
        Survey survey;
        survey.sources = Table<Source>({utility});
        survey.panels = Table<Panel>(panels_);
        survey.breakers = Table<Breaker>(breakers_);
        survey.circuits = Table<Circuit>(circuits_);
        survey.outlets = Table<Outlet>(outlets_);
        survey.loads = Table<Load>(loads_);
        return survey;
    }

private:
    void add_panels() {
        const int count = draw_.number(1, 3);
        for (int p = 0; p < count; ++p) {
            Panel panel;
            panel.id = "P" + std::to_string(p);
            panel.fed_by = {p == 0 ? std::string("u") : feeder_in("P" + std::to_string(draw_.number(0, p - 1)))};
            if (draw_.one_in(3)) panel.turned_over = true;
            if (draw_.one_in(4)) panel.numbering = Numbering::down_left;
            panel.spaces = 84;
            panels_.push_back(panel);
        }
    }

    std::string feeder_in(const std::string& panel) { return add_breaker(panel, draw_.number(1, 3)); }

    /// The next free spaces, one below the other on the left.
    std::string add_breaker(const std::string& panel, int poles) {
        Breaker breaker;
        breaker.panel = panel;
        for (int pole = 0; pole < poles; ++pole) breaker.spaces.push_back(next_space_ += 2);
        breaker.id = breaker.default_id();
        breaker.amps = Amperes(draw_.of(std::vector<double>{15, 20, 30, 50, 100}));
        breakers_.push_back(breaker);
        return breaker.id;
    }

    void add_circuit() {
        Circuit circuit;
        circuit.id = "c" + std::to_string(circuits_.size());
        const std::string panel = draw_.of(panels_).id;
        circuit.breakers = {add_breaker(panel, draw_.of(std::vector<int>{1, 1, 1, 2, 3}))};
        if (draw_.one_in(3)) circuit.neutral = "N" + std::to_string(draw_.number(1, 3));
        circuits_.push_back(circuit);
    }

    void add_outlet() {
        Outlet outlet;
        outlet.id = "o" + std::to_string(outlets_.size());
        outlet.kind = draw_.of(std::vector<OutletKind>{OutletKind::receptacle, OutletKind::lighting});
        if (!outlets_.empty() && draw_.one_in(2))
            outlet.upstream = draw_.of(outlets_).id;
        else
            outlet.circuits = {draw_.of(circuits_).id};
        if (draw_.one_in(12)) outlet.circuits = {draw_.of(circuits_).id, circuits_.front().id};
        outlets_.push_back(outlet);
    }

    void add_load() {
        Load load;
        load.id = "l" + std::to_string(loads_.size());
        const double size = draw_.number(1, 200000) / 100.0;
        const int how = draw_.number(1, 3);
        if (how == 1) load.va = VoltAmperes(size);
        if (how == 2) load.watts = Watts(size);
        if (how == 3) load.amps = Amperes(size / 100);
        if (!outlets_.empty() && draw_.one_in(2))
            load.outlet = draw_.of(outlets_).id;
        else
            load.circuit = draw_.of(circuits_).id;
        vary(load);
        loads_.push_back(load);
    }

    void vary(Load& load) {
        if (draw_.one_in(4)) load.count = draw_.number(2, 5);
        if (draw_.one_in(2)) load.power_factor = draw_.number(50, 100) / 100.0;
        if (draw_.one_in(6)) load.leading = true;
        if (draw_.one_in(3)) load.third_harmonic = draw_.number(0, 80) / 100.0;
        if (draw_.one_in(3)) load.volts = Volts(draw_.of(std::vector<double>{115, 120, 208, 230, 240}));
        if (draw_.one_in(8)) load.phases = 3;
        if (draw_.one_in(6)) load.continuous = true;
        if (draw_.one_in(3))
            load.duty = draw_.of(std::vector<Duty>{Duty::heating, Duty::ev, Duty::motor, Duty::dryer, Duty::lighting});
    }

    Draw& draw_;
    int next_space_ = -1;
    std::vector<Panel> panels_;
    std::vector<Breaker> breakers_;
    std::vector<Circuit> circuits_;
    std::vector<Outlet> outlets_;
    std::vector<Load> loads_;
};

template <class T>
Table<T> mixed(const Table<T>& table, Draw& draw) {
    std::vector<T> rows = table.rows();
    draw.shuffle(rows);
    return Table<T>(rows);
}

}  // namespace

Survey random_survey(Draw& draw) { return Maker(draw).make(); }

Survey shuffled(const Survey& survey, Draw& draw) {
    Survey other = survey;
    other.panels = mixed(survey.panels, draw);
    other.breakers = mixed(survey.breakers, draw);
    other.circuits = mixed(survey.circuits, draw);
    other.outlets = mixed(survey.outlets, draw);
    other.loads = mixed(survey.loads, draw);
    return other;
}

namespace {

/// So many letters of legs, any of them.
std::string any_letters(Draw& draw, std::size_t count) {
    std::string letters;
    while (letters.size() < count) letters += static_cast<char>('A' + draw.number(0, 2));
    return letters;
}

void state_horsepower(Load& load) {
    load.va.reset();
    load.watts.reset();
    load.amps.reset();
    load.hp = "1/2";
}

void contradict(Panel& panel, Draw& draw) {
    if (draw.one_in(3)) panel.legs_down = draw.of(std::vector<std::string>{"A", "C", "BC", "CBA", "AC"});
    if (draw.one_in(3)) panel.system = draw.of(systems);
    if (draw.one_in(4)) panel.transformer = Transformer{};
    if (draw.one_in(6)) panel.high_leg = 'C';
    if (draw.one_in(8)) panel.fed_by.clear();
}

}  // namespace

Survey contradictory(const Survey& survey, Draw& draw) {
    Survey other = survey;
    std::vector<Panel> panels = survey.panels.rows();
    for (Panel& panel : panels) contradict(panel, draw);
    other.panels = Table<Panel>(panels);
    std::vector<Breaker> breakers = survey.breakers.rows();
    for (Breaker& breaker : breakers)
        if (draw.one_in(4)) breaker.legs = any_letters(draw, breaker.spaces.size());
    other.breakers = Table<Breaker>(breakers);
    std::vector<Circuit> circuits = survey.circuits.rows();
    for (Circuit& circuit : circuits) {
        if (draw.one_in(6)) circuit.leg = any_letters(draw, 1).front();
        if (draw.one_in(6)) circuit.breakers.push_back(draw.of(breakers).id);
    }
    other.circuits = Table<Circuit>(circuits);
    std::vector<Load> loads = survey.loads.rows();
    for (Load& load : loads) {
        if (draw.one_in(4)) load.legs = draw.of(std::vector<std::string>{"A", "C", "BC", "ABC", "AN+BN"});
        if (draw.one_in(6)) load.min_circuit_a = Amperes(10);
        if (draw.one_in(8)) state_horsepower(load);
    }
    other.loads = Table<Load>(loads);
    return other;
}
