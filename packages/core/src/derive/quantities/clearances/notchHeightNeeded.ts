import { neededNotch } from "../../neededNotch.ts";

export const notchHeightNeeded = neededNotch({
  id: "notchHeightNeeded",
  size: "height",
  symbol: "q_nn",
  meaning:
    "Least height of a notch above the lower edge of the cylinder that gives the wanted rod clearance when its depth and width do not limit; 0 when none is needed. Depth and height do not depend on each other: a notch of both sizes, wide enough for the rod, gives that clearance.",
  expect: ["4.62 mm", "5.50 mm"],
});
