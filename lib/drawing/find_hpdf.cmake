# libharu has no cmake package everywhere: hpdf::hpdf from its header and library. Installed beside lumwright-config.cmake.
if(NOT TARGET hpdf::hpdf)
  find_path(HPDF_INCLUDE_DIR hpdf.h REQUIRED)
  find_library(HPDF_LIBRARY hpdf REQUIRED)
  mark_as_advanced(HPDF_INCLUDE_DIR HPDF_LIBRARY)
  add_library(hpdf::hpdf UNKNOWN IMPORTED)
  set_target_properties(hpdf::hpdf PROPERTIES
    IMPORTED_LOCATION ${HPDF_LIBRARY} INTERFACE_INCLUDE_DIRECTORIES ${HPDF_INCLUDE_DIR})
endif()
