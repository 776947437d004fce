import { crankingTorque as torqueOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crankingTorque = quantity({
  id: "crankingTorque",
  name: "Cranking torque of one cylinder",
  symbol: "T_cr",
  unit: "N m",
  decimals: 1,
  system: "crankshaft",
  meaning:
    "Greatest torque with which one cylinder’s compression holds against the starter. Friction comes on top, 20 to 40 %.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    B: "block.bore",
    V_c: "clearanceVolume",
    theta_ic: "camshaft.inletClosing",
    p_a: "conditions.ambientPressure",
  },
  method:
    "Slow compression with heat lost (exponent 1.25) from inlet closing; excess pressure times bore area times the piston’s travel for a small turn; the greatest over the stroke.",
  compute: ({ r, l, e, B, V_c, theta_ic, p_a }) =>
    torqueOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      clearanceVolume: V_c,
      inletClosing: theta_ic,
      ambientPressure: p_a,
    }).torque,
  shape: "guarded",
  valid: "a slow turn without leakage",
  sources: [{ id: "taylor" }, { id: "common-practice", where: "exponent and share of friction" }],
  examples: [
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        B: "86.5 mm",
        V_c: "69.02 cm3",
        theta_ic: "68 deg",
        p_a: "0.96 bar",
      },
      expect: "87.0 N m",
    },
  ],
  display: true,
});
