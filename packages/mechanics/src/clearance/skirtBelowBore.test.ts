import { test } from "vitest";
import { mm, near, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { skirtBelowBore } from "./skirtBelowBore.ts";

test("example and boundary", () => {
  const input = { crank: offsetCrank, skirtDepth: 27 * mm, cylinderBottomHeight: 71 * mm };
  near(skirtBelowBore(input) / mm, 0.501, 5e-4);
  refuses(() => skirtBelowBore({ ...input, skirtDepth: 0 }), "skirtDepth");
  refusesNonFinite(skirtBelowBore, input);
});
