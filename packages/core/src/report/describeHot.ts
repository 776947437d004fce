import { quantities } from "../derive/generated/quantities.ts";
import type { Quantity } from "../derive/Quantity.ts";
import type { DocumentLine } from "./ReportDocument.ts";

const named = ({ name, id }: Quantity) => `${name} [${id}]`;

/** Gaps stated cold whose value at running temperature this quantity is. */
export function coldPartners(id: string): readonly Quantity[] {
  return [...quantities.values()].filter(
    ({ hot }) => hot !== undefined && "quantity" in hot && hot.quantity === id,
  );
}

/** What becomes of a gap when the engine is hot, and which cold gap a hot one belongs to. */
export function describeHot({ id, hot }: Quantity): readonly DocumentLine[] {
  const own =
    hot === undefined
      ? []
      : "quantity" in hot
        ? [{ label: "hot", text: named(quantities.get(hot.quantity)!) }]
        : [{ label: "cold only", text: hot.coldOnly }];
  return [...own, ...coldPartners(id).map((one) => ({ label: "cold", text: named(one) }))];
}
