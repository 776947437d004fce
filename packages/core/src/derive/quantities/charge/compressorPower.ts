import { compressorPower as powerOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressorPower = quantity({
  id: "compressorPower",
  name: "Power that the compressor takes",
  symbol: "P_k",
  unit: "kW",
  decimals: 1,
  system: "charge",
  meaning:
    "Power that goes into the air: from the exhaust when a turbine drives the compressor, from the crankshaft when a belt or gears do, and then the cylinders must make it on top of the target power, with what the drive loses.",
  inputs: { m_a: "airMassFlow", T_a: "conditions.ambientTemperature", T_co: "compressorOutletTemperature" },
  formula: "m_a * 1005 * (T_co - T_a)",
  compute: ({ m_a, T_a, T_co }) =>
    powerOf({ airMassFlow: m_a, inletTemperature: T_a, outletTemperature: T_co, mechanicalEfficiency: 1 }),
  shape: "monotone",
  valid: "before losses of the drive",
  sources: [{ id: "heywood" }],
  examples: [{ given: { m_a: "0.4195 kg/s", T_a: "293 K", T_co: "447 K" }, expect: "64.9 kW" }],
  display: true,
});
