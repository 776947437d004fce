import { camshaftObstacle, railObstacle, rodToOppositeCylinder, roundObstacle } from "@trialfit/mechanics";
import { rodSweepExample } from "../rodSweep.ts";
import { fixedObstacle, type RodObstacle } from "./RodObstacle.ts";

const { r, l, e, outline, B, e_c, w, z_0 } = rodSweepExample;
const rod = { r, l, e, outline };

export const panRail = fixedObstacle({
  words: "the oil pan rails",
  inputs: { x_pr: "block.panRailHalfWidth", y_pr: "block.panRailHeight", gamma: "block.bankAngle" },
  metal: (n, tilts) =>
    railObstacle({ railHalfWidth: n.x_pr!, railHeight: n.y_pr!, bankAngle: n.gamma! }, tilts),
  method: "least distance to the metal outside of the rail’s inner edge and above its face",
  valid: "rails square to the middle plane of the block; with two banks the rods of both are swept",
  given: { ...rod, x_pr: "97 mm", y_pr: "-58 mm", gamma: "0 deg" },
});

export const squirter = fixedObstacle({
  words: "the oil squirter",
  inputs: { x_sq: "block.squirterAcross", y_sq: "block.squirterHeight", r_sq: "block.squirterRadius" },
  metal: (n) => roundObstacle({ x: n.x_sq!, y: n.y_sq!, radius: n.r_sq! }),
  method: "least distance to the squirter’s nozzle, taken as round",
  valid: "a squirter that lies in the plane of the rod; beside it the rod passes freely",
  given: { ...rod, x_sq: "50 mm", y_sq: "67 mm", r_sq: "1 mm" },
});

export const camshaftEnvelope = fixedObstacle({
  words: "the camshaft",
  inputs: {
    x_cs: "block.camshaftAcross",
    y_cs: "block.camshaftHeight",
    gamma: "block.bankAngle",
    R_bc: "camshaft.baseCircleRadius",
    h_i: "camshaft.inletLobeLift",
    h_e: "camshaft.exhaustLobeLift",
  },
  metal: (n, tilts) =>
    camshaftObstacle(
      {
        across: n.x_cs!,
        height: n.y_cs!,
        bankAngle: n.gamma!,
        lobeRadius: n.R_bc! + Math.max(n.h_i!, n.h_e!),
      },
      tilts,
    ),
  method: "least distance to the circle that the highest lobe sweeps",
  valid:
    "on the safe side: a lobe need not point at the rod when the rod passes, nor lie in its plane. With two banks the rods of both are swept",
  given: {
    ...rod,
    x_cs: "0 mm",
    y_cs: "125 mm",
    gamma: "90 deg",
    R_bc: "15 mm",
    h_i: "9 mm",
    h_e: "8.6 mm",
  },
});

export const oppositeCylinder: RodObstacle = {
  words: "the cylinder bottom of the other bank",
  inputs: {
    B: "block.bore",
    e_c: "block.cylinderAxisOffset",
    y_b: "block.cylinderBottomHeight",
    w: "connectingRod.bigEndWidth",
    z_0: "connectingRod.planeOffset",
    gamma: "block.bankAngle",
    s_bk: "block.bankStagger",
  },
  nearest: (n, swept) =>
    rodToOppositeCylinder({
      ...swept,
      bore: n.B!,
      cylinderAxisOffset: n.e_c!,
      cylinderBottomHeight: n.y_b!,
      bigEndWidth: n.w!,
      planeOffset: n.z_0!,
      bankAngle: n.gamma!,
      bankStagger: n.s_bk!,
    }),
  method:
    "least distance in space to the round bore of the other cylinder on its crankpin, above its lower edge",
  valid:
    "two cylinders on one crankpin, notches left out; the metal of a bank ends at the middle plane of the block",
  given: { ...rod, B, e_c, y_b: "90 mm", w, z_0, gamma: "90 deg", s_bk: "22 mm" },
};
