import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { curtainArea, curtainRatio } from "./curtainRatio.ts";

const valve = { lift: 11 * mm, valveDiameter: 35 * mm };

test("examples", () => {
  near(curtainRatio(valve), 0.314, 5e-4);
  near(curtainArea(valve), Math.PI * 0.035 * 0.011, 1e-12);
});

property.prop([between(0.01, 0.06)])("at a quarter the curtain is as large as the port", (valveDiameter) => {
  const lift = valveDiameter / 4;
  nearly(curtainRatio({ lift, valveDiameter }), 0.25, 1e-12);
  nearly(curtainArea({ lift, valveDiameter }), boreArea(valveDiameter), 1e-12);
});

test("boundary", () => {
  refuses(() => curtainRatio({ ...valve, valveDiameter: 0 }), "valveDiameter");
  refuses(() => curtainArea({ ...valve, lift: -1e-9 }), "lift");
  refusesNonFinite(curtainRatio, valve);
  refusesNonFinite(curtainArea, valve);
});
