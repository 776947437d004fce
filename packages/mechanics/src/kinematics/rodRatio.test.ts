import { test } from "vitest";
import { near, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { rodRatio } from "./rodRatio.ts";

test("example and boundary", () => {
  near(rodRatio(offsetCrank), 1.5372, 5e-5);
  refuses(() => rodRatio({ rodLength: 0.1, throwRadius: 0 }), "throwRadius");
  refusesNonFinite(rodRatio, { rodLength: 0.1445, throwRadius: 0.047 });
});
