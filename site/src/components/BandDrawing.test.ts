import { h } from "preact";
import { render } from "preact-render-to-string";
import { evaluate, readBuildText } from "trialfit";
import { expect, test } from "vitest";
import { BAND, bandPicture } from "../data/bandPicture.ts";
import { demoFiles } from "../data/demoFiles.ts";
import { BandDrawing } from "./BandDrawing.tsx";

/** Width of the widest letter of the axis at its size, in units of the drawing. */
const LETTER = 7.6;

test("the texts of an axis stay inside of the drawing", async () => {
  const { verdicts } = await evaluate(readBuildText(demoFiles.get("harrow-eight")!));
  let counted = 0;
  for (const comparison of verdicts.flatMap(({ comparisons }) => comparisons)) {
    const picture = bandPicture(comparison);
    if (picture === undefined) continue;
    const drawn = render(h(BandDrawing, { picture }));
    for (const [, x, text] of drawn.matchAll(/<text x="([\d.-]+)" y="82"[^>]*>([^<]*)</g)) {
      expect(Number(x) - (text!.length * LETTER) / 2).toBeGreaterThanOrEqual(0);
      expect(Number(x) + (text!.length * LETTER) / 2).toBeLessThanOrEqual(BAND.width);
      counted += 1;
    }
  }
  expect(counted).toBeGreaterThan(300);
});
