import { notchRadialDepth, notchWall } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const notchWallLeft = quantity({
  id: "notchWallLeft",
  name: "Wall left behind the notch",
  symbol: "t_nl",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least cylinder wall less what the notch takes from it at its deepest place. A floor cut flat is deepest at its ends, where the bore curves away; one that follows the bore is as deep everywhere as at the rod's side. Zero or below means that the notch breaks through.",
  inputs: {
    t_w: "block.leastWall",
    B: "block.bore",
    w: "connectingRod.bigEndWidth",
    z_0: "connectingRod.planeOffset",
    p_n: "block.notchDepth",
    W_n: "block.notchWidth",
  },
  choices: { floor: "block.notchFloor" },
  method:
    "The floor stands the notch's depth beyond the bore wall at the rod's side. Its radial depth there (floor that follows the bore) or at half the notch's width (flat floor) comes off the wall.",
  cases: {
    flat: "t_w - max(0, sqrt((sqrt(B^2 / 4 - (z_0 + w / 2)^2) + p_n)^2 + max(z_0 + w / 2, W_n / 2)^2) - B / 2)",
    "follows-bore": "t_w - max(0, sqrt((sqrt(B^2 / 4 - (z_0 + w / 2)^2) + p_n)^2 + (z_0 + w / 2)^2) - B / 2)",
  },
  compute: ({ t_w, B, w, z_0, p_n, W_n }, { floor }) => {
    const sideFaceDistance = z_0 + w / 2;
    const distance = floor === "flat" ? Math.max(sideFaceDistance, W_n / 2) : sideFaceDistance;
    return notchWall({
      wallThickness: t_w,
      notchDepth: notchRadialDepth({ bore: B, sideFaceDistance, notchDepth: p_n, distance }),
    });
  },
  shape: "guarded",
  valid:
    "a cylinder whose outside is round about the bore, its wall measured at the notch; of a liner the liner's own wall",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        t_w: "7 mm",
        B: "86.5 mm",
        w: "21.8 mm",
        z_0: "0.3 mm",
        p_n: "2 mm",
        W_n: "31 mm",
        floor: "flat",
      },
      expect: "3.81 mm",
    },
    {
      given: {
        t_w: "7 mm",
        B: "86.5 mm",
        w: "21.8 mm",
        z_0: "0.3 mm",
        p_n: "2 mm",
        W_n: "31 mm",
        floor: "follows-bore",
      },
      expect: "5.07 mm",
    },
  ],
});
