// SPDX-License-Identifier: MIT
#pragma once
#include <cmath>
#include <compare>

namespace doorcard {

/// A number with its electrical dimension, so that amperes cannot be added to volts.
/// The exponents are of: ampere, volt, degree Celsius, foot, real power (watt / volt-ampere), and the prefix milli.
/// Products and quotients add and subtract the exponents; a plain number scales. Refuses nothing: signs and infinities
/// pass.
template <int A, int V, int T = 0, int L = 0, int R = 0, int M = 0>
struct Quantity {
    double value = 0;

    constexpr Quantity() = default;
    constexpr explicit Quantity(double number) : value(number) {}
    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity(-value); }
    constexpr Quantity& operator+=(Quantity other) {
        value += other.value;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        value -= other.value;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value + b.value); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value - b.value); }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.value * k); }
    friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(a.value * k); }
    friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.value / k); }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value / b.value; }
    friend Quantity abs(Quantity a) { return Quantity(std::abs(a.value)); }
};

template <int A1, int V1, int T1, int L1, int R1, int M1, int A2, int V2, int T2, int L2, int R2, int M2>
constexpr auto operator*(Quantity<A1, V1, T1, L1, R1, M1> a, Quantity<A2, V2, T2, L2, R2, M2> b) {
    return Quantity<A1 + A2, V1 + V2, T1 + T2, L1 + L2, R1 + R2, M1 + M2>(a.value * b.value);
}
template <int A1, int V1, int T1, int L1, int R1, int M1, int A2, int V2, int T2, int L2, int R2, int M2>
requires(A1 != A2 || V1 != V2 || T1 != T2 || L1 != L2 || R1 != R2 || M1 != M2) constexpr auto operator/(
    Quantity<A1, V1, T1, L1, R1, M1> a, Quantity<A2, V2, T2, L2, R2, M2> b) {
    return Quantity<A1 - A2, V1 - V2, T1 - T2, L1 - L2, R1 - R2, M1 - M2>(a.value / b.value);
}

using Amperes = Quantity<1, 0>;
using Volts = Quantity<0, 1>;
using VoltAmperes = Quantity<1, 1>;
using Ohms = Quantity<-1, 1>;
using Celsius = Quantity<0, 0, 1>;
using Feet = Quantity<0, 0, 0, 1>;
using PowerFactor = Quantity<0, 0, 0, 0, 1>;  ///< watts over volt-amperes
using Watts = Quantity<1, 1, 0, 0, 1>;        ///< watts = volt-amperes x power factor
using Milliamperes = Quantity<1, 0, 0, 0, 0, 1>;

constexpr double feet_per_metre = 1 / 0.3048;  // the international foot, exactly 0.3048 m
constexpr double square_feet_per_square_metre = feet_per_metre * feet_per_metre;

}  // namespace doorcard
