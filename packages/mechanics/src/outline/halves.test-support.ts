import { fc } from "@fast-check/vitest";
import { between, mm } from "../check/support.test-support.ts";

/** Half outlines of big ends, with a rounded corner at the shoulder. */
export const halves = fc
  .record({
    cap: between(28 * mm, 40 * mm),
    shoulder: between(30 * mm, 45 * mm),
    beam: between(8 * mm, 14 * mm),
    cornerRadius: between(0.5 * mm, 6 * mm),
  })
  .map(({ cap, shoulder, beam, cornerRadius }) => [
    { u: -cap, v: 0 },
    { u: -cap, v: shoulder, cornerRadius },
    { u: 12 * mm, v: shoulder },
    { u: 35 * mm, v: beam },
    { u: 60 * mm, v: beam },
  ]);
