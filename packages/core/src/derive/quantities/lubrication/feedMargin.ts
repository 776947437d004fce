import { quantity } from "../../Quantity.ts";

export const feedMargin = quantity({
  id: "feedMargin",
  name: "Oil pressure left for the crankpins",
  symbol: "Delta_p",
  unit: "bar",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Gallery pressure at the highest speed less what the way into the turning journal takes. What is left has to push oil on to the rod bearings.",
  inputs: { p_o: "oil.pressure", p_z: "feedHead" },
  formula: "p_o - p_z",
  compute: ({ p_o, p_z }) => p_o - p_z,
  shape: "monotone",
  valid: "as the head",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_o: "5.5 bar", p_z: "2.3 bar" }, expect: "3.20 bar" }],
  display: true,
});
