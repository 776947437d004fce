import { torsionFrequency } from "../../torsionFrequency.ts";

export const secondTorsionalFrequency = torsionFrequency({
  id: "secondTorsionalFrequency",
  name: "Second torsional frequency",
  symbol: "f_2",
  mode: 2,
  expect: "1090 Hz",
  fromTable: "318 Hz",
});
