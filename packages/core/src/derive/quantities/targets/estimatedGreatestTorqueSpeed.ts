import { greatestEstimated } from "../../torqueEstimate.ts";

export const estimatedGreatestTorqueSpeed = greatestEstimated({
  id: "estimatedGreatestTorqueSpeed",
  name: "Speed of the greatest torque, estimated",
  symbol: "n_eg",
  unit: "rpm",
  meaning: "Speed at which the estimated torque is greatest.",
  of: "angularSpeed",
  expect: "4040 rpm",
});
