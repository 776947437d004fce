import { injectorFlowNeeded as flowOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const injectorFlowNeeded = quantity({
  id: "injectorFlowNeeded",
  name: "Injector flow needed",
  symbol: "m_in",
  unit: "g/s",
  decimals: 2,
  system: "charge",
  meaning:
    "Flow that each injector must have, held open at the pressure used, so that its duty at the target power is not above the greatest allowed.",
  inputs: { m_f: "fuelFlow", N_inj: "fuel.injectors", D_g: "fuel.greatestDuty" },
  formula: "m_f / (N_inj * D_g)",
  compute: ({ m_f, N_inj, D_g }) => flowOf({ fuelFlow: m_f, injectors: N_inj, duty: D_g }),
  shape: "monotone",
  valid: "all injectors alike",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_f: "53.78 g/s", N_inj: "4", D_g: "85 %" }, expect: "15.82 g/s" }],
  display: true,
});
