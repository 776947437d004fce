import { neededNotch } from "../../neededNotch.ts";

export const notchDepthNeeded = neededNotch({
  id: "notchDepthNeeded",
  size: "depth",
  symbol: "p_nn",
  meaning:
    "Least depth of a notch, measured straight outwards from the bore surface where the side face of the rod passes, that gives the wanted rod clearance when its height and width do not limit; 0 when none is needed.",
  expect: ["2.61 mm", "3.49 mm"],
});
