import { beamTension } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBeamTension = quantity({
  id: "rodBeamTension",
  name: "Tension in the rod’s beam",
  symbol: "sigma_t",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning: "Stress in the thinnest section of the beam when the reciprocating mass pulls at it at overspeed.",
  inputs: { m_rec: "reciprocatingMass", a_o: "accelerationAtOverspeed", A_r: "connectingRod.beamArea" },
  formula: "m_rec * a_o / A_r",
  compute: ({ m_rec, a_o, A_r }) => beamTension({ mass: m_rec, acceleration: a_o, area: A_r }),
  shape: "guarded",
  valid: "the part of the beam above the section counts with the small end",
  sources: [{ id: "kolchin-demidov" }],
  examples: [{ given: { m_rec: "634 g", a_o: "45930 m/s2", A_r: "240 mm2" }, expect: "121 MPa" }],
});
