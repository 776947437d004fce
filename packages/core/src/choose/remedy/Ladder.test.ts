import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { withDefaults } from "../../derive/withDefaults.ts";
import type { DimensionValue } from "../../read/FieldValue.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { withField } from "../../read/withField.ts";
import { fromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import { Ladder } from "./Ladder.ts";

const demo = (name: string) =>
  readBuildText(readFileSync(new URL(`../../../demo/${name}.yaml`, import.meta.url), "utf8"));

const width = ({ low, high }: DimensionValue) => high - low;

/** What is wrong with a rung, by what its text says when it is read from a build file. */
function faultOf(build: ReturnType<typeof demo>, ladder: Ladder, rung: number): string | undefined {
  const moved = ladder.at(rung);
  const text = ladder.textAt(rung)!;
  const read = withField(build, ladder.path, text).values.get(ladder.path);
  if (read?.kind !== "dimension") return "reads as no dimension";
  if (read.nominal !== moved.nominal || read.low !== moved.low || read.high !== moved.high)
    return "reads as another";
  const steps = fromSi(moved.nominal, unitOf(moved.unit)) / ladder.step.size;
  if (Math.abs(steps - Math.round(steps)) > 1e-6) return "is not on a step";
  const { value } = ladder;
  if (ladder.way * (moved.nominal - value.nominal) <= 0) return "lies on the wrong side";
  if (Math.abs(moved.nominal - value.nominal) > (rung + 1e-6) * ladder.step.si) return "lies too far";
  const spec = fields.get(ladder.path)?.spec;
  const ends =
    spec?.kind === "dimension" ? spec.range.map((edge) => parseDimension(edge, { unit: spec.unit })) : [];
  const cut = [value, moved].some((one) =>
    ends.some(({ nominal }) => one.low === nominal || one.high === nominal),
  );
  // A width that nobody stated is cut off after three figures: it is kept closer by a hundredth at the most.
  const closer = value.toleranceFrom === "stated" ? 1e-5 : 1e-2;
  const share = width(value) === 0 ? 1 : width(moved) / width(value);
  if (!cut && (share > 1 + 1e-5 || share < 1 - closer)) return "is kept otherwise";
  return undefined;
}

describe("the sizes to which a dimension can be brought", () => {
  it.each(["harrow-eight", "larkspur-hill"])(
    "%s: every one reads from a build file as what was judged",
    (name) => {
      const build = demo(name);
      const values = withDefaults(build);
      let counted = 0;
      for (const [path, value] of values) {
        if (value.kind !== "dimension" || fields.get(path)?.spec.kind !== "dimension") continue;
        for (const way of [-1, 1] as const) {
          const ladder = new Ladder(values, path, way);
          for (const rung of new Set(
            [1, 2, 7, ladder.count].filter((one) => one > 0 && one <= ladder.count),
          )) {
            expect(faultOf(build, ladder, rung), `${path} ${ladder.textAt(rung)}`).toBeUndefined();
            counted += 1;
          }
        }
      }
      expect(counted).toBeGreaterThan(1500);
    },
  );
  it("a text that is not what was judged is seen", () => {
    const build = demo("harrow-eight");
    const ladder = new Ladder(withDefaults(build), "piston.compressionHeight", -1);
    expect(faultOf(build, ladder, 3)).toBeUndefined();
    const coarser = Object.assign(Object.create(ladder), { textAt: () => "33.1 mm ± 0.5" });
    expect(faultOf(build, coarser, 3)).toBe("reads as another");
  });
  it("ends where the field ends, and has no rung beyond it", () => {
    const values = withDefaults(
      withField(demo("harrow-eight"), "piston.crownVolume", "149.95 cm3 dish ± 0.5"),
    );
    const up = new Ladder(values, "piston.crownVolume", 1);
    expect(up.count).toBe(1);
    expect(up.textAt(1)).toBe("150.0 cm3 dish ± 0.5");
    const down = new Ladder(values, "piston.crownVolume", -1);
    expect(down.textAt(1)).toBe("149.9 cm3 dish ± 0.5");
    expect(down.textAt(1500)).toBe("0.0 cm3 dish ± 0.5");
    expect(down.textAt(down.count)).toBe("150.0 cm3 dome ± 0.5");
  });
  it("a size has no fewer decimals than the width beside it", () => {
    const build = demo("larkspur-hill");
    // 8 % of 158 bar.
    const ladder = new Ladder(withDefaults(build), "targets.peakCylinderPressure", -1);
    expect(ladder.textAt(1)).toMatch(/^\d+\.\d\d bar ± 12\.64$/);
    expect(faultOf(build, ladder, 1)).toBeUndefined();
  });
  it("what was measured place by place moves at each by the same", () => {
    const readings = { "1": "88.50 mm", "2": "88.51 mm", "3": "88.52 mm", "4": "88.50 mm" };
    const build = withField(demo("larkspur-hill"), "block.bore", { readings, uncertainty: "0.002 mm" });
    const ladder = new Ladder(build.values, "block.bore", 1);
    expect(ladder.textAt(3)).toBeUndefined();
    const { positions } = ladder.at(3);
    expect(Object.keys(positions!)).toEqual(["1", "2", "3", "4"]);
    for (const [at, one] of Object.entries(positions!)) {
      const before = ladder.value.positions![at]!;
      expect(one.nominal - before.nominal).toBeCloseTo(3 * ladder.step.si, 12);
      expect(one.high - before.high).toBeCloseTo(3 * ladder.step.si, 12);
    }
    // As far as a boring bar goes from the size that they have in the mean.
    expect(88.52 + ladder.count * ladder.step.size).toBeCloseTo(88.506 + 3, 2);
  });
});
