# Writes the list of checks from the files in checks/: fit_hot.cpp holds `Check fit_hot()`. They stand in the order of
# checks/order.txt; one that is not in it comes last.
function(register_checks target folder)
  set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${folder}/order.txt)
  file(STRINGS ${folder}/order.txt order REGEX "^[a-z]")
  file(GLOB files CONFIGURE_DEPENDS ${folder}/*.cpp)
  set(names "")
  foreach(file IN LISTS files)
    get_filename_component(name ${file} NAME_WE)
    list(APPEND names ${name})
  endforeach()
  foreach(name IN LISTS order)
    if(NOT name IN_LIST names)
      message(FATAL_ERROR "${folder}/order.txt: there is no check ${name}.cpp")
    endif()
  endforeach()
  set(all ${order} ${names})
  list(REMOVE_DUPLICATES all)
  set(declarations "")
  set(calls "")
  foreach(name IN LISTS all)
    string(APPEND declarations "Check ${name}();\n")
    string(APPEND calls "      ${name}(),\n")
  endforeach()
  set(out ${CMAKE_CURRENT_BINARY_DIR}/check_registry.cpp)
  file(GENERATE OUTPUT ${out} CONTENT "// Written by lib/plan/registry.cmake: do not edit.
#include \"plan/check.hpp\"

namespace lumwright::plan {
${declarations}
const std::vector<Check>& all_checks() {
  static const std::vector<Check> checks = {
${calls}  };
  return checks;
}
}  // namespace lumwright::plan
")
  target_sources(${target} PRIVATE ${out})
endfunction()
