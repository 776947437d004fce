import { valveEvent } from "../../valves/valveEvent.ts";

export const inletClosingFromLobe = valveEvent({
  id: "inletClosingFromLobe",
  name: "Inlet closing from the lobe",
  symbol: "theta_ivc",
  side: "inlet",
  from: "bottom",
  counted: "after bottom dead centre",
  expect: "68.0 deg",
});
