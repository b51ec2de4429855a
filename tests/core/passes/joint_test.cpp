// Passes on a jointer, one plan of them worked out by hand.
#include "core/passes/joint.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

/// Common practice, no source: at most 1/8 in a pass; crown up; the fence at 90 degrees. The rest is ours.
JointerCard jointer() {
  return {{{{inches(4), inches(1, 8)}, {inches(8), inches(1, 16)}},
           inches(12),
           inches(1, 2),
           inches(1, 32),
           inches(1, 64),
           inches(1, 64)}};
}

BoardToJoint face() { return {Joint::face, inches(24), inches(4), inches(3, 2), inches(1, 4), true, false}; }

std::string not_jointed(const JointerCard& card, const BoardToJoint& board) {
  const auto plan = plan_joint(card, board);
  if (plan) return "planned";
  CHECK_FALSE(plan.error().what.empty());
  CHECK_FALSE(plan.error().remedy.empty());
  return plan.error().where;
}

}  // namespace

TEST_CASE(
    "A quarter inch of hollow under 1/8 a pass takes two by arithmetic, and four under a scale within 1/64",
    "[passes]") {
  const auto plan = plan_joint(jointer(), face());
  REQUIRE(plan);
  CHECK(plan->floor == 2);
  // The last is set at 1/64, so that it takes 1/32 at most. 15/64 are left, under 7/64 a pass: three of 5/64.
  const JointPass each{inches(5, 64), inches(6, 64), false};
  CHECK(plan->passes == std::vector<JointPass>{each, each, each, {inches(1, 64), inches(1, 32), true}});
}

TEST_CASE("Settings are on the marks of the scale, and a little hollow takes one light pass", "[passes]") {
  BoardToJoint board = face();
  // 10.7 marks: 11, of which the last takes one, and the others ten under seven a pass.
  board.hollow = inches(107, 640);
  const JointPass each{inches(5, 64), inches(6, 64), false};
  const JointPass last{inches(1, 64), inches(2, 64), true};
  CHECK(plan_joint(jointer(), board)->passes == std::vector{each, each, last});
  board.hollow = inches(1, 100);
  CHECK(plan_joint(jointer(), board)->passes == std::vector{last});
}

TEST_CASE("How deep an edge may be cut goes by how thick the board is", "[passes]") {
  BoardToJoint edge = face();
  edge.joint = Joint::edge;
  edge.fence_at_90 = true;
  edge.width = inches(10);
  CHECK(plan_joint(jointer(), edge)->deepest == inches(1, 8));
  edge.thickness = inches(5);
  CHECK(plan_joint(jointer(), edge)->deepest == inches(1, 16));
}

TEST_CASE("An edge is not planed away: what it could leave is no narrower than the card allows", "[passes]") {
  BoardToJoint edge{Joint::edge, inches(24), inches(50, 64), inches(1), inches(1, 4), true, true};
  // 1/4, the scale's 1/64 and a mark may come off, and 1/2, as the thinnest, must be left.
  CHECK(not_jointed(jointer(), edge) == "planned");
  edge.width = inches(49, 64);
  CHECK(not_jointed(jointer(), edge) == "width");
  const auto refused = plan_joint(jointer(), edge);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what ==
        "It could be left 31/64 in wide, and the narrowest board that an edge may leave on this machine is "
        "1/2 in.");
  CHECK(refused.error().remedy ==
        "Joint the edge while the board is wide, and rip it to its width afterwards.");
  JointerCard wider = jointer();
  wider.narrowest = inches(3, 4);
  edge.width = inches(66, 64);
  CHECK(not_jointed(wider, edge) == "planned");
  edge.width = inches(65, 64);
  CHECK(not_jointed(wider, edge) == "width");
  // A face goes by its thickness alone.
  BoardToJoint narrow = face();
  narrow.width = inches(1, 2);
  CHECK(not_jointed(wider, narrow) == "planned");
  // More hollow than it is wide.
  edge.width = inches(1, 2);
  edge.hollow = inches(1);
  CHECK(not_jointed(jointer(), edge) == "width");
}

TEST_CASE("What can't be jointed is refused with the reason and the remedy", "[passes]") {
  BoardToJoint board = face();
  board.crown_up = false;
  CHECK(not_jointed(jointer(), board) == "crown_up");
  board = face();
  board.joint = Joint::edge;
  CHECK(not_jointed(jointer(), board) == "fence_at_90");
  board = face();
  board.length = inches(11);
  CHECK(not_jointed(jointer(), board) == "length");
  board = face();
  board.width = inches(9);
  CHECK(not_jointed(jointer(), board) == "width");
  board = face();
  board.hollow = inches(0);
  CHECK(not_jointed(jointer(), board) == "board");
  // 1/4, the scale's 1/64 and a mark may come off, and 1/2 must be left.
  board = face();
  board.thickness = inches(50, 64);
  CHECK(not_jointed(jointer(), board) == "planned");
  board.thickness = inches(49, 64);
  CHECK(not_jointed(jointer(), board) == "thickness");
  board = face();
  board.hollow = inches(30);
  CHECK(not_jointed(jointer(), board) == "hollow");
  board.hollow = inches(3);
  CHECK(plan_joint(jointer(), board).error().what.rfind("Nothing could be left of it, and", 0) == 0);
  JointerCard changed = jointer();
  changed.limits.shortest.reset();
  CHECK(not_jointed(changed, face()) == "shortest");
  changed = jointer();
  changed.narrowest = inches(0);
  CHECK(not_jointed(changed, face()) == "narrowest");
  changed = jointer();
  changed.limits.scale_error = inches(1, 32);
  CHECK(not_jointed(changed, face()) == "scale_error");
  changed = jointer();
  changed.limits.scale_marks = inches(1, 32);
  CHECK(not_jointed(changed, face()) == "scale_error");
}
