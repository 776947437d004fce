import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, kN, MPa, mm, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { boltThreadStripLoad, engagementNeeded } from "./boltThreadStripLoad.ts";
import { threadGeometry } from "./threadGeometry.ts";
import { threadStripLoad } from "./threadStripLoad.ts";

const thread = { majorDiameter: 11 * mm, pitch: 1.25 * mm };

property.prop([between(0.08, 0.16), between(5, 20)])(
  "both strip loads are the widths of the 60° profile at the sheared cylinders",
  (part, size) => {
    const majorDiameter = size * mm;
    const one = { majorDiameter, pitch: part * majorDiameter, engagement: 20 * mm, shearStrength: MPa };
    const { pitchDiameter, internalMinorDiameter } = threadGeometry(one);
    // Along the axis a ridge and a groove are each half a pitch wide at the pitch diameter; 60° flanks widen the
    // ridge by tan 30° for each side of a step inwards in radius.
    const ridge = (stepInwards: number) => one.pitch / 2 + 2 * stepInwards * Math.tan(Math.PI / 6);
    const turns = one.engagement / one.pitch;
    const bolt = ridge((pitchDiameter - internalMinorDiameter) / 2);
    nearly(boltThreadStripLoad(one), MPa * Math.PI * internalMinorDiameter * turns * bolt);
    const tapped = ridge((majorDiameter - pitchDiameter) / 2);
    nearly(threadStripLoad(one), MPa * Math.PI * majorDiameter * turns * tapped);
    // In one metal the bolt's thread is the weaker: it is sheared on the smaller cylinder.
    expect(boltThreadStripLoad(one)).toBeLessThan(threadStripLoad(one));
  },
);

property.prop([between(10, 300)])("the engagement needed holds the force", (force) => {
  const one = { ...thread, shearStrength: 200 * MPa };
  const engagement = engagementNeeded({ ...one, force: force * kN, bearingShare: 0.8 });
  nearly(0.8 * threadStripLoad({ ...one, engagement }), force * kN);
});

test("boundary", () => {
  const one = { ...thread, shearStrength: 200 * MPa };
  refuses(() => boltThreadStripLoad({ ...one, engagement: 0 }), "engagement");
  refuses(() => engagementNeeded({ ...one, force: 1, bearingShare: 0 }), "bearingShare");
  refusesNonFinite(boltThreadStripLoad, { ...one, engagement: 20 * mm });
  refusesNonFinite(engagementNeeded, { ...one, force: 1, bearingShare: 0.8 });
});
