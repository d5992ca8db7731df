# Runs one test of the page under node, with the checkers that the test of the report has.
include(${CMAKE_CURRENT_LIST_DIR}/../browser/checkers.cmake)
file(GLOB scripts ${SOURCE}/*.mjs)
file(COPY ${scripts} DESTINATION ${WORK})
execute_process(COMMAND ${NODE} ${TEST}.mjs ${PAGE} ${PROGRAM} ${BUILDS} ${ROOT} WORKING_DIRECTORY ${WORK}
  COMMAND_ERROR_IS_FATAL ANY)
