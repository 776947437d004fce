import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { leftOut } from "./leftOut.ts";
import published from "./published.json" with { type: "json" };

const packages = fileURLToPath(new URL("../../packages", import.meta.url));
const tests = ["mechanics", "core"]
  .flatMap((name) =>
    readdirSync(`${packages}/${name}/src`, { recursive: true, encoding: "utf8" }).map(
      (file) => `${packages}/${name}/src/${file}`,
    ),
  )
  .filter((file) => file.endsWith(".test.ts"))
  .map((file) => readFileSync(file, "utf8"))
  .join("\n");

it("every published row is reproduced by a test, or left out with a reason", () => {
  const ids = published.map(({ id }) => id);
  const reproduced = ids.filter((id) => tests.includes(`"${id}"`));
  expect(ids.filter((id) => !reproduced.includes(id)).sort()).toEqual(Object.keys(leftOut).sort());
  expect(reproduced.length).toBeGreaterThanOrEqual(60);
  for (const reason of Object.values(leftOut)) expect(reason.length).toBeGreaterThan(15);
});
