import { render } from "preact-render-to-string";
import type { Solution, SolvedField } from "trialfit";
import { prettyMarkup } from "../../data/prettyUnits.ts";
import { type FamilyAxis, FamilyPlot } from "../../pictures/FamilyPlot.tsx";

type Family = NonNullable<Extract<Solution, { state: "solved" }>["family"]>;

/** Fewer points than this show no course. */
const LEAST = 3;

/** How the first two sizes of a family move together, as markup; undefined where fewer move or few are known. */
export function drawFamily({ moves, members }: Family, found: readonly SolvedField[]): string | undefined {
  const axes = moves.slice(0, 2).map(({ path, label }): FamilyAxis | undefined => {
    const of = (fields: readonly SolvedField[]) => fields.find((one) => one.path === path)!;
    const sizes = members.map((member) => of(member).value);
    const { value, unit } = of(found);
    return new Set(sizes).size < LEAST ? undefined : { label, unit, sizes, found: value };
  });
  const [across, up] = axes;
  return across === undefined || up === undefined
    ? undefined
    : prettyMarkup(render(<FamilyPlot across={across} up={up} />));
}
