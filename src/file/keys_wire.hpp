// SPDX-License-Identifier: MIT
#pragma once
#include "file/field.hpp"

namespace doorcard {

FieldList wire_keys();    // of a circuit
FieldList feeder_keys();  // of a panel: those of a wire, and its sets, neutral and ground

}  // namespace doorcard
