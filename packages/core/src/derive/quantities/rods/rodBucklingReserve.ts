import { rodBucklingLoad } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBucklingReserve = quantity({
  id: "rodBucklingReserve",
  name: "Buckling reserve of the rod",
  symbol: "S_k",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "Load at which the rod bends aside over the gas force at peak pressure, in the plane in which it is weaker.",
  inputs: {
    l: "connectingRod.length",
    A_r: "connectingRod.beamArea",
    I_x: "connectingRod.beamInertiaInPlane",
    I_y: "connectingRod.beamInertiaSideways",
    E_r: "connectingRod.modulus",
    R_r: "connectingRod.yieldStrength",
    F_g: "gasForce",
  },
  method:
    "Column of the rod’s length, hinged in the plane in which it swings and held at its ends sideways: Johnson’s formula where it is stocky, Euler’s where it is slender; the lesser load over the gas force.",
  compute: ({ l, A_r, I_x, I_y, E_r, R_r, F_g }) =>
    rodBucklingLoad({
      rodLength: l,
      area: A_r,
      secondMomentInPlane: I_x,
      secondMomentSideways: I_y,
      elasticModulus: E_r,
      yieldStrength: R_r,
    }).load / F_g,
  shape: "monotone",
  valid: "a straight beam of one section; bend and twist of the rod lower it",
  sources: [{ id: "shigley", where: "columns, Johnson and Euler" }],
  examples: [
    {
      given: {
        l: "144.5 mm",
        A_r: "240 mm2",
        I_x: "26000 mm4",
        I_y: "7500 mm4",
        E_r: "206 GPa",
        R_r: "1050 MPa",
        F_g: "92.8494 kN",
      },
      expect: "2.65",
    },
  ],
  display: true,
});
