import { quantity } from "../../Quantity.ts";

export const followerOpenLoad = quantity({
  id: "followerOpenLoad",
  name: "Load between lobe and follower at full lift",
  symbol: "F_fo",
  unit: "N",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Force of the open spring brought to the follower by the rocker ratio. At idle the nose bears all of it; at speed inertia takes some of it away.",
  inputs: { F_o: "openSpringForce", R_r: "valveDrive.rockerRatio" },
  formula: "F_o * R_r",
  compute: ({ F_o, R_r }) => F_o * R_r,
  shape: "monotone",
  valid: "a slow turn; gas force on the valve left out",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_o: "1060 N", R_r: "1.6" }, expect: "1696 N" }],
});
