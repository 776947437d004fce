import { torsionFrequency } from "../../torsionFrequency.ts";

export const firstTorsionalFrequency = torsionFrequency({
  id: "firstTorsionalFrequency",
  name: "First torsional frequency",
  symbol: "f_1",
  mode: 1,
  expect: "441 Hz",
  fromTable: "260 Hz",
});
