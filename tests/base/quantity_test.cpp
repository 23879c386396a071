// SPDX-License-Identifier: MIT
#include "base/quantity.hpp"

#include <doctest/doctest.h>

#include <type_traits>

#include "survey/common.hpp"

using namespace doorcard;

namespace {

template <class A, class B>
concept can_be_added = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept can_be_compared = requires(A a, B b) {
    a < b;
};

}  // namespace

TEST_CASE("quantity: like adds to like, and to nothing else") {
    CHECK((Amperes(3) + Amperes(4)).value == 7);
    CHECK((Volts(240) - Volts(120)).value == 120);
    static_assert(can_be_added<Amperes, Amperes>);
    static_assert(!can_be_added<Amperes, Volts>);
    static_assert(!can_be_added<Amperes, Milliamperes>);
    static_assert(!can_be_added<Watts, VoltAmperes>);
    static_assert(!can_be_added<Amperes, double>);
    static_assert(!can_be_compared<Amperes, Volts>);
    static_assert(!std::is_convertible_v<double, Amperes>);
}

TEST_CASE("quantity: products and quotients have the dimension they must have") {
    static_assert(std::is_same_v<decltype(Amperes(1) * Volts(1)), VoltAmperes>);
    static_assert(std::is_same_v<decltype(VoltAmperes(1) / Volts(1)), Amperes>);
    static_assert(std::is_same_v<decltype(Volts(1) / Amperes(1)), Ohms>);
    static_assert(std::is_same_v<decltype(Watts(1) / VoltAmperes(1)), PowerFactor>);
    static_assert(std::is_same_v<decltype(Amperes(1) / Amperes(1)), double>);
    CHECK((VoltAmperes(1200) / Volts(120)).value == 10);
    CHECK((Amperes(10) * Ohms(0.5)).value == 5);
    CHECK(Amperes(16) / Amperes(20) == doctest::Approx(0.8));
}

TEST_CASE("quantity: plain numbers scale, and signs pass") {
    CHECK((1.25 * Amperes(16)).value == 20);
    CHECK((Amperes(16) / 2).value == 8);
    CHECK((-Amperes(3)).value == -3);
    CHECK(abs(Volts(-3)).value == 3);
    CHECK(Amperes(3) < Amperes(4));
    Amperes sum;
    sum += Amperes(5);
    sum -= Amperes(2);
    CHECK(sum == Amperes(3));
}

TEST_CASE("quantity: a foot is 0.3048 m exactly (the international foot)") {
    CHECK(Length{0.3048, true}.feet().value == doctest::Approx(1).epsilon(1e-15));
    CHECK(Length{30.48, true}.feet().value == doctest::Approx(100));
    CHECK(Length{62, false}.feet().value == 62);
    CHECK(Area{1, true}.square_feet() == doctest::Approx(10.7639104167));
    CHECK(Area{1850, false}.square_feet() == 1850);
}
