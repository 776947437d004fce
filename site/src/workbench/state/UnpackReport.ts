import type { ItemView, PackedReport, ReportView } from "../protocol.ts";

/** Puts reports together again that `PackReport` packed, in the order in which they were. What is the same stays the same object. */
export class UnpackReport {
  private before: readonly ItemView[] = [];

  unpack(view: PackedReport): ReportView {
    const sections = view.sections.map((section) => ({
      ...section,
      items: section.items.map((item) => (typeof item === "number" ? this.before[item]! : item)),
    }));
    this.before = sections.flatMap(({ items }) => items);
    return { ...view, sections };
  }
}
