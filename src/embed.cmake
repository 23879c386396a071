# embed_files(OUTPUT FUNCTION HEADER FILES...): a source file that defines `std::span<const BuiltIn> FUNCTION()` over the bytes of
# the files, each under its name without folder and last extension.
function(embed_files output function header)
    set(path ${CMAKE_CURRENT_BINARY_DIR}/${output})
    add_custom_command(
        OUTPUT ${path}
        COMMAND ${CMAKE_COMMAND} -DOUTPUT=${path} -DFUNCTION=${function} -DHEADER=${header} "-DFILES=${ARGN}"
                -P ${CMAKE_CURRENT_SOURCE_DIR}/embed_script.cmake
        DEPENDS ${ARGN} ${CMAKE_CURRENT_SOURCE_DIR}/embed_script.cmake
        VERBATIM)
endfunction()
