import type { StrengthId, StrengthKind } from "../tables/strengths.ts";
import { hotShare, hotShareValid } from "./hotShare.ts";
import { quantity } from "./Quantity.ts";

type Reference = readonly [symbol: string, path: string];

interface HotStrength {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly system: "rods" | "pistons";
  readonly meaning: string;
  readonly kind: StrengthKind;
  /** Word of the choice → alloy of the table. */
  readonly alloys: Readonly<Record<string, StrengthId>>;
  readonly choice: string;
  /** Strength at 20 °C, and the temperature of the part. */
  readonly cold: Reference;
  readonly temperature: Reference;
  readonly given: Readonly<Record<string, string>>;
  readonly expect: string;
}

/** Declares a strength of a part at the temperature at which it runs. */
export function hotStrength({
  kind,
  alloys,
  choice,
  cold: [strength, strengthPath],
  temperature: [at, temperaturePath],
  given,
  expect,
  ...own
}: HotStrength) {
  return quantity({
    ...own,
    unit: "MPa",
    decimals: 0,
    inputs: { [strength]: strengthPath, [at]: temperaturePath } as Readonly<Record<string, string>>,
    choices: { alloy: choice },
    method:
      "Strength at 20 °C times what the table of strengths says is left of its alloy’s at this temperature, straight from point to point of the table.",
    compute: (n, { alloy }) => n[strength]! * hotShare(alloys, alloy, kind, n[at]!),
    shape: "monotone",
    valid: hotShareValid,
    sources: [{ id: "from-memory", where: "table of strengths" }],
    examples: [{ given, expect }],
    display: true,
  });
}
