# Run by embed_files: writes the bytes of FILES as C++ arrays.
set(arrays "")
set(entries "")
set(number 0)
foreach(file ${FILES})
    get_filename_component(name ${file} NAME_WLE)
    file(READ ${file} bytes HEX)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
    string(APPEND arrays "const unsigned char bytes_${number}[] = {${bytes}0};\n")
    string(APPEND entries "    {\"${name}\", {reinterpret_cast<const char*>(bytes_${number}), sizeof bytes_${number} - 1}},\n")
    math(EXPR number "${number} + 1")
endforeach()
file(WRITE ${OUTPUT} "#include \"${HEADER}\"\n\nnamespace doorcard {\nnamespace {\n${arrays}}  // namespace\n
std::span<const BuiltIn> ${FUNCTION}() {
    static const std::array<BuiltIn, ${number}> files = {{\n${entries}}};
    return files;\n}\n\n}  // namespace doorcard\n")
