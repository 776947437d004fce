import { nearestPistons, pistonPairExample, pistonPairInputs } from "../../clearances/pistonPair.ts";
import { quantity } from "../../Quantity.ts";

export const pistonToPistonAngle = quantity({
  id: "pistonToPistonAngle",
  name: "Crank angle of the pistons nearest to each other",
  symbol: "theta_pp",
  unit: "deg",
  decimals: 1,
  system: "clearances",
  meaning:
    "Crank angle at which the two pistons of a crankpin come closest, from the top dead centre of the one that gets there first.",
  inputs: pistonPairInputs,
  method: "The crank angle at which the least distance is found.",
  compute: (n) => nearestPistons(n).angle,
  shape: "guarded",
  valid: "as for the distance itself",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: pistonPairExample, expect: "225.0 deg" }],
  display: true,
  nominalOnly: true,
});
