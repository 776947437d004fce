import type { ItemView, PackedReport, ReportView } from "../protocol.ts";

/** Packs reports one after the other: most of a report is what it was before a keystroke. */
export class PackReport {
  private before: ReadonlyMap<string, number> = new Map();

  pack(view: ReportView): PackedReport {
    const now = new Map<string, number>();
    const pack = (item: ItemView) => {
      const text = JSON.stringify(item);
      const place = this.before.get(text);
      if (!now.has(text)) now.set(text, count);
      count += 1;
      return place ?? item;
    };
    let count = 0;
    const sections = view.sections.map((section) => ({ ...section, items: section.items.map(pack) }));
    this.before = now;
    return { ...view, sections };
  }
}
