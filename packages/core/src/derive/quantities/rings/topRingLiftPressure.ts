import { ringLiftPressure } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Ring steel or iron [kg/m3]. Source: from memory. */
const RING_DENSITY = 7800;

export const topRingLiftPressure = quantity({
  id: "topRingLiftPressure",
  name: "Pressure that holds the top ring down",
  symbol: "p_f",
  unit: "bar",
  decimals: 2,
  system: "rings",
  meaning:
    "Difference of pressure above and below the top ring that its inertia can overcome near top dead centre at the highest speed. A thinner ring is lifted less easily; once it lifts, it flutters and blows by.",
  inputs: { h_r1: "ringSet.topRingHeight", a_max: "greatestPistonAcceleration" },
  formula: `${RING_DENSITY} * h_r1 * a_max`,
  compute: ({ h_r1, a_max }) =>
    ringLiftPressure({ ringHeight: h_r1, ringDensity: RING_DENSITY, acceleration: a_max }),
  shape: "guarded",
  valid: "friction and twist of the ring left out",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_r1: "1.2 mm", a_max: "41560 m/s2" }, expect: "3.89 bar" }],
  display: true,
});
