# Runs one test of the page under node, with the checkers that the test of the report has.
find_program(NODE node REQUIRED)
find_program(NPM npm REQUIRED)
find_program(CHROMIUM NAMES chromium chromium-browser REQUIRED)
file(MAKE_DIRECTORY ${WORK})
file(COPY ${SOURCE}/../browser/package.json ${SOURCE}/../browser/package-lock.json DESTINATION ${WORK})
file(GLOB scripts ${SOURCE}/*.mjs)
file(COPY ${scripts} DESTINATION ${WORK})
file(SHA256 ${WORK}/package-lock.json lock)
if(NOT EXISTS ${WORK}/installed-${lock})
  execute_process(COMMAND ${NPM} ci --ignore-scripts --no-audit --no-fund --loglevel=error WORKING_DIRECTORY ${WORK}
    COMMAND_ERROR_IS_FATAL ANY)
  file(TOUCH ${WORK}/installed-${lock})
endif()
set(ENV{CHROMIUM} ${CHROMIUM})
execute_process(COMMAND ${NODE} ${TEST}.mjs ${PAGE} ${PROGRAM} ${BUILDS} ${ROOT} WORKING_DIRECTORY ${WORK}
  COMMAND_ERROR_IS_FATAL ANY)
