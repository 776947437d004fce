import { quantity } from "../../Quantity.ts";

export const keyShearStress = quantity({
  id: "keyShearStress",
  name: "Shear stress in the hub’s keys",
  symbol: "tau_k",
  unit: "MPa",
  decimals: 1,
  system: "flywheel",
  meaning:
    "Shear stress in the keys of the crankshaft’s front end when the drive of the compressor goes through them alone, at the speed of the power target.",
  inputs: {
    P_k: "compressorPower",
    n_P: "targets.powerSpeed",
    n_k: "damper.keyCount",
    b_k: "damper.keyWidth",
    l_k: "damper.keyLength",
    D_sn: "damper.snoutDiameter",
  },
  formula: "2 * P_k / (n_P * D_sn * n_k * b_k * l_k)",
  compute: ({ P_k, n_P, n_k, b_k, l_k, D_sn }) => (2 * P_k) / (n_P * D_sn * n_k * b_k * l_k),
  shape: "monotone",
  valid:
    "a drive that takes what the compressor takes; belts with slack and fast throttle closing load the keys in shocks",
  sources: [{ id: "shigley" }],
  examples: [
    {
      given: { P_k: "100 kW", n_P: "6000 rpm", n_k: "1", b_k: "6 mm", l_k: "30 mm", D_sn: "32 mm" },
      expect: "55.3 MPa",
    },
  ],
});
