import { countOf } from "../../read/countOf.ts";
import type { DocumentItem, ReportDocument } from "../../report/ReportDocument.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { type ListedPart, type PartsList, PRICE_SHARES } from "./PartsList.ts";

/** From the least to the greatest of what parts have, and how many have none. */
function spanOf(
  parts: readonly ListedPart[],
  pick: (part: ListedPart) => number | undefined,
  print: (value: number) => string,
): string {
  const known = parts.map(pick).filter((value) => value !== undefined);
  if (known.length === 0) return "not given";
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const lacking = parts.length - known.length;
  const span = least === most ? print(least) : `${print(least)} to ${print(most)}`;
  return lacking === 0 ? span : `${span}; ${lacking} without`;
}

function listItem({ file, part, about, currency, keep, parts }: PartsList): DocumentItem {
  const fields = new Set(parts.flatMap(({ entries }) => Object.keys(entries)));
  const inStock = parts.filter(({ stock = 0 }) => stock > 0).length;
  return {
    title: `${file}: ${countOf(parts.length, "part")} of the kind ${part.key}`,
    tone: "good",
    lines: [
      ...(about === undefined ? [] : [{ text: about, tone: "faint" as const }]),
      { label: "fields", text: `${fields.size} given: ${[...fields].sort().join(", ")}` },
      ...(keep.length === 0 ? [] : [{ label: "keeps", text: `${keep.join(", ")}, as the build has them` }]),
      {
        label: "price",
        text: spanOf(
          parts,
          ({ price }) => price,
          (price) => `${(price / PRICE_SHARES).toFixed(2)} ${currency}`,
        ),
      },
      {
        label: "lead time",
        text: spanOf(
          parts,
          ({ leadTime }) => leadTime,
          (time) => formatNumber(time, "d"),
        ),
      },
      {
        label: "mass",
        text: spanOf(
          parts,
          ({ totalMass }) => totalMass,
          (mass) => formatNumber(mass, "kg"),
        ),
      },
      { label: "in stock", text: `${inStock} of ${parts.length}` },
    ],
  };
}

/** Lays out what is in parts lists that were read without a flaw. */
export function describeLists(lists: readonly PartsList[]): ReportDocument {
  const count = lists.reduce((sum, { parts }) => sum + parts.length, 0);
  return {
    title: "Parts lists",
    lead: [
      {
        text: `${countOf(count, "part")} in ${countOf(lists.length, "list")}, all of them read.`,
        tone: "good",
      },
    ],
    sections: [{ heading: "Lists", items: lists.map(listItem) }],
    closing: [],
  };
}
