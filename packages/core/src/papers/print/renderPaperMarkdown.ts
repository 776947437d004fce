import { DISCLAIMER } from "../../report/describeReport.ts";
import type { Cell, Paper, PaperGrid, PaperHead, PaperSection, Piece } from "../Paper.ts";

const escaped = (text: string) => text.replace(/([\\|*_`<>[\]])/g, "\\$1").replace(/\s*\n\s*/g, " ");

function piece(one: Piece): string {
  if (typeof one === "string") return escaped(one);
  switch (one.kind) {
    case "number":
      return escaped(one.text);
    case "tick":
      return "☐";
    case "blank":
      return `${escaped(one.label)} ________${one.unit === undefined ? "" : ` ${escaped(one.unit)}`} `;
  }
}

const cell = (pieces: Cell): string => pieces.map(piece).join("").trim();

const caution = (text: string): readonly string[] => [`> **Caution.** ${escaped(text)}`, ""];

const table = (columns: readonly string[], rows: readonly (readonly string[])[]): readonly string[] => [
  `| ${columns.map(escaped).join(" | ")} |`,
  `| ${columns.map(() => "---").join(" | ")} |`,
  ...rows.map((row) => `| ${row.join(" | ")} |`),
  "",
];

const gridRows = ({ rows }: PaperGrid) =>
  rows.map(({ name, cells }) => [escaped(name), ...cells.map(() => " ")]);

function section({ heading, intro, cautions = [], body }: PaperSection): readonly string[] {
  const lines =
    body.kind === "table"
      ? table(
          body.columns,
          body.rows.map((row) => row.map(cell)),
        )
      : body.steps.flatMap(({ title, hold, lines: own, grid, cautions: near = [] }) => [
          `### ${hold === true ? "HOLD: " : ""}${escaped(title)}`,
          "",
          ...near.flatMap(caution),
          ...own.flatMap((line) => [cell(line), ""]),
          ...(grid === undefined ? [] : table([grid.corner, ...grid.columns], gridRows(grid))),
        ]);
  return [
    `## ${escaped(heading)}`,
    "",
    ...(intro === undefined ? [] : [escaped(intro), ""]),
    ...cautions.flatMap(caution),
    ...lines,
    "",
  ];
}

/** One paper as Markdown. A paper that is held shows what it waits for, and nothing else. */
export function renderPaperMarkdown(paper: Paper, { build, revision, date, hash, rules }: PaperHead): string {
  const { gate } = paper;
  const waits = gate?.waitsFor ?? [];
  const held = waits.length > 0 && gate?.override === undefined;
  const gateLines =
    waits.length === 0
      ? []
      : [
          held
            ? "**HELD: not to be used yet.** It waits for:"
            : `**Let pass by ${escaped(gate!.override!.by)}:** ${escaped(gate!.override!.because)}. Still open:`,
          "",
          ...waits.map((one) => `- ${escaped(one)}`),
          "",
        ];
  return [
    `# ${escaped(paper.title)}`,
    "",
    `${escaped(build)} · revision ${escaped(revision)} · ${date} · ${hash} · ${escaped(rules)}`,
    "",
    escaped(paper.purpose),
    "",
    ...gateLines,
    ...(held ? [] : paper.sections.flatMap(section)),
    ...(held ? [] : paper.signatures.flatMap((one) => [`${escaped(one)}: ________________`, ""])),
    escaped(DISCLAIMER),
    "",
  ].join("\n");
}
