import { springForce } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const openSpringForce = quantity({
  id: "openSpringForce",
  name: "Spring force at full lift",
  symbol: "F_o",
  unit: "N",
  decimals: 0,
  system: "valve-train",
  meaning: "Force of the valve spring with the inlet valve fully open.",
  inputs: { F_s: "valveSpring.seatForce", k_s: "valveSpring.rate", L_i: "inletValveLift" },
  formula: "F_s + k_s * L_i",
  compute: ({ F_s, k_s, L_i }) => springForce({ seatForce: F_s, springRate: k_s, lift: L_i }),
  shape: "monotone",
  valid: "springs of constant rate; the spring of the inlet valve",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_s: "900 N", k_s: "82 N/mm", L_i: "16.19 mm" }, expect: "2228 N" }],
});
