import { valveEvent } from "../../valves/valveEvent.ts";

export const exhaustOpening = valveEvent({
  id: "exhaustOpening",
  name: "Exhaust opening",
  symbol: "theta_eo",
  side: "exhaust",
  from: "bottom",
  counted: "before bottom dead centre",
  expect: "68.0 deg",
});
