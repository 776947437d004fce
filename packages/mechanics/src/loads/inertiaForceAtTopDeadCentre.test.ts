import { test } from "vitest";
import {
  centredCrank,
  nearly,
  offsetCrank,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { inertiaForceAtTopDeadCentre } from "./inertiaForceAtTopDeadCentre.ts";

test("without an offset it is m r w2 (1 + r/l)", () => {
  const input = { crank: centredCrank, reciprocatingMass: 0.634, angularSpeed: 7800 * rpm };
  const { throwRadius: r, rodLength: l } = centredCrank;
  nearly(inertiaForceAtTopDeadCentre(input), 0.634 * r * input.angularSpeed ** 2 * (1 + r / l), 1e-12);
  refuses(() => inertiaForceAtTopDeadCentre({ ...input, reciprocatingMass: -1 }), "reciprocatingMass");
  refusesNonFinite(inertiaForceAtTopDeadCentre, { ...input, crank: offsetCrank });
});
