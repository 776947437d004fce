import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, mm, near, refusesNonFinite } from "../check/support.test-support.ts";
import { manifoldShift } from "./manifoldShift.ts";

test("by hand: a flange at 60 degrees parts by half, one at 120 degrees presses by half; at 90 only the ports move", () => {
  near(manifoldShift({ lowered: 0.4 * mm, flangeAngle: 60 * deg }).gap / mm, 0.2, 1e-12);
  near(manifoldShift({ lowered: 0.4 * mm, flangeAngle: 120 * deg }).gap / mm, -0.2, 1e-12);
  const square = manifoldShift({ lowered: 0.4 * mm, flangeAngle: 90 * deg });
  near(square.gap, 0, 1e-15);
  near(square.ports / mm, 0.4, 1e-12);
  refusesNonFinite(manifoldShift, { lowered: 0, flangeAngle: 0 });
});

property.prop([between(-1, 2), between(0, 180)])(
  "both parts make up the move: a point of the flange, moved down by hand and seen from the manifold",
  (lowered, angle) => {
    const flangeAngle = angle * deg;
    const normal = [Math.cos(flangeAngle), Math.sin(flangeAngle)] as const;
    // Down along the cylinder; what it moves towards the manifold is off the gap.
    const move = [-lowered, 0] as const;
    const towards = move[0] * normal[0] + move[1] * normal[1];
    const along = move[0] * -normal[1] + move[1] * normal[0];
    const { gap, ports } = manifoldShift({ lowered, flangeAngle });
    near(gap, -towards, 1e-12);
    near(ports, along, 1e-12);
    near(Math.hypot(gap, ports), Math.abs(lowered), 1e-12);
  },
);

solvesBack(
  manifoldShift,
  { lowered: goesAs(1, 0.1 * mm, mm), flangeAngle: rises(10 * deg, 80 * deg) },
  (v) => manifoldShift(v).ports,
);
solvesBack(
  manifoldShift,
  {
    lowered: goesAs(1, 0.1 * mm, mm),
    flangeAngle: notSolved(10 * deg, 80 * deg, "found back from the ports above"),
  },
  (v) => manifoldShift(v).gap,
);
