import { greatestEstimated } from "../../torqueEstimate.ts";

export const estimatedGreatestTorque = greatestEstimated({
  id: "estimatedGreatestTorque",
  name: "Greatest torque, estimated",
  symbol: "T_eg",
  unit: "N m",
  meaning:
    "Greatest torque that the target power lets expect at some lower speed, with an assumed shape of the filling. The explanation lists torque and power every 500 rpm.",
  of: "torque",
  expect: "244 N m",
});
