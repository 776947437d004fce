import { drawBar } from "./drawBar.ts";
import type { DocumentLine, ReportDocument } from "./ReportDocument.ts";

/** Text from a build file must not become markup. */
function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~]/g, "\\$&").replace(/\s+/g, " ");
}

function line({ label, text, bar }: DocumentLine): readonly string[] {
  const head = label === undefined ? "" : `**${escapeMarkdown(label)}** `;
  return [`  - ${head}${escapeMarkdown(text)}`, ...(bar === undefined ? [] : [`    \`${drawBar(bar)}\``])];
}

/** A document as Markdown. */
export function renderMarkdown(document: ReportDocument): string {
  const out = [`# ${escapeMarkdown(document.title)}`, ""];
  for (const { text } of document.lead) out.push(`${escapeMarkdown(text)}  `);
  for (const section of document.sections) {
    out.push("", `## ${escapeMarkdown(section.heading)}`, "");
    if (section.intro !== undefined) out.push(escapeMarkdown(section.intro), "");
    for (const item of section.items) {
      const id = item.id === undefined ? "" : ` (\`${item.id.replaceAll("`", "")}\`)`;
      out.push(`- ${escapeMarkdown(item.title)}${id}`, ...item.lines.flatMap(line));
    }
  }
  for (const text of document.closing) out.push("", `> ${escapeMarkdown(text)}`);
  return `${out.join("\n")}\n`;
}
