import { threadGeometry } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBoltStressArea = quantity({
  id: "rodBoltStressArea",
  name: "Stress area of a rod bolt",
  symbol: "A_s",
  unit: "mm2",
  decimals: 1,
  system: "rods",
  meaning:
    "Area of the thread of a rod bolt that carries tension: a circle midway between pitch and root diameter.",
  inputs: { d: "rodBolt.threadDiameter", P: "rodBolt.threadPitch" },
  formula: "pi / 4 * (d - 13 * sqrt(3) / 24 * P)^2",
  compute: ({ d, P }) => threadGeometry({ majorDiameter: d, pitch: P }).stressArea,
  shape: "monotone",
  valid:
    "metric threads; for inch threads it comes out about 1 % larger than their own tables; pitch below 0.6 of the diameter",
  sources: [{ id: "iso-898-1" }],
  examples: [
    { given: { d: "9.525 mm", P: "1.058 mm" }, expect: "57.2 mm2" },
    {
      given: { d: "8 mm", P: "1.25 mm" },
      expect: "36.6 mm2",
      from: { id: "iso-898-1", where: "nominal stress areas, coarse thread" },
    },
  ],
  display: true,
});
