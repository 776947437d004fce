import { mainBearingLoad } from "../../bearings/mainBearingLoad.ts";

export const mainBearingMeanLoad = mainBearingLoad({
  id: "mainBearingMeanLoad",
  name: "Mean load of the most loaded main bearing",
  symbol: "F_mm",
  meaning:
    "Mean size over the cycle of the load on the main bearing that has the largest, at the power speed: what its steady film and its heat follow.",
  take: "mean",
  expect: ["13.0 kN", "20.2 kN", "12.0 kN"],
});
