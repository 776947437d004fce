import { valveEvent } from "../../valves/valveEvent.ts";

export const exhaustClosing = valveEvent({
  id: "exhaustClosing",
  name: "Exhaust closing",
  symbol: "theta_ec",
  side: "exhaust",
  from: "overlap",
  counted: "after top dead centre",
  expect: "28.0 deg",
});
