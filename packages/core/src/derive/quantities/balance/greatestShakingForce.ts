import { wholeShaking } from "../../wholeShaking.ts";

export const greatestShakingForce = wholeShaking({
  id: "greatestShakingForce",
  name: "Greatest shaking force",
  symbol: "F_sh",
  of: "force",
  meaning:
    "Greatest force with which all that moves shakes the engine on its mounts, all orders and what turns included, at the highest speed.",
  single: "9.19 kN",
  twin: "7.66 kN",
});
