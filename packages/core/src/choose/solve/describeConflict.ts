import type { DocumentLine } from "../../report/ReportDocument.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { decimalsOf } from "./describeAim.ts";
import type { Solution, SolvedAim, SolvedConflict } from "./Solution.ts";

type Unsolved = Extract<Solution, { state: "conflict" }>;

/** Whether the nearest value that is possible is the least or the greatest one. */
function extremeWord({ kind, wanted }: SolvedAim, nearest: number): string {
  if (kind === "equal") return nearest > wanted ? "least" : "greatest";
  return kind === "most" ? "least" : "greatest";
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join() : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

function aloneText(aim: SolvedAim, { nearest, ends }: NonNullable<SolvedConflict["alone"]>): string {
  const head = `${aim.name} cannot be met by itself`;
  if (nearest === undefined)
    return `${head}: between these bounds all sizes that were tried contradict each other.`;
  const value = formatNumber(nearest, aim.unit, {
    decimals: decimalsOf({ ...aim, reached: nearest, met: false }),
  });
  const reasons = ends.map(
    ({ label, end, text }) => `${label} ${end === "low" ? "begins" : "ends"} at ${text}`,
  );
  const because =
    reasons.length === 0 ? "whatever the sizes between these bounds" : `because ${listed(reasons)}`;
  return `${head}: ${extremeWord(aim, nearest)} possible ${value}, ${because}.`;
}

/** Why there is no solution: a line for each aim that cannot be met, each set that pulls against each other, and steps that leave nothing. */
export function describeConflict({ conflicts, bySteps, stepless, aims }: Unsolved): readonly DocumentLine[] {
  const named = (id: string) => aims.find((one) => one.id === id);
  const lines = conflicts.map(({ aims: ids, alone }) => {
    const [first] = ids;
    const aim = named(first!);
    return alone !== undefined && aim !== undefined
      ? aloneText(aim, alone)
      : `These aims cannot be met together: ${ids.map((id) => named(id)?.name ?? id).join(", ")}. Any one of them left out, the others of these can.`;
  });
  if (conflicts.filter(({ alone }) => alone === undefined).length > 1)
    lines.push("For a solution, at least one aim of each of these sets must be left out or eased.");
  const without = stepless.map(
    ({ label, step }) => `No step of ${step} lies between the bounds of ${label}.`,
  );
  if (bySteps && without.length === 0)
    lines.push("The aims can be met, but not in these steps: smaller steps or wider allowances would do.");
  return [
    { text: "No solution.", tone: "bad" },
    ...[...lines, ...without].map((text) => ({ text, tone: "bad" as const })),
  ];
}
