# Installs the checkers into the build folder, once for each package-lock.json, and looks at the reports.
find_program(NODE node REQUIRED)
find_program(NPM npm REQUIRED)
find_program(CHROMIUM NAMES chromium chromium-browser REQUIRED)
file(MAKE_DIRECTORY ${WORK})
foreach(file package.json package-lock.json report.mjs make_reports.mjs)
  file(COPY ${SOURCE}/${file} DESTINATION ${WORK})
endforeach()
file(SHA256 ${SOURCE}/package-lock.json lock)
if(NOT EXISTS ${WORK}/installed-${lock})
  execute_process(COMMAND ${NPM} ci --ignore-scripts --no-audit --no-fund --loglevel=error WORKING_DIRECTORY ${WORK}
    COMMAND_ERROR_IS_FATAL ANY)
  file(TOUCH ${WORK}/installed-${lock})
endif()
set(ENV{CHROMIUM} ${CHROMIUM})
execute_process(COMMAND ${NODE} report.mjs ${PROBE} ${PROGRAM} ${EXAMPLES} ${WORK}/reports WORKING_DIRECTORY ${WORK}
  COMMAND_ERROR_IS_FATAL ANY)
