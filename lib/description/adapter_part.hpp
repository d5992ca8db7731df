// What joins fan and chimney: tube, flange, box.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"

namespace lumwright::description::part {
struct AdapterTube {
  Given<Length> outside, wall, length, engaged, soot, measured_within;
  Text material, inlet;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"outside", "outside diameter: largest of several readings", "5/8 in"}, self.outside, Limits{"2 mm", "300 mm"});
    v({"wall", "wall thickness", "0.014 in"}, self.wall, Limits{"0.05 mm", "20 mm"});
    v({"length", "length from its mouth to the box", "42 mm"}, self.length, Limits{"2 mm", "2 m"});
    v({"engaged", "length that is inside the chimney", "34 mm"}, self.engaged, Limits{"1 mm", "2 m"});
    v({"material", "what it is made of", "brass"}, self.material, &metal_words);
    v({"inlet", "shape of its mouth", "square"}, self.inlet, &inlet_words);
    v({"soot", "soot to allow for on each side", "0.05 mm", expert}, self.soot, Limits{"0 mm", "2 mm"});
    v({"measured_within", "measuring uncertainty of its outside", "0.005 mm", expert}, self.measured_within,
      Limits{"0 mm", "2 mm"});
  }
};

struct FlangeHoles {
  Count count;
  Given<Length> pitch_circle;
  Text thread;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"count", "number of holes", "3"}, self.count, 1, 24);
    v({"pitch_circle", "diameter of the circle they lie on", "27 mm"}, self.pitch_circle, Limits{"3 mm", "500 mm"});
    v({"thread", "thread of the screws", "8BA"}, self.thread, nullptr);
  }
};

struct Flange {
  Given<Length> outside, thickness;
  Text material;
  FlangeHoles holes;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"outside", "outside diameter", "38 mm"}, self.outside, Limits{"4 mm", "500 mm"});
    v({"thickness", "thickness of the plate", "1.5 mm"}, self.thickness, Limits{"0.1 mm", "30 mm"});
    v({"material", "what it is made of", "brass", expert}, self.material, &metal_words);
    v.section({"holes", "screw holes", ""}, self.holes);
  }
};

struct Box {
  Given<Length> diameter, height, sheet;
  Text shape, material;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"shape", "round or square, seen from above", "round", expert}, self.shape, &shape_words);
    v({"diameter", "inside diameter of the box (of a square one: its side)", "84 mm"}, self.diameter,
      Limits{"10 mm", "1 m"});
    v({"height", "height inside", "52 mm"}, self.height, Limits{"3 mm", "1 m"});
    v({"sheet", "thickness of the sheet", "0.24 mm"}, self.sheet, Limits{"0.05 mm", "10 mm"});
    v({"material", "what it is made of", "tinplate"}, self.material, &metal_words);
  }
};

struct Bleed {
  Count holes;
  Given<Length> diameter;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"holes", "number of holes that let cool air into the box; 0 for none", "8"}, self.holes, 0, 200);
    v({"diameter", "diameter of each", "9 mm"}, self.diameter, Limits{"0.2 mm", "100 mm"});
  }
};

struct Adapter {
  AdapterTube tube;
  Flange flange;
  Box box;
  Text joint;
  Bleed bleed;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"tube", "the tube that slips into the chimney", ""}, self.tube);
    v.section({"flange", "the turned plate that carries the tube", ""}, self.flange);
    v.section({"box", "the box between tube and fan", ""}, self.box);
    v({"joint", "how tube and flange are joined", "silver braze"}, self.joint, &joint_words);
    v.section({"bleed", "holes that let cool air into the box", ""}, self.bleed);
  }
};
}  // namespace lumwright::description::part
