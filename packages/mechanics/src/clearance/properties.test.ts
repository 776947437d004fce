import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, cranks, mm, near, nearly } from "../check/support.test-support.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { rodContactOver } from "../outline/rodContactOver.ts";
import { counterweightToCase } from "./counterweightToCase.ts";
import { notchRadialDepth, notchWall, notchWidthNeeded, oilRingAboveNotch } from "./notch.ts";
import { eightCrank, eightPoints, outlineOf } from "./rodSweep.test-support.ts";
import { camshaftObstacle } from "./rodToCamshaft.ts";
import { rodToCylinderBottom } from "./rodToCylinderBottom.ts";
import { boreHalfChord } from "./rodToCylinderChordClearance.ts";
import { notchDepthNeeded, notchHeightNeeded } from "./rodToCylinderNotchNeeded.ts";
import { cylinderObstacle } from "./rodToCylinderObstacle.ts";
import { rodToCylinderProfile } from "./rodToCylinderProfile.ts";
import { rodToPoint, roundObstacle } from "./rodToPoint.ts";
import { railObstacle } from "./rodToRail.ts";
import { skirtBelowBore } from "./skirtBelowBore.ts";
import { smallEndSideRoom, smallEndToCrown } from "./smallEnd.ts";

const rod = {
  crank: eightCrank,
  outline: outlineOf(eightPoints),
  bore: 96 * mm,
  cylinderAxisOffset: 0,
  cylinderBottomHeight: 72 * mm,
  bigEndWidth: 22 * mm,
  planeOffset: 0.5 * mm,
};

property.prop([between(0.1, 1), between(1 * mm, 4 * mm)], { numRuns: 5 })(
  "a notch as deep, or as high, as needed gives just the clearance wanted",
  (share, cornerRadius) => {
    const { clearance } = rodToCylinderBottom(rod);
    const wanted = Math.max(0, clearance) + share * 2 * mm;
    const roomy = { width: 40 * mm, cornerRadius };
    const depth = notchDepthNeeded({ ...rod, wanted, notch: { ...roomy, height: 80 * mm } });
    const height = notchHeightNeeded({ ...rod, wanted, notch: { ...roomy, depth: 80 * mm } });
    const cut = [
      { ...roomy, depth, height: 80 * mm },
      { ...roomy, depth: 80 * mm, height },
    ];
    for (const notch of cut) near(rodToCylinderBottom({ ...rod, notch }).clearance, wanted, 2e-7);
    expect(
      notchDepthNeeded({ ...rod, wanted: Math.max(0, clearance), notch: { ...roomy, height: 9 * mm } }),
    ).toBe(0);
  },
);

property.prop([between(2 * mm, 12 * mm)], { numRuns: 5 })(
  "no angle of the profile is nearer than the least, and it comes back after a turn",
  (lower) => {
    const geometry = { ...rod, cylinderBottomHeight: rod.cylinderBottomHeight + lower };
    const { clearance } = rodToCylinderBottom(geometry);
    const profile = rodToCylinderProfile(geometry, 24);
    for (const { clearance: here } of profile) expect(here).toBeGreaterThanOrEqual(clearance - 1e-9);
    // A rod in the middle of its cylinder passes both sides alike, on the way down and up.
    for (let i = 1; i < 12; i++) near(profile[i]!.clearance, profile[24 - i]!.clearance, 1e-9);
  },
);

const places = between(-80 * mm, 80 * mm);
property.prop([places, between(20 * mm, 120 * mm), places, between(20 * mm, 120 * mm), between(0, 6 * mm)])(
  "the distance to the cylinder's metal changes by no more than the way moved, so a sweep can trust it",
  (x, y, toX, toY, depth) => {
    const notch = { depth, height: 8 * mm, width: 30 * mm };
    for (const distance of cylinderObstacle({ ...rod, notch })) {
      const [here, there] = [distance(x, y), distance(toX, toY)];
      expect(Math.abs(here - there)).toBeLessThanOrEqual(Math.hypot(toX - x, toY - y) + 1e-12);
    }
    const nearest = (px: number) => Math.min(...cylinderObstacle({ ...rod, notch }).map((of) => of(px, y)));
    near(nearest(-x), nearest(x), 1e-15);
    // In the middle of the bore its metal is never nearer than its lower edge is high.
    expect(nearest(0)).toBeGreaterThanOrEqual(rod.cylinderBottomHeight - y);
  },
);

const turns = between(0, 2 * Math.PI);
property.prop([places, between(20 * mm, 120 * mm), places, between(20 * mm, 120 * mm), between(0, 1.6)])(
  "so do those to pan rails, camshaft and squirter, seen from any bank",
  (x, y, toX, toY, bankAngle) => {
    const rails = { railHalfWidth: 97 * mm, railHeight: -58 * mm, bankAngle };
    const camshaft = { across: 3 * mm, height: 125 * mm, bankAngle, lobeRadius: 25 * mm };
    const parts = [
      ...railObstacle(rails),
      ...camshaftObstacle(camshaft),
      ...roundObstacle({ x: 50 * mm, y: 67 * mm, radius: 1 * mm }),
    ];
    for (const distance of parts)
      expect(Math.abs(distance(x, y) - distance(toX, toY))).toBeLessThanOrEqual(
        Math.hypot(toX - x, toY - y) + 1e-12,
      );
    // One bank's view of them, mirrored, is the other's.
    const [one, other] = [bankAngle / 2, -bankAngle / 2].map((tilt) => {
      const seen = [...railObstacle(rails, [tilt]), ...camshaftObstacle({ ...camshaft, across: 0 }, [tilt])];
      return (px: number) => Math.min(...seen.map((of) => of(px, y)));
    });
    near(one!(x), other!(-x), 1e-12);
  },
);

property.prop([turns, between(40 * mm, 60 * mm)])(
  "the metal's end of the shortest way lies on the metal, as far from the rod as the clearance says",
  (angle, x) => {
    const { crank, outline } = rod;
    const obstacle = roundObstacle({ x: x + 60 * mm, y: 67 * mm, radius: 2 * mm });
    const { clearance, point, metal } = rodContactOver({ crank, outline, obstacle })(angle);
    near(Math.hypot(metal.x - point.x, metal.y - point.y), Math.abs(clearance), 1e-9);
    near(obstacle[0]!(metal.x, metal.y), 0, 1e-7);
    expect(clearance).toBeGreaterThanOrEqual(
      rodToPoint({ crank, outline, x: x + 60 * mm, y: 67 * mm, radius: 2 * mm }).clearance - 1e-9,
    );
  },
);

property.prop([between(70 * mm, 110 * mm), between(10 * mm, 28 * mm), between(-8 * mm, 8 * mm)])(
  "half chord and side face are the legs of a right triangle on the bore's radius, either way round",
  (bore, bigEndWidth, planeOffset) => {
    const half = boreHalfChord({ bore, bigEndWidth, planeOffset });
    nearly(Math.hypot(half, Math.abs(planeOffset) + bigEndWidth / 2), bore / 2, 1e-12);
    nearly(boreHalfChord({ bore, bigEndWidth, planeOffset: -planeOffset }), half, 1e-12);
  },
);

property.prop([cranks, between(10 * mm, 60 * mm), between(20 * mm, 45 * mm), between(0, 12 * mm)])(
  "skirt and ring hang from one pin: what one gains over the cylinder's bottom the other loses",
  (crank, cylinderBottomHeight, skirtDepth, notchHeight) => {
    const out = skirtBelowBore({ crank, skirtDepth, cylinderBottomHeight });
    const piston = { compressionHeight: 30 * mm, ringPackDepth: 18 * mm };
    const above = oilRingAboveNotch({ crank, ...piston, cylinderBottomHeight, notchHeight });
    near(out + above, skirtDepth + 12 * mm - notchHeight, 1e-12);
    // A cylinder that ends where the skirt does hides all of it.
    const level = bottomDeadCentre(crank).height - skirtDepth;
    near(skirtBelowBore({ crank, skirtDepth, cylinderBottomHeight: level }), 0, 1e-15);
  },
);

property.prop([between(20 * mm, 30 * mm), between(0, 3 * mm), between(0, 1 * mm), between(0, 3 * mm)])(
  "a rod in the middle of a notch that was cut for it has the gap wanted on both sides",
  (rodWidth, sideGap, axialFloat, cornerRadius) => {
    const bossDistance = notchWidthNeeded({ rodWidth, sideGap, axialFloat, cornerRadius });
    const room = (planeOffset: number) =>
      smallEndSideRoom({ bossDistance, smallEndWidth: rodWidth, planeOffset, axialFloat });
    near(room(0), sideGap + cornerRadius, 1e-15);
    near(room(sideGap), room(-sideGap), 1e-15);
    near(room(sideGap), cornerRadius, 1e-15);
  },
);

property.prop([
  between(4 * mm, 9 * mm),
  between(0, 5 * mm),
  between(10 * mm, 20 * mm),
  between(0.01 * mm, 0.1 * mm),
])(
  "what a cut takes off and what it leaves make the wall; gaps close by as much as their parts move",
  (wallThickness, depth, sideFaceDistance, play) => {
    const cut = { bore: 90 * mm, sideFaceDistance, notchDepth: depth };
    const notchDepth = notchRadialDepth({ ...cut, distance: sideFaceDistance });
    near(notchWall({ wallThickness, notchDepth }) + notchDepth, wallThickness, 1e-15);
    // Square to the bore a cut is never deeper than straight outwards.
    expect(notchDepth).toBeLessThanOrEqual(depth + 1e-15);
    const sizes = { caseRadius: 90 * mm, counterweightRadius: 84 * mm };
    const room = counterweightToCase({ ...sizes, mainBearingClearance: play });
    near(room + play / 2, smallEndToCrown({ crownUndersideHeight: 90 * mm, smallEndRadius: 84 * mm }), 1e-15);
  },
);
