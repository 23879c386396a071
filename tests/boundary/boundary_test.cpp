// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>

#include "boundary/house_rules.hpp"

using boundary::breaches;
using boundary::SourceFile;

namespace {

const std::string licence = "// SPDX-License-Identifier: MIT\n";

std::vector<std::string> about(const std::string& path, const std::string& text) {
    return breaches({{path, licence + text}});
}

}  // namespace

TEST_CASE("boundary: the project keeps the house rules") {
    const auto files = boundary::sources_below(DOORCARD_SOURCE);
    CHECK(files.size() > 30);
    for (const std::string& breach : breaches(files)) FAIL_CHECK(breach);
}

TEST_CASE("boundary: scripts are among the files looked at") {
    const auto files = boundary::sources_below(DOORCARD_SOURCE);
    CHECK(std::count_if(files.begin(), files.end(), [](auto& file) { return file.path == "tests/run"; }) == 1);
}

TEST_CASE("boundary: includes follow the stages downward only") {
    CHECK(about("src/assess/x.cpp", "#include \"network/network.hpp\"\n#include \"assess/finding.hpp\"\n").empty());
    CHECK(about("src/assess/x.cpp", "#include \"sheet/sheet.hpp\"\n") ==
          std::vector<std::string>{"src/assess/x.cpp:2: 'assess' may not include 'sheet/sheet.hpp'"});
    CHECK(about("src/base/x.hpp", "  # include <survey/survey.hpp>\n").size() == 1);
    CHECK(about("src/cli/x.cpp", "#include \"ui/frame.hpp\"\n").size() == 1);
    CHECK(about("ui/x.cpp", "#include \"sheet/sheet.hpp\"\n#include \"ui/frame.hpp\"\n").empty());
}

TEST_CASE("boundary: a folder of src that is no stage is named") { CHECK(about("src/misc/x.cpp", "").size() == 1); }

TEST_CASE("boundary: wx stays out of src, heavy libraries out of headers") {
    CHECK(about("src/sheet/x.cpp", "#include <wx/wx.h>\n").size() == 1);
    CHECK(about("src/sheet/x.cpp", "#include <cairo-pdf.h>\n").empty());
    for (const char* heavy : {"cairo.h", "toml++/toml.h", "boost/graph/adjacency_list.hpp", "pango/pangocairo.h"})
        CHECK(about("src/sheet/x.hpp", "#include <" + std::string(heavy) + ">\n").size() == 1);
    CHECK(about("ui/x.hpp", "#include <wx/frame.h>\n").empty());  // all of ui is wx, compiled once before it
    CHECK(about("ui/x.hpp", "#include <gtk/gtk.h>\n").size() == 1);
}

TEST_CASE("boundary: every file carries the licence line in its first two lines") {
    CHECK(breaches({{"src/base/x.cpp", "int x;\n"}}) == std::vector<std::string>{"src/base/x.cpp:1: no licence line"});
    CHECK(breaches({{"tests/run", "#!/usr/bin/env bash\n# SPDX-License-Identifier: MIT\n"}}).empty());
    CHECK(breaches({{"tests/run", "#!/usr/bin/env bash\n\n# SPDX-License-Identifier: MIT\n"}}).size() == 1);
    CHECK(breaches({{"src/base/x.cpp", ""}}).size() == 1);
}

TEST_CASE("boundary: 500 lines pass, 501 do not") {
    const auto file_of = [](std::size_t lines) {
        std::string text;
        for (std::size_t i = 1; i < lines; ++i) text += "\n";
        return text;
    };
    CHECK(about("src/base/x.cpp", file_of(500)).empty());
    CHECK(about("src/base/x.cpp", file_of(501)).size() == 1);
}

TEST_CASE("boundary: notes of unfinished work are found as words") {
    CHECK(about("src/base/x.cpp",
                "// TO"
                "DO later\n")
              .size() == 1);
    CHECK(about("src/base/x.cpp",
                "// FIX"
                "ME\n")
              .size() == 1);
    CHECK(about("src/base/x.cpp",
                "// TO"
                "DOS is a noun elsewhere\n")
              .empty());
}

TEST_CASE("boundary: a cycle of includes is named where it closes") {
    const SourceFile a{"src/base/a.hpp", licence + "#include \"base/b.hpp\"\n"};
    const SourceFile b{"src/base/b.hpp", licence + "#include \"base/c.hpp\"\n"};
    const SourceFile c{"src/base/c.hpp", licence + "#include \"base/a.hpp\"\n"};
    CHECK(breaches({a, b, {"src/base/c.hpp", licence}}).empty());
    const auto found = breaches({a, b, c});
    REQUIRE(found.size() == 1);
    CHECK(found.front() == "src/base/c.hpp:2: closes a cycle of includes: 'src/base/a.hpp'");
}

TEST_CASE("boundary: a header that includes itself is a cycle") {
    CHECK(about("src/base/a.hpp", "#include \"base/a.hpp\"\n").size() == 1);
}
