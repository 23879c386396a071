// SPDX-License-Identifier: MIT
// Parses FILE with toml++ and does nothing with it: what any reader of the file must at least do.
#include <toml++/toml.h>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

int main(int count, char** arguments) {
    if (count != 2) return std::fputs("usage: bare_parse FILE\n", stderr), 2;
    std::ifstream in(arguments[1], std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    const toml::table table = toml::parse(text);
    std::printf("%zu\n", table.size());
}
