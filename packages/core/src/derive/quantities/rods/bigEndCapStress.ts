import { eyeBendingStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bigEndCapStress = quantity({
  id: "bigEndCapStress",
  name: "Stress of the big-end cap, in its middle",
  symbol: "sigma_cap",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning:
    "Tensile stress at the back of the big-end cap, in its middle, at overspeed, when the crankpin pulls at it near the top dead centre of the gas exchange.",
  inputs: {
    F_j: "bigEndJointLoad",
    D_Hr: "connectingRod.bigEndBore",
    h_cap: "connectingRod.capDepth",
    b_cap: "connectingRod.capWidth",
    phi_b: "connectingRod.capHeldAngle",
  },
  method:
    "The crankpin presses on the cap with the cosine of the angle from its middle. Cap and lower shoulders are an arch that the beam holds at the held angle (Castigliano, thin ring). Its tension and moment stress the middle of the cap as a curved beam (Winkler-Bach); the greater of the stresses at its back and at its bore is taken.",
  compute: ({ F_j, D_Hr, h_cap, b_cap, phi_b }) => {
    const { inner, outer } = eyeBendingStress({
      force: F_j,
      section: { innerRadius: D_Hr / 2, depth: h_cap, width: b_cap },
      pressure: "cosine",
      heldAngle: phi_b,
      lastAngle: 0,
    });
    return Math.max(inner, outer);
  },
  shape: "guarded",
  valid:
    "an estimate: one section all round, the joint as stiff as the cap, the shells taken not to help. Towards the bolts a cap is taken to thicken as its moment turns round: corners at their seats and their own clamp are left out",
  sources: [
    { id: "shigley", where: "curved beams in bending" },
    { id: "timoshenko", where: "rings, from memory" },
    { id: "kolchin-demidov", where: "big end, from memory" },
  ],
  examples: [
    {
      given: { F_j: "36.7 kN", D_Hr: "51 mm", h_cap: "7.5 mm", b_cap: "20 mm", phi_b: "130 deg" },
      expect: "359 MPa",
    },
  ],
  display: true,
});
