import { compareAtLeast, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(20);

const mm = 1e-3;
const inch = 25.4 * mm;
const unified = (id: string, threads: readonly (readonly [string, number, number])[]) =>
  row(id, (r) => {
    for (const [name, d, n] of threads) {
      r.agrees(`At_${name}`, m.stressAreaUnified({ majorDiameter: d * inch, pitch: inch / n }));
    }
  });

row("TH-01", (r) => {
  for (const [name, d, p] of [
    ["M6", 6, 1],
    ["M8", 8, 1.25],
    ["M10", 10, 1.5],
    ["M12", 12, 1.75],
  ] as const) {
    r.agrees(`As_${name}`, m.threadGeometry({ majorDiameter: d * mm, pitch: p * mm }).stressArea);
  }
});

row("TH-02", (r) => {
  for (const [name, d, p] of [
    ["M8", 8, 1.25],
    ["M10", 10, 1.5],
    ["M12", 12, 1.75],
  ] as const) {
    const thread = m.threadGeometry({ majorDiameter: d * mm, pitch: p * mm });
    r.agrees(`d2_${name}`, thread.pitchDiameter);
    r.agrees(`d1_${name}`, thread.internalMinorDiameter);
  }
});

unified("TH-05", [
  ["1_4_20", 1 / 4, 20],
  ["5_16_18", 5 / 16, 18],
  ["3_8_16", 3 / 8, 16],
  ["7_16_14", 7 / 16, 14],
  ["1_2_13", 1 / 2, 13],
]);

unified("TH-06", [
  ["1_4_28", 1 / 4, 28],
  ["3_8_24", 3 / 8, 24],
  ["7_16_20", 7 / 16, 20],
]);

row("TH-08", (r) => {
  const [coarse, fine] = r.inputs("pitches");
  const area = (pitch: number) => m.threadGeometry({ majorDiameter: r.input("diameter"), pitch }).stressArea;
  r.agrees("At_M16x2", area(coarse!));
  r.agrees("At_M16x1p5", area(fine!));
});
