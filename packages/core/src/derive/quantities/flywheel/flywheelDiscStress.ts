import { quantity } from "../../Quantity.ts";

export const flywheelDiscStress = quantity({
  id: "flywheelDiscStress",
  name: "Stress in the plain disc",
  symbol: "sigma_fd",
  unit: "MPa",
  decimals: 1,
  system: "flywheel",
  meaning: "Hoop stress at the hole of a plain disc at overspeed, before bolt holes and steps raise it.",
  inputs: { sigma_f: "flywheelStress", k_f: "flywheel.stressRaise" },
  formula: "sigma_f / k_f",
  compute: ({ sigma_f, k_f }) => sigma_f / k_f,
  shape: "monotone",
  valid: "as the stress in the flywheel",
  sources: [{ id: "timoshenko" }],
  examples: [{ given: { sigma_f: "75.7 MPa", k_f: "2.5" }, expect: "30.3 MPa" }],
});
