import { threadGeometry } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const headFastenerStressArea = quantity({
  id: "headFastenerStressArea",
  name: "Stress area of a head fastener",
  symbol: "A_h",
  unit: "mm2",
  decimals: 1,
  system: "fasteners",
  meaning:
    "Area of the thread of a head fastener that carries tension: a circle midway between pitch and root diameter.",
  inputs: { d: "headFastener.threadDiameter", P: "headFastener.threadPitch" },
  formula: "pi / 4 * (d - 13 * sqrt(3) / 24 * P)^2",
  compute: ({ d, P }) => threadGeometry({ majorDiameter: d, pitch: P }).stressArea,
  shape: "monotone",
  valid:
    "metric threads; for inch threads it comes out about 1 % larger than their own tables; pitch below 0.6 of the diameter",
  sources: [{ id: "iso-898-1" }],
  examples: [
    {
      given: { d: "10 mm", P: "1.5 mm" },
      expect: "58.0 mm2",
      from: { id: "iso-898-1", where: "nominal stress areas, coarse thread" },
    },
  ],
  display: true,
});
