import { quantities } from "../derive/generated/quantities.ts";
import { groupsOf } from "../derive/groupsOf.ts";
import type { Quantity } from "../derive/Quantity.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";

/** The ways to a quantity, the surest first, a line each; none where there is only one. */
export function describeRoutes(quantity: Quantity): readonly string[] {
  const paths = Object.assign({}, ...groupsOf(quantity)) as Readonly<Record<string, string>>;
  const name = (path: string) => quantities.get(path)?.name ?? fieldLabel(path);
  return quantity.routes.map(({ needs, assumes }) => {
    const from =
      needs.length === 0 ? "without them" : `from ${needs.map((need) => name(paths[need]!)).join("; ")}`;
    return assumes === undefined ? from : `${from}, which takes for granted ${assumes}`;
  });
}
