import { gasketVolume as volumeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const gasketVolume = quantity({
  id: "gasketVolume",
  name: "Gasket volume",
  symbol: "V_g",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning: "Volume inside the opening of the compressed head gasket.",
  inputs: { B_g: "headGasket.bore", t_g: "headGasket.compressedThickness" },
  formula: "pi / 4 * B_g^2 * t_g",
  compute: ({ B_g, t_g }) => volumeOf({ gasketBore: B_g, compressedThickness: t_g }),
  shape: "monotone",
  valid: "round openings; the free thickness gives too much",
  sources: [{ id: "definition" }],
  examples: [{ given: { B_g: "87.5 mm", t_g: "1 mm" }, expect: "6.01 cm3" }],
});
