import { test } from "vitest";
import { deg, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { localCrankAngle } from "./localCrankAngle.ts";

test("pin angle adds, bank angle subtracts", () => {
  const input = { crankAngle: 10 * deg, pinAngle: 90 * deg, bankAngle: 45 * deg };
  nearly(localCrankAngle(input), 55 * deg);
  refusesNonFinite(localCrankAngle, input);
});
