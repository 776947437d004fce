import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { boreArea } from "./boreArea.ts";

test("example and boundary", () => {
  near(boreArea(86.5 * mm) * 1e4, 58.7655, 5e-5);
  refuses(() => boreArea(0), "bore");
  refusesNonFinite((bore: number) => boreArea(bore), 0.08);
});
