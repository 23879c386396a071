// SPDX-License-Identifier: MIT
#pragma once
#include <memory>

#include "sheet/sheet.hpp"

struct _PangoLayout;
struct _PangoContext;

namespace doorcard {

struct LayoutFreed {
    void operator()(_PangoLayout*) const;
};
using OwnedLayout = std::unique_ptr<_PangoLayout, LayoutFreed>;

/// One line of text, shaped with the project's own fonts at 72 units an inch: user space is points.
OwnedLayout shaped(const std::string& text, const TypeStyle&);

}  // namespace doorcard
