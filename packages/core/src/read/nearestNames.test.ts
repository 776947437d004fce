import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { nearestNames } from "./nearestNames.ts";

const near = (name: string) => nearestNames(name, [...quantities.values()]);

describe("names that may have been meant", () => {
  it.each([
    ["squish", "squishGap"],
    ["squishHeight", "squishGap"],
    ["squish clearance", "squishGap"],
    ["displacement", "engineDisplacement"],
    ["pistonSpeed", "meanPistonSpeed"],
    ["deckClearence", "deckClearance"],
    ["static compression", "compressionRatio"],
  ])("%s: %s", (name, meant) => expect(near(name)[0]).toBe(meant));
  it("are three at most, and none where no word is known", () => {
    expect(near("rod").length).toBe(3);
    for (const none of ["xyzzy", ""]) expect(near(none)).toEqual([]);
  });
});
