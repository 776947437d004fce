import { quantity } from "../../Quantity.ts";

/** What friction adds to the compression of one cylinder while the starter turns. */
const WITH_FRICTION = 1.3;

export const crankingReserve = quantity({
  id: "crankingReserve",
  name: "Starter reserve",
  symbol: "S_st",
  unit: "1",
  decimals: 2,
  system: "crankshaft",
  meaning:
    "Torque of the starter at the crankshaft over 1.3 times the greatest compression torque of one cylinder, the 0.3 for friction. Below 1 the engine stops against compression.",
  inputs: { T_st: "starter.torque", T_cr: "crankingTorque" },
  formula: `T_st / (${WITH_FRICTION} * T_cr)`,
  compute: ({ T_st, T_cr }) => T_st / (WITH_FRICTION * T_cr),
  shape: "guarded",
  valid: "one cylinder in compression at a time; friction between 20 and 40 % of the compression torque",
  sources: [{ id: "from-memory" }],
  examples: [{ given: { T_st: "143 N m", T_cr: "91 N m" }, expect: "1.21" }],
});
