import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { evaluate } from "../evaluate.ts";
import { readBuildText } from "../read/readBuild.ts";
import { explainQuantity } from "./explainQuantity.ts";

const file = new URL("../../demo/larkspur-hill.yaml", import.meta.url);
const listed = [...quantities.values()].filter(({ listing }) => listing !== undefined);

describe("an explained quantity that counts or sums", () => {
  it("lists what it counts at this build's nominal values", { timeout: 60_000 }, async () => {
    expect(listed.length).toBeGreaterThanOrEqual(5);
    const build = readBuildText(readFileSync(file, "utf8"), "larkspur-hill.yaml");
    const report = await evaluate(build, {
      rules: [],
      quantities: [...listed.map(({ id }) => id), "firstTorsionalFrequency"],
    });
    const rowsOf = (id: string) =>
      explainQuantity(quantities.get(id)!, report)
        .sections.find(({ heading }) => heading === "Worked")!
        .items[0]!.lines.filter(({ label }) => /^order$|rpm$/.test(label ?? ""));
    const worked = (id: string) => report.quantities.find((one) => one.id === id)!;
    for (const id of ["criticalsInRange", "majorCriticalsInRange", "secondCriticalsInRange"])
      expect(rowsOf(id), id).toHaveLength(worked(id).nominal!);
    expect(rowsOf("criticalsInRange").length).toBeGreaterThan(0);
    // Every order times its speed is the one natural frequency.
    const frequency = worked("firstTorsionalFrequency").nominal!;
    for (const { text } of rowsOf("criticalsInRange")) {
      const [order, speed] = text!.split(" at ").map((part) => Number.parseFloat(part));
      expect((order! * speed!) / 60 / frequency).toBeCloseTo(1, 3);
    }
    const torques = rowsOf("estimatedGreatestTorque").map(({ text }) => Number.parseFloat(text!));
    expect(torques.length).toBeGreaterThan(5);
    expect(Math.max(...torques)).toBeLessThanOrEqual(worked("estimatedGreatestTorque").nominal! + 0.5);
  });

  it("lists nothing without a build", () => {
    const all = listed.map((one) => explainQuantity(one));
    expect(all.flatMap(({ sections }) => sections).map(({ heading }) => heading)).not.toContain("Worked");
  });
});
