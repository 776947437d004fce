import { expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

it.each([
  ["solve", "a.yaml", "b.yaml"],
  ["remedy", "a.yaml", "b.yaml"],
  ["papers", "a.yaml", "b.yaml", "--out", "sheets"],
  ["diff", "a.yaml", "c.yaml", "b.yaml"],
  ["readings", "a.yaml", "a.csv", "b.yaml"],
  ["rule", "try", "a.yaml", "c.yaml", "b.yaml"],
])("%s refuses an argument that nothing reads", (...args) => {
  const { status, stderr } = runCommand(args);
  expect(status).toBe(2);
  expect(stderr).toContain('"b.yaml" is too much');
});
