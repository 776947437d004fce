import { shaking } from "../../shaking.ts";

export const primaryForce = shaking({
  id: "primaryForce",
  name: "Primary shaking force",
  symbol: "F_1",
  of: "force",
  order: 1,
  part: "greatest",
  meaning:
    "Greatest free force of the first order of the whole engine’s reciprocating masses at the highest speed, before counterweights. It shakes the engine once a turn.",
  four: "0.00 kN",
  eight: "0.00 kN",
  two: "28.12 kN",
});
