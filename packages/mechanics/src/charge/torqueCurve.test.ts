import { test as property } from "@fast-check/vitest";
import fc from "fast-check";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { greatestPower, greatestTorque, type TorqueCurve, torqueOnCurve } from "./torqueCurve.ts";

const points = (...rows: readonly (readonly [speed: number, torque: number])[]): TorqueCurve =>
  rows.map(([speed, torque]) => ({ angularSpeed: speed * rpm, torque }));
const curve = points([3000, 480], [4500, 560], [5500, 600], [6500, 590], [7400, 568], [8000, 510]);

/** Curves of 2 to 12 points with steps of 50 to 1500 turns a minute. */
const curves = fc
  .array(fc.tuple(between(50, 1500), between(0, 900)), { minLength: 2, maxLength: 12 })
  .map((rows) =>
    rows.map(([, torque], i) => ({
      angularSpeed: rows.slice(0, i + 1).reduce((speed, [step]) => speed + step, 400) * rpm,
      torque,
    })),
  );

test("example", () => {
  expect(greatestTorque(curve)).toEqual({ angularSpeed: 5500 * rpm, torque: 600 });
  const peak = greatestPower(curve);
  // By hand: the line from 7400 to 8000 rpm has its vertex at (7400 + 568 × 600 / 58) / 2 = 6638 rpm, below that
  // piece, and the one from 6500 at (6500 + 590 × 900 / 22) / 2 = 15318 rpm, above its piece: the knee is the peak.
  near(peak.angularSpeed / rpm, 7400, 1e-9);
  near(peak.power, 568 * 7400 * rpm, 1e-6);
  near(torqueOnCurve({ curve, angularSpeed: 5000 * rpm }), 580, 1e-9);
});

property.prop([between(1, 2000), between(1000, 20000)])(
  "torque that falls straight to nothing gives its greatest power at half the speed",
  (stall, speed) => {
    // A straight line from the stall torque to zero: a quarter of stall torque times speed, at half the speed.
    const line = [0.1, 0.4, 0.9, 1].map((share) => ({
      angularSpeed: share * speed * rpm,
      torque: stall * (1 - share),
    }));
    const { power, angularSpeed } = greatestPower(line);
    nearly(angularSpeed, (speed * rpm) / 2);
    nearly(power, (stall * speed * rpm) / 4);
  },
);

property.prop([curves, between(0, 1)])(
  "no speed has more torque or power than the greatest",
  (any, share) => {
    const [first, last] = [any[0]!.angularSpeed, any.at(-1)!.angularSpeed];
    const angularSpeed = Math.min(last, first + share * (last - first));
    const torque = torqueOnCurve({ curve: any, angularSpeed });
    const slack = 1 + 1e-12;
    expect(torque).toBeLessThanOrEqual(greatestTorque(any).torque * slack);
    const peak = greatestPower(any);
    expect(torque * angularSpeed).toBeLessThanOrEqual(peak.power * slack);
    nearly(torqueOnCurve({ curve: any, angularSpeed: peak.angularSpeed }) * peak.angularSpeed, peak.power);
  },
);

property.prop([curves])("the greatest power never comes below the speed of the greatest torque", (any) => {
  expect(greatestPower(any).angularSpeed).toBeGreaterThanOrEqual(greatestTorque(any).angularSpeed);
});

test("of several alike the lowest speed counts", () => {
  const flat = points([1800, 400], [4500, 400], [5200, 380]);
  expect(greatestTorque(flat).angularSpeed).toBe(1800 * rpm);
  expect(greatestPower(points([3000, 0], [4000, 0])).angularSpeed).toBe(3000 * rpm);
});

test("boundary", () => {
  refuses(() => greatestTorque(curve.slice(0, 1)), "curve");
  refuses(() => greatestPower([...curve].reverse()), "curve[1].angularSpeed");
  refuses(() => greatestTorque(points([0, 10], [10, 10])), "curve[0].angularSpeed");
  refuses(() => greatestTorque(points([10, 10], [10, 10])), "curve[1].angularSpeed");
  refuses(() => greatestTorque(points([10, 10], [20, -1])), "curve[1].torque");
  refuses(() => greatestTorque(points([10, 10], [20, Number.NaN])), "curve[1].torque");
  for (const speed of [2999, 8001, Number.NaN])
    refuses(() => torqueOnCurve({ curve, angularSpeed: speed * rpm }), "angularSpeed");
  near(torqueOnCurve({ curve, angularSpeed: 3000 * rpm }), 480, 1e-9);
  near(torqueOnCurve({ curve, angularSpeed: 8000 * rpm }), 510, 1e-9);
});
