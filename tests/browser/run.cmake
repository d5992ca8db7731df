# Looks at the reports with the checkers.
include(${CMAKE_CURRENT_LIST_DIR}/checkers.cmake)
file(COPY ${SOURCE}/report.mjs ${SOURCE}/make_reports.mjs DESTINATION ${WORK})
execute_process(COMMAND ${NODE} report.mjs ${PROBE} ${PROGRAM} ${EXAMPLES} ${WORK}/reports WORKING_DIRECTORY ${WORK}
  COMMAND_ERROR_IS_FATAL ANY)
