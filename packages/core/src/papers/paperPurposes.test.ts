import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readBuildText } from "../read/readBuild.ts";
import { paperIds } from "./paperKinds.ts";
import { paperPurposes } from "./paperPurposes.ts";
import { writePapers } from "./writePapers.ts";

const demo = readBuildText(
  readFileSync(new URL("../../demo/harrow-eight.yaml", import.meta.url), "utf8"),
  "harrow-eight",
);

it("names every paper as it names itself", async () => {
  const purposes = await paperPurposes(demo);
  expect(purposes.map(({ id }) => id)).toEqual(paperIds);
  for (const { title, purpose } of purposes) {
    expect(title).not.toBe("");
    expect(purpose).toMatch(/^[A-Z].*\.$/);
  }
  const only = ["order-list", "torque-sheet", "engine-record"];
  const { papers } = await writePapers(demo, { date: "2026-03-14", only });
  expect(papers.map(({ id, title, purpose }) => ({ id, title, purpose }))).toEqual(
    purposes.filter(({ id }) => only.includes(id)),
  );
}, 120_000);

it("tells of a paper that a build gives nothing to say", async () => {
  const small = readBuildText('trialfit: "1"\nname: Small\n', "small");
  await expect(paperPurposes(small)).rejects.toThrow(/has nothing to say on Small/);
});
