import { test } from "vitest";
import { mm, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { pinLineOffset } from "./pinLineOffset.ts";

test("a pin offset towards the thrust face moves the line to the -x side", () => {
  nearly(pinLineOffset({ cylinderAxisOffset: 0, pinOffset: 0.5 * mm }), -0.5 * mm);
  nearly(pinLineOffset({ cylinderAxisOffset: 8 * mm, pinOffset: -0.5 * mm }), 8.5 * mm);
  refusesNonFinite(pinLineOffset, { cylinderAxisOffset: 0, pinOffset: 0 });
});
