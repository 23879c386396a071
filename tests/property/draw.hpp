// SPDX-License-Identifier: MIT
#pragma once
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "survey/survey.hpp"

/// Random draws from a fixed seed: the same on every machine (no std distributions, which may differ).
class Draw {
public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    /// A whole number from `least` to `most`.
    int number(int least, int most) {
        return least + static_cast<int>(engine_() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool one_in(int n) { return number(1, n) == 1; }
    template <class T>
    const T& of(const std::vector<T>& all) {
        return all[static_cast<std::size_t>(number(0, static_cast<int>(all.size()) - 1))];
    }
    template <class T>
    void shuffle(std::vector<T>& all) {
        for (std::size_t i = all.size(); i > 1; --i)
            std::swap(all[i - 1], all[static_cast<std::size_t>(number(0, static_cast<int>(i) - 1))]);
    }

private:
    std::mt19937_64 engine_;
};

/// A survey as it might be found: up to three panels below one another, breakers of one to three poles, circuits that
/// share neutrals, outlets in runs, loads of all kinds. Loads are known by va, watts or amperes.
doorcard::Survey random_survey(Draw&);

/// The same survey with the entries of every list in another order.
doorcard::Survey shuffled(const doorcard::Survey&, Draw&);

/// The same survey made to contradict itself: letters that do not come in, systems that do not follow, circuits on
/// breakers of several panels, transformers anywhere.
doorcard::Survey contradictory(const doorcard::Survey&, Draw&);
