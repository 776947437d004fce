import { quantity } from "../../Quantity.ts";

export const mainsBesideThrows = quantity({
  id: "mainsBesideThrows",
  name: "Mains beside the throws",
  symbol: "n_mt",
  unit: "1",
  decimals: 0,
  system: "crankshaft",
  meaning:
    "Cylinders that the main bearings could take in with a main on both sides of every throw, less the cylinders there are: zero or more when every throw has its two mains, negative when throws have to share.",
  inputs: { n_main: "block.mainBearings", n_r: "crankshaft.rodsPerPin", z: "block.cylinders" },
  formula: "(n_main - 1) * n_r - z",
  compute: ({ n_main, n_r, z }) => (n_main - 1) * n_r - z,
  shape: "monotone",
  valid:
    "one throw between two neighbouring mains; a crankpin split for an even firing order counts as two pins",
  sources: [{ id: "definition" }],
  examples: [
    { given: { n_main: "5", n_r: "2", z: "8" }, expect: "0" },
    { given: { n_main: "3", n_r: "1", z: "4" }, expect: "-2" },
  ],
});
