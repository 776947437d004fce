import { volumeFlow } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const fuelVolumeFlow = quantity({
  id: "fuelVolumeFlow",
  name: "Fuel flow by volume",
  symbol: "q_f",
  unit: "L/h",
  decimals: 0,
  system: "charge",
  meaning:
    "Fuel that the engine takes at the target power, as pumps and lines are rated. Mind that a pump’s rating falls with pressure and voltage.",
  inputs: { m_f: "fuelFlow", rho_f: "fuel.density" },
  formula: "m_f / rho_f",
  compute: ({ m_f, rho_f }) => volumeFlow({ massFlow: m_f, density: rho_f }),
  shape: "monotone",
  valid: "liquid fuels",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_f: "53.78 g/s", rho_f: "781 kg/m3" }, expect: "248 L/h" }],
  display: true,
});
