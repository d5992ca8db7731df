# Links the program with whole-program type checking: two types of one name with different layouts are an error. Before
# that, two files that clash on purpose must be refused, or the check would be blind.
set(flags -O0 -flto -Wodr -Werror=odr)
file(MAKE_DIRECTORY ${WORK})
file(WRITE ${WORK}/one.cpp "namespace n { struct Twin { int a; Twin() : a(1) {} }; }\nint f() { n::Twin t; return t.a; }\n")
file(WRITE ${WORK}/two.cpp "namespace n { struct Twin { double a; int b; Twin() : a(1), b(2) {} }; }\nint f();\nint main() { n::Twin t; return f() + t.b; }\n")
execute_process(COMMAND ${COMPILER} ${flags} one.cpp two.cpp -o clash WORKING_DIRECTORY ${WORK} RESULT_VARIABLE refused
  ERROR_VARIABLE said)
if(refused EQUAL 0 OR NOT said MATCHES "One Definition Rule")
  message(FATAL_ERROR "this compiler does not notice two types of one name: ${said}")
endif()
find_program(AR NAMES gcc-ar REQUIRED)
find_program(RANLIB NAMES gcc-ranlib REQUIRED)
string(JOIN " " flags -g0 ${flags})
execute_process(COMMAND ${CMAKE_COMMAND} -S ${SOURCE} -B ${WORK}/build -G Ninja -DCMAKE_CXX_COMPILER=${COMPILER} -DCMAKE_BUILD_TYPE=None
  "-DCMAKE_CXX_FLAGS=${flags}" -DCMAKE_AR=${AR} -DCMAKE_RANLIB=${RANLIB} -DLUMWRIGHT_TESTS=OFF -DCMAKE_UNITY_BUILD=ON
  OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
execute_process(COMMAND ${CMAKE_COMMAND} --build ${WORK}/build --target lumwright COMMAND_ERROR_IS_FATAL ANY)
