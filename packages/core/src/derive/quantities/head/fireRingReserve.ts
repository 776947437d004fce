import { quantity } from "../../Quantity.ts";

export const fireRingReserve = quantity({
  id: "fireRingReserve",
  name: "Sealing reserve of the fire ring",
  symbol: "S_fr",
  unit: "1",
  decimals: 2,
  system: "head",
  meaning:
    "Line load left on the fire ring at peak pressure over the one that it needs to seal. Below 1 the gasket leaks; at 0 the head has lifted.",
  inputs: { q_l: "fireRingLoad", q_n: "headGasket.leastLineLoad" },
  formula: "q_l / q_n",
  compute: ({ q_l, q_n }) => q_l / q_n,
  shape: "guarded",
  valid: "as the line load; flat faces, no scratches across the ring",
  sources: [{ id: "definition" }],
  examples: [{ given: { q_l: "368.9 N/mm", q_n: "250 N/mm" }, expect: "1.48" }],
  display: true,
});
