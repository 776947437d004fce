import { describe, expect, it } from "vitest";
import type { InputError } from "../../read/Problem.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { renderText } from "../../report/renderText.ts";
import { describeSolution } from "./describeSolution.ts";
import { solve } from "./solve.ts";
import { hasSteps, sizeAt, stepsInside, stepsNear } from "./steps.ts";

/** One stroke that is looked for, by the volume that it gives. */
const four = (stroke: string, aims: string) =>
  `trialfit: "1"
name: Invented four
block: { layout: inline, cylinders: "4", bore: 86 mm, deckHeight: 225 mm }
crankshaft: { stroke: "${stroke}" }
connectingRod: { length: 145 mm }
aims: { ${aims} }
`;
const solved = (stroke: string, aims: string) =>
  solve(readBuildText(four(stroke, aims), "four.yaml"), { rules: [] });
const problem = (stroke: string) => {
  try {
    readBuildText(four(stroke, 'rodRatio: "1.6"'), "four.yaml");
  } catch (error) {
    return (error as InputError).problems[0];
  }
  return undefined;
};

describe("steps", () => {
  it("count from where they begin, and stay inside the bounds", () => {
    const seven = { low: 0.08, high: 0.1, step: 0.007, origin: 0.08 };
    expect(stepsInside(seven).map(Math.abs)).toEqual([0, 2]);
    expect([0, 1, 2].map((count) => sizeAt(count, seven))).toEqual([0.08, 0.087, 0.094]);
    expect(stepsNear(0.099, seven)).toEqual([0.094]);
    expect(stepsNear(0.09, seven)).toEqual([0.087, 0.094]);
    expect(stepsNear(0.09, seven, 2)).toEqual([0.08, 0.087, 0.094]);
    const none = { low: 0.09003, high: 0.09007, step: 1e-4 };
    expect(hasSteps(none)).toBe(false);
    expect(stepsNear(0.09005, none)).toEqual([]);
  });
  it("are counted from the first bound where bounds and a step are stated, otherwise from zero", async () => {
    // 87 mm give 2021.5 cm3; from zero the steps of 7 mm would be 84, 91 and 98 mm.
    const aims = "engineDisplacement: 2021 cm3 ± 2 cm3";
    expect(await solved("? 80 mm to 100 mm in steps of 7 mm", aims)).toMatchObject({
      state: "solved",
      fields: [{ text: "87 mm" }],
    });
    expect(await solved("? 80.003 mm to 100 mm", aims)).toMatchObject({ fields: [{ text: "87 mm" }] });
  });
  it("none of which lies inside the bounds solve nothing", async () => {
    const aims = "engineDisplacement: 2092.04 cm3 ± 0.1 cm3";
    const stated = await solved("? 90.03 mm to 90.07 mm in steps of 0.1 mm", aims);
    expect(stated).toMatchObject({ state: "conflict", bySteps: true, fields: [{ text: "90.03 mm" }] });
    const usual = await solved("? 90.031 mm to 90.039 mm", "engineDisplacement: 2091.9 cm3 ± 0.2 cm3");
    expect(usual).toMatchObject({
      state: "conflict",
      bySteps: true,
      stepless: [{ path: "crankshaft.stroke" }],
    });
    expect(renderText(describeSolution(usual))).toMatch(
      /No step of [\d.]+ mm lies between the bounds of Crankshaft: stroke/,
    );
  });
  it("between bounds the wrong way round are refused where they enter", () => {
    expect(problem("? 100 mm to 80 mm")).toMatchObject({
      file: "four.yaml",
      line: 4,
      field: "crankshaft.stroke",
      found: expect.stringMatching(/wrong way round/),
      expected: expect.stringMatching(/the smaller bound first, such as "\? /),
    });
    expect(problem("? 80 mm to 100 mm")).toBeUndefined();
  });
});
