// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>

#include "assess/findings_of.hpp"

template <>
struct doctest::StringMaker<Lines> {
    static String convert(const Lines& lines) {
        std::string all;
        for (const std::string& line : lines) all += "\n    " + line;
        return all.c_str();
    }
};
