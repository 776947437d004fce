import { test } from "vitest";
import { bar, mm, near, nearly, refuses, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { centrifugalHead } from "./centrifugalHead.ts";

const drilling = { density: 850, angularSpeed: 7800 * rpm, journalRadius: 28.5 * mm, leastRadius: 0 };

test("examples and boundary", () => {
  near(centrifugalHead(drilling) / bar, 2.3, 0.05);
  // Added up over thin shells of the turning column.
  let pressure = 0;
  for (let i = 0; i < 1000; i++) {
    const radius = 10 * mm + ((i + 0.5) * 18.5 * mm) / 1000;
    pressure += 850 * drilling.angularSpeed ** 2 * radius * ((18.5 * mm) / 1000);
  }
  nearly(centrifugalHead({ ...drilling, leastRadius: 10 * mm }), pressure);
  nearly(centrifugalHead({ ...drilling, leastRadius: 28.5 * mm }), 0);
  refuses(() => centrifugalHead({ ...drilling, leastRadius: 30 * mm }), "leastRadius");
  refuses(() => centrifugalHead({ ...drilling, density: 0 }), "density");
  refusesNonFinite(centrifugalHead, drilling);
});
