import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readBuildText } from "../../read/readBuild.ts";
import { Chain } from "../Chain.ts";
import { quantities } from "../generated/quantities.ts";
import { movedAlong, unmoved } from "../Moved.ts";
import { withDefaults } from "../withDefaults.ts";

const text = readFileSync(new URL("../../../demo/larkspur-hill.yaml", import.meta.url), "utf8");
const chain = new Chain(withDefaults(readBuildText(text, "larkspur-hill")), quantities);

describe.each(["inlet", "exhaust"])("room of the %s valve in its pocket", (side) => {
  it("does not jump where the valve begins to dip below the crown", () => {
    const steps = 1_000;
    const depth = chain.at(`${side}Valve.pocketDepth`, unmoved);
    const rooms: number[] = [];
    let dips = 0;
    for (let step = 0; step <= steps; step += 1) {
      const moved = movedAlong([`${side}Valve.recess`])([(step / steps) * 0.01]);
      rooms.push(chain.at(`${side}PocketRoom`, moved));
      if (chain.at(`${side}PistonToValve`, moved) < depth) dips += 1;
    }
    expect(dips).toBeGreaterThan(100);
    expect(dips).toBeLessThan(steps - 100);
    const jumps = rooms.slice(1).map((room, index) => Math.abs(room - rooms[index]!));
    expect(Math.max(...jumps)).toBeLessThan(0.05e-3);
  });
});
