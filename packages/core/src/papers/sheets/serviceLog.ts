import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import type { Cell, Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { partKeyOf } from "../partsOf.ts";
import { blank, checkRows, relevant, tableSection } from "./pieces.ts";

const ROWS = 18;
const columns = ["Date", "Hours or runs", "Event, or limit passed", "Oil, filter", "Checked, found", "By"];

/** Entries that count the life of the engine or a part. */
function lives(source: PaperSource): readonly PaperSection[] {
  const restsOnRunning = (rule: string) =>
    [...fields.keys()].some(
      (path) => partKeyOf(path) === "running" && source.restsOn(source.rules.get(rule)!, path),
    );
  const counted = relevant(source).filter(
    ({ rule, confirm }) => confirm === undefined && restsOnRunning(rule),
  );
  const given = [...source.build.values.keys()].filter((path) => partKeyOf(path) === "running");
  return [
    ...tableSection({
      heading: "At the hand-over",
      columns: ["Point", "Value"],
      rows: given.map((path) => [[fieldLabel(path)], source.print.field(path)]),
    }),
    ...tableSection({
      heading: "Lives and what obliges",
      columns: ["Check", "Used", "Limit", "Stands"],
      rows: checkRows(source, counted),
    }),
  ];
}

/** The log that stays with the engine. */
export function serviceLog(source: PaperSource): Paper {
  return {
    id: "service-log",
    title: "Service log",
    purpose:
      "What the engine ran, what was done to it and what was found. An overspeed or a hot run is written the same day.",
    sections: [
      ...lives(source),
      {
        heading: "Log",
        body: {
          kind: "table",
          columns,
          rows: Array.from({ length: ROWS }, (_, index) =>
            columns.map((column): Cell => [blank(`${column}, line ${index + 1}`)]),
          ),
        },
      },
    ],
    signatures: [],
  };
}
