import { shaking } from "../../shaking.ts";

export const primaryCouple = shaking({
  id: "primaryCouple",
  name: "Primary shaking couple",
  symbol: "M_1",
  of: "couple",
  order: 1,
  part: "greatest",
  meaning:
    "Greatest free couple of the first order of the reciprocating masses about the middle of the crankshaft at the highest speed, before counterweights.",
  four: "0 N m",
  eight: "7041 N m",
  two: "1406 N m",
});
