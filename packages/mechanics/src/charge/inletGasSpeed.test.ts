import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { inletGasSpeed } from "./inletGasSpeed.ts";

const inlet = { bore: 86.5 * mm, valves: 2, valveDiameter: 35 * mm, meanPistonSpeed: 23.19 };

test("example and boundary", () => {
  near(inletGasSpeed(inlet), 70.82, 5e-3);
  refuses(() => inletGasSpeed({ ...inlet, valves: 0 }), "valves");
  refuses(() => inletGasSpeed({ ...inlet, valveDiameter: 0 }), "valveDiameter");
  refusesNonFinite(inletGasSpeed, inlet);
});

property.prop([between(20 * mm, 60 * mm)])(
  "as much gas passes the valves as the piston draws",
  (valveDiameter) => {
    const speed = inletGasSpeed({ ...inlet, valveDiameter });
    nearly(2 * valveDiameter ** 2 * speed, inlet.bore ** 2 * inlet.meanPistonSpeed);
  },
);
