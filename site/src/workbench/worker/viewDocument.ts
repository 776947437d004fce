import type { Comparison, DocumentItem, DocumentLine, ReportDocument } from "trialfit";
import { type BandPicture, bandPicture } from "../../data/bandPicture.ts";
import { prettyUnits, prettyView } from "../../data/prettyUnits.ts";
import type { DocumentView, ItemView, LineView } from "../protocol.ts";
import { withLinks, withTitles } from "./ruleTitles.ts";

/** A comparison is laid out once: in one report after the other most are the same. */
const laidOut = new WeakMap<Comparison, BandPicture | undefined>();

function pictureOf(comparison: Comparison): BandPicture | undefined {
  if (!laidOut.has(comparison)) laidOut.set(comparison, prettyView(bandPicture(comparison)));
  return laidOut.get(comparison);
}

export function viewLine({ label, text, tone = "plain", comparison }: DocumentLine): LineView {
  const band = comparison === undefined ? undefined : pictureOf(comparison);
  return {
    ...(label === undefined ? {} : { label }),
    text: prettyUnits(withTitles(text)),
    tone,
    ...(band === undefined ? {} : { band }),
  };
}

/** The same where the page leads from each rule that is named to its page. */
export const viewLinked = (line: DocumentLine): LineView => viewLine({ ...line, text: withLinks(line.text) });

export function viewItem({ title, id, tone, lines }: DocumentItem): ItemView {
  return { title, ...(id === undefined ? {} : { id }), tone, lines: lines.map(viewLine) };
}

/** A document of the evaluator as the page shows it: plain data, pictures laid out. */
export function viewDocument({ title, lead, sections, closing }: ReportDocument): DocumentView {
  return {
    title,
    lead: lead.map(viewLine),
    sections: sections.map(({ heading, intro, items }) => ({
      heading,
      ...(intro === undefined ? {} : { intro }),
      items: items.map(viewItem),
    })),
    closing,
  };
}
