import { isConfirmationPath } from "../read/confirmations.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { bandOrigins } from "../tables/bandOrigins.ts";
import { printField } from "./printValue.ts";
import type { ReportField } from "./Report.ts";

/** The values of a build as the report carries them. */
export function reportFields(values: ReadonlyMap<string, FieldValue>): readonly ReportField[] {
  return [...values].flatMap(([path, value]): ReportField[] => {
    if (value.kind === "text" || isConfirmationPath(path)) return [];
    const head = { path, label: fieldLabel(path), text: printField(value), provenance: value.provenance };
    if (value.kind !== "dimension") return [head];
    const { unit, nominal, low, high, toleranceFrom } = value;
    const { standing } = bandOrigins[toleranceFrom];
    return [
      {
        ...head,
        unit,
        nominal,
        low,
        high,
        toleranceFrom,
        ...(standing === undefined ? {} : { toleranceStanding: standing }),
      },
    ];
  });
}
