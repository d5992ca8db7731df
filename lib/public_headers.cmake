# What a program of one's own includes: these, and all that these include, are installed; every other header is internal.
set(public_headers
  # a description: read, written, changed, its keys and schema
  description/build.hpp description/reader.hpp description/writer.hpp description/settings.hpp description/keys.hpp
  description/schema.hpp description/template.hpp
  # the other files: a bin, readings of a fan test, a log, what was tuned, readings of a finished unit
  description/bin.hpp description/readings.hpp description/log.hpp description/tuned_file.hpp description/proof.hpp
  # the answer
  plan/assess.hpp plan/moves.hpp plan/sweep.hpp choose/choose.hpp fan_test/fan_test.hpp tune/tune.hpp prove/prove.hpp
  # as text, JSON, report and drawings
  report/screen.hpp report/text.hpp report/json.hpp report/explain.hpp report/files.hpp)

# installed_headers: the list with all that it includes
set(installed_headers ${public_headers})
set(open ${public_headers})
while(open)
  list(POP_FRONT open header)
  file(STRINGS ${CMAKE_CURRENT_LIST_DIR}/${header} lines REGEX "^#include \"")
  foreach(line IN LISTS lines)
    string(REGEX REPLACE "^#include \"([^\"]+)\".*" "\\1" included "${line}")
    if(EXISTS ${CMAKE_CURRENT_LIST_DIR}/${included} AND NOT included IN_LIST installed_headers)
      list(APPEND installed_headers ${included})
      list(APPEND open ${included})
    endif()
  endforeach()
endwhile()
