import { quantity } from "../../Quantity.ts";

export const followerInBore = quantity({
  id: "followerInBore",
  name: "Follower in its bore",
  symbol: "C_fb",
  unit: "mm",
  decimals: 3,
  system: "valve-train",
  meaning:
    "Bore in block or head less the follower or bucket that slides in it, across the diameter, cold. Negative: it does not go in.",
  inputs: { B_fb: "valveDrive.followerBore", D_fb: "valveDrive.followerBodyDiameter" },
  formula: "B_fb - D_fb",
  compute: ({ B_fb, D_fb }) => B_fb - D_fb,
  shape: "monotone",
  hot: { quantity: "followerInBoreHot" },
  valid: "both at 20 °C, a round bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { B_fb: "21.43 mm", D_fb: "21.39 mm" }, expect: "0.040 mm" }],
  display: true,
});
