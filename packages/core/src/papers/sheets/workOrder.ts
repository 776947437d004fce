import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import { isMeasured } from "../gates.ts";
import type { Cell, Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { partLabel } from "../partsOf.ts";
import { operations } from "../tables/operations.ts";
import { readingStep } from "./gridOf.ts";
import { blank, cautionsOf, isOfStage, namedFields, relevant, roomCell, tick, words } from "./pieces.ts";

/** A size of nothing (no notch, no cut) asks for no operation. */
function needsWork({ values }: PaperSource, path: string): boolean {
  const value = values.get(path);
  return value?.kind === "dimension" && value.nominal !== 0;
}

/** The part that a size is cut to, and whether it has been measured. */
function cutTo(source: PaperSource, part: string | undefined): string {
  if (part === undefined) return "";
  const key = `${part}.`;
  const own = [...source.values].filter(
    ([path, value]) => path.startsWith(key) && value.kind === "dimension" && fields.has(path),
  );
  const measured = own.some(([path]) => isMeasured(path, source.values));
  return measured
    ? `Cut to the ${partLabel(part).toLowerCase()} delivered.`
    : `The ${partLabel(part).toLowerCase()} has not been measured: wait for it, this target is from its data sheet.`;
}

function finishLine(source: PaperSource, paths: readonly string[]): readonly Cell[] {
  const given = paths.filter((path) => source.build.values.has(path));
  if (given.length === 0) return [];
  return [["Finish and form: ", ...namedFields(source, given), "."]];
}

/** The operations that give this build its sizes, in their order. */
function operationTable(source: PaperSource): readonly PaperSection[] {
  const wanted = Object.entries(operations).filter(([path]) => needsWork(source, path));
  if (wanted.length === 0) return [];
  return [
    {
      heading: "Operations, in this order",
      intro:
        "“May come out” is the room that everything else leaves: outside it, the check named beside it no longer holds over the tolerances of the other parts. The target is the size to aim at.",
      body: {
        kind: "steps",
        ordered: true,
        steps: wanted.map(([path, { name, datum, joint, finish, to }], index) => {
          const lines: readonly Cell[] = [
            [
              `${fieldLabel(path)}: target `,
              ...source.print.field(path),
              ". May come out ",
              ...roomCell(source, path),
              ".",
            ],
            [`Measured from: ${datum}. Held: ${joint}. ${cutTo(source, to)}`.trim()],
            ...finishLine(source, finish),
          ];
          const beside = { single: [blank("instrument")], always: [] };
          return readingStep(source, path, { title: `${index + 1}. ${name}`, lines }, beside);
        }),
      },
    },
  ];
}

/** What findings ask of the machine shop. */
function findings(source: PaperSource): readonly PaperSection[] {
  const asked = relevant(source).filter(
    ({ work, verdict, toConfirm }) => work === "machine" && verdict === "fails" && !toConfirm,
  );
  if (asked.length === 0) return [];
  return [
    {
      heading: "Asked for by findings",
      body: {
        kind: "steps",
        ordered: false,
        steps: asked.map((verdict) => ({
          title: verdict.title,
          hold: verdict.weight === "stop",
          cautions: cautionsOf([verdict]),
          lines: [words(verdict.remedy)],
        })),
      },
    },
  ];
}

/** Rules that a person confirms while or before the shop works. */
function confirmed(source: PaperSource): readonly PaperSection[] {
  const asked = relevant(source).filter(
    (verdict) => verdict.confirm !== undefined && isOfStage(source, verdict, "machine"),
  );
  if (asked.length === 0) return [];
  return [
    {
      heading: "To be seen and signed in the shop",
      body: {
        kind: "steps",
        ordered: false,
        steps: asked.map((verdict) => ({
          title: verdict.title,
          hold: verdict.weight === "stop",
          cautions: cautionsOf([verdict]),
          lines: [
            [verdict.confirm!.check],
            [`When: ${verdict.confirm!.moment} Not right: ${verdict.confirm!.failure}`],
            [tick("seen"), " seen ", blank("by, on")],
          ],
        })),
      },
    },
  ];
}

/** What the machine shop does, cut to the parts in hand. */
export function workOrder(source: PaperSource): Paper | undefined {
  const sections = [...operationTable(source), ...findings(source), ...confirmed(source)];
  if (sections.length === 0) return undefined;
  return {
    id: "work-order",
    title: "Machine-shop work order",
    purpose: "Each operation with its target, the room it has, its datum and its state of assembly.",
    sections,
    signatures: ["Machined by", "Measured by, with which instruments"],
  };
}
