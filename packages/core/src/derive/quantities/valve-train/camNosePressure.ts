import { camContactPressure } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const camNosePressure = quantity({
  id: "camNosePressure",
  name: "Contact pressure at the nose",
  symbol: "p_H",
  unit: "MPa",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Hertzian pressure between the nose of the lobe and its follower with the open spring at idle, where inertia does not yet relieve the nose.",
  inputs: {
    F_o: "openSpringForce",
    R_r: "valveDrive.rockerRatio",
    b_l: "camshaft.lobeWidth",
    R_n: "camshaft.noseRadius",
    R_ro: "valveDrive.rollerRadius",
  } as Readonly<Record<string, string>>,
  routes: [{ needs: ["R_ro"] }, { needs: [], assumes: "a flat follower, since no roller radius is entered" }],
  method: "Hertz’s line contact of two steel bodies over the width of the lobe.",
  cases: {
    1: `sqrt(F_o * R_r * ${STEEL.modulusText} * (1 / R_n + 1 / R_ro) / (2 * pi * b_l * (1 - ${STEEL.poissonRatio}^2)))`,
    2: `sqrt(F_o * R_r * ${STEEL.modulusText} / (2 * pi * b_l * R_n * (1 - ${STEEL.poissonRatio}^2)))`,
  },
  compute: ({ F_o, R_r, b_l, R_n, R_ro }, _words, _tables, route) =>
    camContactPressure({
      force: F_o! * R_r!,
      width: b_l!,
      camRadius: R_n!,
      followerCurvature: route === 0 ? 1 / R_ro! : 0,
      cam: STEEL,
      follower: STEEL,
    }).pressure,
  shape: "monotone",
  valid: "steel lobes and followers that touch over the whole width; iron touches more softly",
  sources: [{ id: "shigley", where: "Hertzian contact of cylinders" }],
  examples: [
    {
      given: { F_o: "1875 N", R_r: "1.6", b_l: "12 mm", R_n: "9 mm", R_ro: "9.5 mm" },
      expect: "1392 MPa",
    },
  ],
});
