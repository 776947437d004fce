import { injectorDuty as dutyOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const injectorDuty = quantity({
  id: "injectorDuty",
  name: "Injector duty",
  symbol: "D_inj",
  unit: "%",
  decimals: 1,
  system: "charge",
  meaning:
    "Share of the time that the injectors must be open at the target power. Above 80 to 90 % they have no time left to open and shut; above 100 % the fuel is not to be had.",
  inputs: { m_f: "fuelFlow", N_inj: "fuel.injectors", m_inj: "injectorFlowInUse" },
  formula: "m_f / (N_inj * m_inj)",
  compute: ({ m_f, N_inj, m_inj }) => dutyOf({ fuelFlow: m_f, injectors: N_inj, injectorFlow: m_inj }),
  shape: "monotone",
  valid: "all injectors alike",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_f: "53.78 g/s", N_inj: "4", m_inj: "17.5 g/s" }, expect: "76.8 %" }],
  display: true,
});
