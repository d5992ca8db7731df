# Installs the checkers into the folder WORK, once for each package-lock.json; sets NODE, and CHROMIUM for the script that
# is run next.
find_program(NODE node REQUIRED)
find_program(NPM npm REQUIRED)
find_program(CHROMIUM NAMES chromium chromium-browser REQUIRED)
file(MAKE_DIRECTORY ${WORK})
file(COPY ${CMAKE_CURRENT_LIST_DIR}/package.json ${CMAKE_CURRENT_LIST_DIR}/package-lock.json DESTINATION ${WORK})
file(SHA256 ${WORK}/package-lock.json lock)
if(NOT EXISTS ${WORK}/installed-${lock})
  execute_process(COMMAND ${NPM} ci --ignore-scripts --no-audit --no-fund --loglevel=error WORKING_DIRECTORY ${WORK}
    COMMAND_ERROR_IS_FATAL ANY)
  file(TOUCH ${WORK}/installed-${lock})
endif()
set(ENV{CHROMIUM} ${CHROMIUM})
