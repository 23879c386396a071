// SPDX-License-Identifier: MIT
#pragma once
#include "property/draw.hpp"

/// A building of several panels below one another, with something for most rules to find: shared neutrals, ties, wires,
/// runs of outlets, straps, boxes, readings taken together, old directories, accepted findings.
doorcard::Survey random_building(Draw&);

/// The same building after one edit of any kind: something changed, moved, added or taken away.
doorcard::Survey edited(const doorcard::Survey&, Draw&);
