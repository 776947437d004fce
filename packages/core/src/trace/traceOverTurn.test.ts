import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { seeded } from "../derive/seeded.ts";
import type { Build } from "../read/Build.ts";
import { readBuildText } from "../read/readBuild.ts";
import { Nominals } from "./Nominals.ts";
import type { TraceValue } from "./Trace.ts";
import type { NamedExtreme } from "./TraceKind.ts";
import { traceKinds } from "./traceKinds.ts";
import { traceOverTurn } from "./traceOverTurn.ts";

const folder = new URL("../../demo/", import.meta.url);
const demos = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file): [string, Build] => [file, readBuildText(readFileSync(new URL(file, folder), "utf8"), file)]);

/** The extreme of a trace as the catalog counts it. */
function extremeOf({ least, greatest }: TraceValue, { take }: NamedExtreme): number {
  switch (take) {
    case "greatest":
      return greatest.value;
    case "least":
      return least.value;
    case "pull":
      return -least.value;
    case "size":
      return Math.max(Math.abs(least.value), Math.abs(greatest.value));
  }
}

/** Share of the extreme by which a trace may stand off: the joint's load leaves out the cosine of the rod's lean. */
const CLOSE = 3e-4;
/** Beside it: a quarter of a micrometre, a tenth of a newton. */
const ABSOLUTE = 2.5e-7;

/** How many extremes were held to the catalog. */
function holdToCatalog(build: Build): number {
  const nominals = new Nominals(build);
  let held = 0;
  for (const trace of traceOverTurn(nominals)) {
    if (trace.state !== "value") continue;
    expect(trace.angles).toHaveLength(721);
    expect(trace.values.every(Number.isFinite)).toBe(true);
    for (const extreme of traceKinds.get(trace.id)!.extremes) {
      const named = nominals.size(extreme.of)!;
      const off = Math.abs(extremeOf(trace, extreme) - named);
      expect(off, `${trace.id}: ${extremeOf(trace, extreme)} against ${extreme.of} ${named}`).toBeLessThan(
        ABSOLUTE + CLOSE * Math.abs(named),
      );
      held += 1;
    }
  }
  return held;
}

describe.each(demos)("traces of %s", (_, build) => {
  it("have the extremes that the catalog names", () => {
    expect(holdToCatalog(build)).toBeGreaterThanOrEqual(20);
  });

  it("mark the nearest place of the rod where the clearance says", () => {
    const places = traceOverTurn(build).filter(
      (trace): trace is TraceValue => trace.state === "value" && trace.markedPlace !== undefined,
    );
    expect(places.length).toBeGreaterThanOrEqual(2);
    for (const { markedPlace, marked } of places) {
      const { rod, metal } = markedPlace!;
      const uncertain = new Nominals(build).size("connectingRod.outlineTolerance")!;
      expect(Math.hypot(rod.x - metal.x, rod.y - metal.y)).toBeCloseTo(marked.value + uncertain, 7);
    }
  });
});

it("hold for drawn builds as well: other throws, rods, offsets, speeds", () => {
  const [, build] = demos.find(([file]) => file.startsWith("larkspur"))!;
  const random = seeded(1, "traces", 0);
  const moved = ["crankshaft.stroke", "connectingRod.length", "targets.speed", "targets.overspeed"];
  let held = 0;
  for (let draw = 0; draw < 6; draw += 1) {
    const values = new Map(build.values);
    for (const path of moved) {
      const value = values.get(path)!;
      if (value.kind !== "dimension") throw new Error(path);
      values.set(path, { ...value, nominal: value.nominal * (0.97 + 0.06 * random()) });
    }
    const offset = values.get("piston.pinOffset")!;
    if (offset.kind === "dimension")
      values.set("piston.pinOffset", { ...offset, nominal: 4e-3 * (random() - 0.5) });
    held += holdToCatalog({ ...build, values });
  }
  expect(held).toBeGreaterThanOrEqual(6 * 19);
});

it("say which fields are missing, and why they cannot be", () => {
  const [, build] = demos[0]!;
  const without = new Map(build.values);
  without.delete("connectingRod.bigEndOutline");
  const [gap] = traceOverTurn({ ...build, values: without }, ["rodToCylinderGap"]);
  expect(gap).toMatchObject({ state: "missing", missing: ["connectingRod.bigEndOutline"] });
  const length = build.values.get("connectingRod.length")!;
  if (length.kind !== "dimension") throw new Error("no length");
  const short = new Map(build.values).set("connectingRod.length", { ...length, nominal: 0.01 });
  const [travel] = traceOverTurn({ ...build, values: short }, ["pistonTravel"]);
  expect(travel).toMatchObject({ state: "impossible" });
  expect(() => traceOverTurn(build, ["nothing"])).toThrow('no trace is called "nothing"');
});

it("the peak lies at the angle that the catalog names", () => {
  let held = 0;
  for (const [, build] of demos) {
    const nominals = new Nominals(build);
    const [pressure] = traceOverTurn(nominals, ["cylinderPressure"]);
    if (pressure?.state !== "value") continue;
    // The pressure is straight between whole degrees; the catalog lays a parabola through the highest three.
    expect(Math.abs(pressure.greatest.angle - nominals.size("peakPressureAngle")!)).toBeLessThan(
      (0.5 * Math.PI) / 180,
    );
    held += 1;
  }
  expect(held).toBeGreaterThan(0);
});
