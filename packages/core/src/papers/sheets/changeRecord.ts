import { printBand } from "../../report/printValue.ts";
import type { Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { words } from "./pieces.ts";

const table = (
  heading: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): readonly PaperSection[] =>
  rows.length === 0
    ? []
    : [
        {
          heading,
          body: { kind: "table", columns, rows: rows.map((row) => row.map((text) => words(text))) },
        },
      ];

/** What changed between the state before and this one. */
export function changeRecord({ change }: PaperSource): Paper | undefined {
  if (change === undefined) return undefined;
  const { before, after, values, quantities, verdicts } = change;
  const sections = [
    ...table(
      "The two states",
      ["State", "Name", "Hash"],
      [
        ["before", before.name, before.hash.slice(0, 12)],
        ["after", after.name, after.hash.slice(0, 12)],
      ],
    ),
    ...table(
      "Entries",
      ["Entry", "Before", "After"],
      values.map((one) => [one.label, one.before ?? "nothing", one.after ?? "nothing"]),
    ),
    ...table(
      "Verdicts",
      ["Rule", "Before", "After", "Weight"],
      verdicts.map((one) => [one.title, one.before, one.after, one.weight]),
    ),
    ...table(
      "Numbers",
      ["Quantity", "Before", "After"],
      quantities.flatMap(({ name, unit, decimals, before: old, after: now }) => {
        const [was, is] = [old, now].map((span) =>
          span === undefined ? "not computable" : printBand(span, unit, decimals),
        );
        return was === is ? [] : [[name, was!, is!]];
      }),
    ),
  ];
  return {
    id: "change-record",
    title: "Change record",
    purpose: "What changed between two states of the build, and which verdicts that moved.",
    sections,
    signatures: ["Changed by", "Agreed with the customer"],
  };
}
