import type { FieldValue } from "../../read/FieldValue.ts";
import { countOf } from "../../read/positions.ts";

type Values = ReadonlyMap<string, FieldValue>;

const whole = (values: Values, path: string): number | undefined => {
  const value = values.get(path);
  return value?.kind === "dimension" ? value.nominal : undefined;
};

const times = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined ? undefined : a * b;

/** How many pieces of a part an engine has, by the key of the part. A part that is not listed comes once. */
const pieces: Readonly<Record<string, (values: Values) => number | undefined>> = {
  liner: (values) => countOf("cylinder", values),
  mainCap: (values) => countOf("main", values),
  mainFastener: (values) => times(countOf("main", values), whole(values, "mainCap.boltsPerCap")),
  flywheelFastener: (values) => whole(values, "flywheel.boltCount"),
  connectingRod: (values) => countOf("cylinder", values),
  rodBolt: (values) => times(countOf("cylinder", values), whole(values, "rodBolt.count")),
  piston: (values) => countOf("cylinder", values),
  pistonPin: (values) => countOf("cylinder", values),
  ringSet: (values) => countOf("cylinder", values),
  headFastener: (values) => times(countOf("cylinder", values), whole(values, "headFastener.perCylinder")),
  inletValve: (values) => times(countOf("cylinder", values), whole(values, "inletValve.perCylinder")),
  exhaustValve: (values) => times(countOf("cylinder", values), whole(values, "exhaustValve.perCylinder")),
  valveSpring: (values) =>
    times(
      countOf("cylinder", values),
      (whole(values, "inletValve.perCylinder") ?? Number.NaN) +
        (whole(values, "exhaustValve.perCylinder") ?? Number.NaN),
    ),
};

/** How many pieces of a part the engine has; undefined where the build does not tell. */
export function piecesOf(part: string, values: Values): number | undefined {
  const count = pieces[part];
  const found = count === undefined ? 1 : count(values);
  return found === undefined || Number.isNaN(found) ? undefined : found;
}
