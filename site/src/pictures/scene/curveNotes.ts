import { factType, fieldLabel, formatNumber, type Nominals, type Trace } from "trialfit";

/** A speed of the build with the name it has in its file: `8100 rpm (highest speed)`. */
function speedText(nominals: Nominals, path: string): string {
  const type = factType(path);
  const si = nominals.size(path);
  const label = fieldLabel(path).replace(/^[^:]*: /, "");
  return type?.kind === "number" && si !== undefined ? `${formatNumber(si, type.unit)} (${label})` : label;
}

/** At which speed each curve holds that depends on one, and what it is: charts of one build differ in it. */
export const curveNotes = (traces: readonly Trace[], nominals: Nominals): readonly string[] =>
  traces.flatMap((trace) =>
    trace.state !== "value" || trace.speeds.length === 0
      ? []
      : [
          `${trace.name} at ${trace.speeds.map((path) => speedText(nominals, path)).join(" and ")}. ${trace.meaning}`,
        ],
  );
