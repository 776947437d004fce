import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  between,
  GPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { springSurgeAngularFrequency, springSurgeOrder } from "./springSurge.ts";

const steel = { shearModulus: 79 * GPa, density: 7850 };
const spring = { ...steel, wireDiameter: 5.4 * mm, meanDiameter: 31 * mm, activeCoils: 4.6 };

test("examples", () => {
  const surge = springSurgeAngularFrequency(spring);
  near(surge / (2 * Math.PI), 436.1, 0.05);
  near(springSurgeOrder({ surgeAngularFrequency: surge, angularSpeed: 7600 * rpm }), 6.886, 5e-4);
  const tighter = springSurgeAngularFrequency({ ...spring, wireDiameter: 5.6 * mm, meanDiameter: 29.2 * mm });
  near(springSurgeOrder({ surgeAngularFrequency: tighter, angularSpeed: 7600 * rpm }), 8.049, 5e-4);
});

property.prop([between(1e-3, 8e-3), between(4, 10), between(2, 12)])(
  "half the root of rate over mass of the active coils",
  (wireDiameter, index, activeCoils) => {
    const meanDiameter = index * wireDiameter;
    const rate = (steel.shearModulus * wireDiameter ** 4) / (8 * meanDiameter ** 3 * activeCoils);
    const wire = Math.PI * meanDiameter * activeCoils;
    const mass = steel.density * wire * (Math.PI / 4) * wireDiameter ** 2;
    const found = springSurgeAngularFrequency({ ...steel, wireDiameter, meanDiameter, activeCoils });
    nearly(found / (2 * Math.PI), Math.sqrt(rate / mass) / 2, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => springSurgeAngularFrequency({ ...spring, activeCoils: 0 }), "activeCoils");
  refuses(() => springSurgeOrder({ surgeAngularFrequency: 1, angularSpeed: 0 }), "angularSpeed");
  refusesNonFinite(springSurgeAngularFrequency, spring);
  refusesNonFinite(springSurgeOrder, { surgeAngularFrequency: 1, angularSpeed: 1 });
});
