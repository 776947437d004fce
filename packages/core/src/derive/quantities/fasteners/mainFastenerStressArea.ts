import { threadGeometry } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainFastenerStressArea = quantity({
  id: "mainFastenerStressArea",
  name: "Stress area of a main fastener",
  symbol: "A_m",
  unit: "mm2",
  decimals: 1,
  system: "fasteners",
  meaning:
    "Area of the thread of a main fastener that carries tension: a circle midway between pitch and root diameter.",
  inputs: { d: "mainFastener.threadDiameter", P: "mainFastener.threadPitch" },
  formula: "pi / 4 * (d - 13 * sqrt(3) / 24 * P)^2",
  compute: ({ d, P }) => threadGeometry({ majorDiameter: d, pitch: P }).stressArea,
  shape: "monotone",
  valid:
    "metric threads; for inch threads it comes out about 1 % larger than their own tables; pitch below 0.6 of the diameter",
  sources: [{ id: "iso-898-1" }],
  examples: [{ given: { d: "11 mm", P: "1.25 mm" }, expect: "75.8 mm2" }],
  display: true,
});
