import { describe, expect, it } from "vitest";
import { readBuildText } from "../read/readBuild.ts";
import { withDefaults } from "./withDefaults.ts";

const bankAngle = (block: string) => {
  const build = readBuildText(`trialfit: "1"\nname: bare\nblock: ${block}\n`, "build.yaml");
  const value = withDefaults(build).get("block.bankAngle");
  return value?.kind === "dimension" ? (value.nominal / Math.PI) * 180 : undefined;
};

describe("the bank angle of a build that leaves it out", () => {
  it.each([
    ["{ layout: single }", 0],
    ["{ layout: inline }", 0],
    ["{ layout: flat }", 180],
    // A V has an angle of its own: none is guessed.
    ["{ layout: vee }", undefined],
    ['{ cylinders: "8" }', undefined],
    ["{ layout: vee, bankAngle: 60 deg }", 60],
  ])("%s has %s", (block, expected) => {
    if (expected === undefined) expect(bankAngle(block)).toBeUndefined();
    else expect(bankAngle(block)).toBeCloseTo(expected, 9);
  });
});
