// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

/// Takes the findings that the survey accepts out of `findings` into `accepted`; a danger stays in both. An acceptance
/// whose finding no longer fires becomes the notice `accepted-idle`.
void set_accepted_apart(const Reckoned&, std::vector<Finding>& findings, std::vector<Finding>& accepted);

}  // namespace doorcard
