import { shaking } from "../../shaking.ts";

export const secondaryForce = shaking({
  id: "secondaryForce",
  name: "Secondary shaking force",
  symbol: "F_2",
  of: "force",
  order: 2,
  part: "greatest",
  meaning:
    "Greatest free force of the second order, which the slant of the rods makes, at the highest speed. It shakes the engine twice a turn; a longer rod makes it smaller.",
  four: "26.59 kN",
  eight: "0.00 kN",
  two: "0.00 kN",
});
