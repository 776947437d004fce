import { readFileSync } from "node:fs";
import { test as property } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FieldValue } from "../read/FieldValue.ts";
import { readBuildText } from "../read/readBuild.ts";
import { deriveAll } from "./deriveAll.ts";
import { quantities } from "./generated/quantities.ts";
import { withDefaults } from "./withDefaults.ts";

const path = new URL("../../demo/harrow-eight.yaml", import.meta.url);
const values = withDefaults(readBuildText(readFileSync(path, "utf8"), "harrow-eight"));
const CURVE = "targets.torqueCurve";
const read = [...quantities.values()]
  .filter(({ tables }) => Object.values(tables).includes(CURVE))
  .map(({ id }) => id);

const nominal = (from: ReadonlyMap<string, FieldValue>, id: string): number => {
  const found = deriveAll(from, quantities, [id]).get(id)!;
  if (found.state !== "value") throw new Error(`${id} is ${found.state}`);
  return found.nominal;
};

/** The demo build with its curve changed row by row. */
function changed(change: (row: { speed: number; torque: number }) => { speed: number; torque: number }) {
  const curve = values.get(CURVE);
  if (curve?.kind !== "table") throw new Error("the demo build has no torque curve");
  const rows = curve.rows.map((row) => change(row as { speed: number; torque: number }));
  return new Map([...values, [CURVE, { ...curve, rows }]]);
}

describe("the torque curve of the invented V8", () => {
  it("gives the power that the build is planned for, at its speed", () => {
    expect(nominal(values, "curvePowerShare")).toBeCloseTo(1, 3);
    expect(nominal(values, "greatestPower") / nominal(values, "crankPower")).toBeCloseTo(1, 3);
    const wanted = values.get("targets.powerSpeed");
    expect(wanted?.kind === "dimension" && wanted.nominal).toBeCloseTo(
      nominal(values, "greatestPowerSpeed"),
      6,
    );
  });
  it("is missed by name where it is left out, by every quantity that reads it", () => {
    const without = new Map([...values].filter(([field]) => field !== CURVE));
    const found = deriveAll(without, quantities, [...read, "powerBandWidth", "meanPressureAtGreatestTorque"]);
    for (const id of [...read, "powerBandWidth", "meanPressureAtGreatestTorque"])
      expect(found.get(id)).toMatchObject({ state: "missing", missing: [CURVE] });
    expect(read.length).toBe(5);
  });
  it("is a target, like the power beside it", () =>
    expect(values.get(CURVE)).toMatchObject({ kind: "table", provenance: "target" }));
  it("says nothing about speeds that it does not reach", () => {
    const short = changed(({ speed, torque }) => ({ speed: speed / 2, torque }));
    expect(deriveAll(short, quantities, ["curvePowerShare"]).get("curvePowerShare")?.state).toBe(
      "impossible",
    );
  });
});

property.prop([fc.double({ min: 0.2, max: 3, noNaN: true })])(
  "more torque everywhere is more power and mean pressure in proportion, at the same speeds",
  (share) => {
    const scaled = changed(({ speed, torque }) => ({ speed, torque: share * torque }));
    for (const id of ["greatestTorque", "greatestPower", "meanPressureAtGreatestTorque", "curvePowerShare"])
      expect(nominal(scaled, id) / nominal(values, id)).toBeCloseTo(share, 9);
    for (const id of ["greatestTorqueSpeed", "greatestPowerSpeed", "powerBandWidth"])
      expect(nominal(scaled, id)).toBeCloseTo(nominal(values, id), 6);
  },
);
