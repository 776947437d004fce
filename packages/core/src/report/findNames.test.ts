import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { fields } from "../read/fieldCatalog.ts";
import { findNames } from "./findNames.ts";

const found = (words: string) =>
  Object.fromEntries(
    (findNames(words)?.sections ?? []).map(({ heading, items }) => [
      heading.replace(/ \(\d+\)$/, ""),
      items.map(({ id }) => id!),
    ]),
  );

describe("names by a word", () => {
  it("are all fields of a part, and the rules about it, however the part is written", () => {
    const own = [...fields.keys()].filter((path) => path.startsWith("flywheelFastener."));
    const about = ruleFiles.filter(({ parts }) => parts.includes("flywheel-fastener")).map(({ id }) => id);
    expect(own.length).toBeGreaterThan(3);
    expect(about.length).toBeGreaterThan(1);
    for (const words of ["flywheelFastener", "flywheel-fastener", "Flywheel fastener"]) {
      expect(found(words)["Fields of the build file"]).toEqual(expect.arrayContaining(own));
      expect(found(words).Rules).toEqual(expect.arrayContaining(about));
    }
  });
  it("must hold every word", () => {
    const lift = found("valve lift");
    expect(lift.Quantities!.length).toBeGreaterThan(1);
    expect(lift.Quantities!.length).toBeLessThan(found("valve").Quantities!.length);
  });
  it("are looked for in what is said of quantities where no name has them", () => {
    expect(found("squish clearance")["Quantities of which these words tell"]).toContain("squishGap");
  });
  it("find sets too, and nothing where there is nothing", () => {
    expect(found("street")["Sets of rules"]).toContain("street");
    for (const none of ["", "  ", "-", "flywheelPreloed", "no such thing"])
      expect(findNames(none)).toBeUndefined();
  });
});
