// SPDX-License-Identifier: MIT
#include "file/read_text.hpp"

#include <stdlib.h>
#include <unistd.h>

#include <filesystem>

#include "base/write_whole.hpp"
#include "file/key_scan.hpp"
#include "file/reading.hpp"

using namespace doorcard;

namespace {

std::string complaint_about(const std::string& path) {
    const auto text = read_text(path);
    REQUIRE_FALSE(text);
    return complaint_line(path, text.error()[0]);
}

}  // namespace

TEST_CASE("read_text: the bytes as they are, longer than one piece") {
    std::string name = (std::filesystem::temp_directory_path() / "read_text.XXXXXX").string();
    const int descriptor = ::mkstemp(name.data());
    REQUIRE(descriptor >= 0);
    ::close(descriptor);
    std::string bytes = "a\r\n\xFF";
    bytes.resize(3'000'001, 'x');
    write_whole(name, bytes);
    CHECK(read_text(name)->bytes == bytes);
    CHECK(read_text(name)->name == name);
    ::unlink(name.c_str());
}

TEST_CASE("read_text: what is no file that can be read is said") {
    CHECK(complaint_about("/nowhere/a") ==
          "/nowhere/a:1:1: cannot be read: No such file or directory; name a survey file that can be");
    CHECK(complaint_about("/") == "/:1:1: cannot be read: Is a directory; name a survey file that can be");
}

TEST_CASE("read_text: a file without end is read to just over the limit, and refused by the reader") {
    const auto text = read_text("/dev/zero");
    REQUIRE(text);
    CHECK(text->bytes.size() > most_bytes);
    CHECK(text->bytes.size() < most_bytes + (4u << 20));
    CHECK_FALSE(read_survey(*text));
}
