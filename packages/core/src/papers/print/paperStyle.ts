/** Sizes of paper, by their names in CSS. */
export const paperSizes = ["A4", "Letter"] as const;
export type PaperSize = (typeof paperSizes)[number];

/**
 * The look of papers: black on white, large enough to read at arm's length, meaning never by colour alone. Each
 * paper begins on a page of its own and says on every page what it belongs to.
 */
export function paperStyle(size: PaperSize, running: string): string {
  return `
@page { size: ${size}; margin: 16mm 12mm 18mm; @top-left { content: "${running}"; font: 8.5pt sans-serif; } @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8.5pt sans-serif; } }
* { box-sizing: border-box; }
html { background: #fff; color: #000; font: 10.5pt/1.3 "Liberation Sans", Arial, Helvetica, sans-serif; }
body { margin: 0 auto; max-width: 190mm; }
article { break-before: page; }
article:first-of-type { break-before: auto; }
header table { width: 100%; table-layout: fixed; border-collapse: collapse; font-size: 9.5pt; }
header td { border: 1px solid #000; padding: 1mm 2mm; overflow-wrap: break-word; }
@media screen and (max-width: 42rem) { body { padding: 0 3mm; } header tr { display: grid; grid-template-columns: 1fr 1fr; } header td:first-child, header td:last-child { grid-column: 1 / -1; } .sheet, .grid { display: block; overflow-x: auto; } }
h1 { font-size: 19pt; margin: 3mm 0 1mm; }
h2 { font-size: 13.5pt; margin: 5mm 0 1.5mm; border-bottom: 2px solid #000; break-after: avoid; }
h3 { font-size: 11.5pt; margin: 0; break-after: avoid; }
p { margin: 1mm 0; }
table.sheet { font-size: 9.5pt; width: 100%; border-collapse: collapse; margin: 1mm 0 3mm; }
table.sheet th, table.sheet td { border: 1px solid #000; padding: 0.7mm 1.4mm; text-align: left; vertical-align: top; overflow-wrap: break-word; hyphens: auto; }
table.fixed { table-layout: fixed; }
${Array.from({ length: 20 }, (_, index) => `col.w${index + 1} { width: ${5 * (index + 1)}%; }`).join(" ")}
table.grid { width: 100%; border-collapse: collapse; table-layout: fixed; margin: 1mm 0; }
table.grid th, table.grid td { border: 1px solid #000; padding: 0.5mm 1mm; font-size: 9.5pt; text-align: left; vertical-align: middle; }
table.grid th:first-child { width: 30mm; overflow-wrap: break-word; hyphens: auto; }
table.grid td { height: 8.5mm; }
table.grid .cell { display: block; min-height: 7mm; }
table.sheet th { border-bottom-width: 2px; font-size: 10pt; }
thead { display: table-header-group; }
tr, .step, .caution, .gate, .begin { break-inside: avoid; }
.blank { display: inline-flex; flex-direction: column; vertical-align: top; min-width: 22mm; margin: 0.5mm 2mm 1.2mm 0; font-size: 8.5pt; }
.blank.wide { min-width: 48mm; }
.blank .line { border-bottom: 1.2px solid #000; height: 8mm; text-align: right; font-size: 9pt; display: flex; align-items: end; justify-content: end; }
.tick { display: inline-block; width: 4.6mm; height: 4.6mm; border: 1.4px solid #000; vertical-align: -0.8mm; }
.caution { border: 2px solid #000; border-left-width: 8px; padding: 1.5mm 2.5mm; margin: 1.5mm 0; }
section > .caution, section > p { break-after: avoid; }
.caution ul { margin: 0.5mm 0 0; padding-left: 5mm; }
.gate { border: 3px double #000; padding: 2mm 3mm; margin: 2mm 0; }
.gate ul { margin: 1mm 0 0; padding-left: 6mm; }
.step { border: 1px solid #000; padding: 1mm 2mm; margin: 1mm 0; }
.step p { margin: 0.5mm 0; }
.hold { border-width: 2.5px; }
.hold > h3::before { content: "HOLD  "; letter-spacing: 0.05em; }
.signatures { display: flex; flex-wrap: wrap; gap: 4mm; margin-top: 6mm; break-inside: avoid; }
.signatures div { flex: 1 1 70mm; border-bottom: 1.2px solid #000; height: 15mm; font-size: 9.5pt; }
footer { margin-top: 4mm; font-size: 9pt; break-inside: avoid; }
`;
}
