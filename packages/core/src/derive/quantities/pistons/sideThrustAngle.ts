import { cycleForce } from "../../cycleForce.ts";

export const sideThrustAngle = cycleForce({
  id: "sideThrustAngle",
  name: "Crank angle of the greatest side thrust",
  symbol: "theta_sd",
  system: "pistons",
  unit: "deg",
  decimals: 0,
  meaning: "Crank angle after firing top dead centre at which the piston presses hardest on the cylinder.",
  of: ({ side }) => side,
  take: "angle",
  expect: "31 deg",
});
