import { quantity } from "../../Quantity.ts";

export const flangeReserve = quantity({
  id: "flangeReserve",
  name: "Reserve of the flywheel joint",
  symbol: "S_fl",
  unit: "1",
  decimals: 2,
  system: "flywheel",
  meaning:
    "Torque that the flywheel joint holds over the greatest torque of one cylinder. A clutch that grabs and torsional vibration ask for several times.",
  inputs: { T_fl: "flangeTorque", T_z: "greatestCylinderTorque" },
  formula: "T_fl / T_z",
  compute: ({ T_fl, T_z }) => T_fl / T_z,
  shape: "guarded",
  valid: "against the peak of a single cylinder; the others’ torque and the crankshaft’s twist left out",
  sources: [{ id: "definition" }],
  examples: [{ given: { T_fl: "2376 N m", T_z: "1800 N m" }, expect: "1.32" }],
  display: true,
});
