import { shaking } from "../../shaking.ts";

export const secondaryCouple = shaking({
  id: "secondaryCouple",
  name: "Secondary shaking couple",
  symbol: "M_2",
  of: "couple",
  order: 2,
  part: "greatest",
  meaning:
    "Greatest free couple of the second order about the middle of the crankshaft at the highest speed.",
  four: "0 N m",
  eight: "0 N m",
  two: "665 N m",
});
