import { torquePreload } from "../../joints/torquePreload.ts";

export const flywheelPreload = torquePreload({
  id: "flywheelPreload",
  name: "Preload of one flywheel bolt",
  symbol: "F_vf",
  system: "flywheel",
  part: "flywheelFastener",
  display: true,
});
