import { valveEvent } from "../../valves/valveEvent.ts";

export const inletOpening = valveEvent({
  id: "inletOpening",
  name: "Inlet opening",
  symbol: "theta_io",
  side: "inlet",
  from: "overlap",
  counted: "before top dead centre",
  expect: "28.0 deg",
});
