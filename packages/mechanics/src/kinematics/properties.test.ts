import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { angles, between, cranks, mm, near, nearly } from "../check/support.test-support.ts";
import { bankTilts, inLeaningFrame } from "./bankTilts.ts";
import { topDeadCentre } from "./deadCentres.ts";
import { greatestBetween } from "./greatestOverTurn.ts";
import { localCrankAngle } from "./localCrankAngle.ts";
import { pinHeight } from "./pinHeight.ts";
import { pistonAcceleration } from "./pistonAcceleration.ts";
import { pistonTravel, pistonTravelBy, pistonTravelOver } from "./pistonTravel.ts";
import { pistonVelocity, pistonVelocityOver } from "./pistonVelocity.ts";
import { largestRodAngle, rodAngle } from "./rodAngle.ts";
import { rodRatio } from "./rodRatio.ts";
import { requireSliderCrank } from "./SliderCrank.ts";
import { turnTable } from "./turnTable.ts";

property.prop([between(20 * mm, 80 * mm), angles])(
  "with an endless rod the piston moves as the crankpin's height does",
  (throwRadius, angle) => {
    const crank = { throwRadius, rodLength: 1e9 * throwRadius, pinLineOffset: 0 };
    near(pistonTravel(crank, angle), throwRadius * (1 - Math.cos(angle)), 1e-7);
    near(pistonVelocity(crank, angle, 1), -throwRadius * Math.sin(angle), 1e-9);
    near(pistonAcceleration(crank, angle, 1), -throwRadius * Math.cos(angle), 1e-9);
    expect(largestRodAngle(crank)).toBeLessThan(1.1e-9);
  },
);

property.prop([cranks, angles])("a mirrored mechanism turned backwards moves alike", (crank, angle) => {
  const mirrored = { ...crank, pinLineOffset: -crank.pinLineOffset };
  near(pinHeight(mirrored, -angle), pinHeight(crank, angle), 1e-15);
  near(pistonVelocity(mirrored, -angle, 1), -pistonVelocity(crank, angle, 1), 1e-15);
  near(pistonAcceleration(mirrored, -angle, 1), pistonAcceleration(crank, angle, 1), 1e-14);
});

property.prop([cranks, angles])(
  "travel checked once is travel, and comes back after a turn",
  (crank, angle) => {
    const travel = pistonTravelOver(crank);
    near(travel(angle), topDeadCentre(crank).height - pinHeight(crank, angle), 1e-15);
    near(travel(angle + 2 * Math.PI), travel(angle), 1e-14);
    expect(travel(angle)).toBeGreaterThanOrEqual(-1e-15);
    const phi = rodAngle(crank, angle);
    const speed = -crank.throwRadius * (Math.sin(angle) + Math.cos(angle) * Math.tan(phi));
    near(pistonVelocityOver(crank, 2)(angle), 2 * speed, 1e-14);
    expect(pistonTravelBy(crank)(Math.sin(angle), Math.cos(angle))).toBe(travel(angle));
  },
);

property.prop([fc.integer({ min: 1, max: 7200 }), fc.integer({ min: 0, max: 1e6 })])(
  "a table of the turn has the sines and cosines of its steps, and there is none that does not fill the turn",
  (count, index) => {
    const step = (2 * Math.PI) / count;
    const table = turnTable(step)!;
    expect(table.count).toBe(count);
    const at = index % count;
    near(table.sines[at]!, Math.sin(at * step), 1e-15);
    near(table.cosines[at]!, Math.cos(at * step), 1e-15);
    expect(turnTable((2 * Math.PI) / (count + 0.5))).toBe(undefined);
  },
);

property.prop([cranks, between(0.1, 10)])("the rod ratio is one of proportions", (crank, scale) => {
  const { rodLength, throwRadius } = crank;
  const ratio = rodRatio(crank);
  nearly(rodRatio({ rodLength: scale * rodLength, throwRadius: scale * throwRadius }), ratio, 1e-12);
  // Without an offset it is half the cosecant of the largest rod angle.
  nearly(ratio, 1 / (2 * Math.sin(largestRodAngle({ ...crank, pinLineOffset: 0 }))), 1e-12);
});

property.prop([between(0.01, Math.PI), between(-1, 1), between(-1, 1)])(
  "both banks lean alike from the middle, and what is straight up in one is so at its own angle",
  (bankAngle, x, y) => {
    const tilts = bankTilts(bankAngle);
    near(tilts[0]! + tilts[1]!, 0, 1e-15);
    near(tilts[0]! - tilts[1]!, bankAngle, 1e-15);
    const seen = tilts.map((tilt) => inLeaningFrame({ x, y }, tilt));
    for (const point of seen) nearly(Math.hypot(point.x, point.y), Math.hypot(x, y), 1e-12);
    for (const tilt of tilts) {
      const axis = inLeaningFrame({ x: Math.sin(tilt), y: Math.cos(tilt) }, tilt);
      near(axis.x, 0, 1e-15);
      near(axis.y, 1, 1e-15);
    }
  },
);

property.prop([angles, angles, angles])(
  "a throw that stands along a bank is at the top of that bank's cylinder",
  (crankAngle, pinAngle, bankAngle) => {
    const top = localCrankAngle({ crankAngle: bankAngle - pinAngle, pinAngle, bankAngle });
    near(top, 0, 1e-14);
    const later = localCrankAngle({ crankAngle: crankAngle + 0.5, pinAngle, bankAngle });
    near(later - localCrankAngle({ crankAngle, pinAngle, bankAngle }), 0.5, 1e-14);
  },
);

property.prop([between(-1, 1), between(-3, 3), between(0.1, 2)])(
  "the greatest value of a hump is at its top, or at the end nearer to it",
  (top, from, width) => {
    const to = from + width;
    const found = greatestBetween((x) => 5 - (x - top) ** 2, from, to);
    const expected = Math.min(to, Math.max(from, top));
    near(found.at, expected, 1e-5 * width);
    near(found.value, 5 - (expected - top) ** 2, 1e-9);
  },
);

property.prop([between(10 * mm, 80 * mm), between(-40 * mm, 40 * mm), fc.boolean()])(
  "a mechanism turns just when the rod is longer than throw and offset together",
  (throwRadius, pinLineOffset, isLonger) => {
    const rodLength = (throwRadius + Math.abs(pinLineOffset)) * (isLonger ? 1 + 1e-9 : 1 - 1e-9);
    const check = () => requireSliderCrank({ throwRadius, rodLength, pinLineOffset });
    if (isLonger) expect(check).not.toThrow();
    else expect(check).toThrow("rodLength: found");
  },
);
