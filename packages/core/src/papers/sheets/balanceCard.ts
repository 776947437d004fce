import { quantities } from "../../derive/generated/quantities.ts";
import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import type { Cell, Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { ownLabel } from "../partsOf.ts";
import { balancePlanes } from "../tables/balancePlanes.ts";
import { readingStep } from "./gridOf.ts";
import { blank, cautionsOf, checkRows, readingUnit, relevant, tableSection } from "./pieces.ts";

/** Masses on which the balance rests, by the rules of its system. */
function massesOf(source: PaperSource): readonly string[] {
  const rules = [...source.rules.values()].filter(({ file }) => file.system === "balance");
  return [...fields.values()]
    .filter(({ path, spec }) => {
      if (spec.kind !== "dimension" || !["g", "kg"].includes(spec.unit)) return false;
      return source.values.has(path) && rules.some((rule) => source.restsOn(rule, path));
    })
    .map(({ path }) => path);
}

function weighed(source: PaperSource, paths: readonly string[]): readonly PaperSection[] {
  if (paths.length === 0) return [];
  return [
    {
      heading: "Masses, each weighed",
      intro:
        "Weigh every piece on the same scale, clean and dry, with the pins, retainers and rings that will run.",
      body: {
        kind: "steps",
        ordered: false,
        steps: paths.map((path) =>
          readingStep(source, path, {
            title: fieldLabel(path),
            lines: [["Planned ", ...source.print.field(path)]],
          }),
        ),
      },
    },
  ];
}

function computed({ report, print }: PaperSource): readonly PaperSection[] {
  const shown = report.quantities.filter(
    ({ id, state }) => state === "value" && quantities.get(id)?.system === "balance",
  );
  return tableSection({
    heading: "Bobweight, forces and what may be left",
    columns: ["Quantity", "Value (lowest to highest)", "From the weighed masses"],
    rows: shown.map(({ id, name, low, nominal, high, unit }) => [
      [name],
      print.quantity(id, { low: low!, nominal: nominal!, high: high! }),
      [blank(name, print.units(unit)[0])],
    ]),
  });
}

function checks(source: PaperSource): readonly PaperSection[] {
  const own = relevant(source).filter(({ system }) => system === "balance");
  const agreed = Object.entries(balancePlanes).filter(([path]) => source.values.has(path));
  return [
    ...tableSection({
      heading: "Checks",
      cautions: cautionsOf(own),
      columns: ["Check", "Value", "Limit", "Stands"],
      rows: checkRows(source, own),
    }),
    ...tableSection({
      heading: "On the machine",
      columns: ["Entry", "Planned", "Front plane", "Rear plane"],
      rows: agreed.map(([path, ofPlane]) => [
        [ownLabel(path)],
        source.print.field(path),
        ...["front", "rear"].map(
          (plane): Cell =>
            ofPlane ? [blank(`${ownLabel(path)}, ${plane}`, readingUnit(source, path))] : ["–"],
        ),
      ]),
    }),
  ];
}

/** What the crankshaft is balanced to. */
export function balanceCard(source: PaperSource): Paper | undefined {
  const sections = [...weighed(source, massesOf(source)), ...computed(source), ...checks(source)];
  if (sections.length === 0) return undefined;
  return {
    id: "balance-card",
    title: "Balance card",
    purpose:
      "Each mass, the bobweight from it, and what unbalance may be left. A mass that changes later opens the balance again.",
    sections,
    signatures: ["Weighed by", "Balanced by, on which machine"],
  };
}
