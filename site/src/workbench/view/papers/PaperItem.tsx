import type { Override } from "trialfit/papers";
import type { WrittenPaper, WrittenSet } from "../../deskProtocol.ts";
import { saveFile } from "../saveFile.ts";
import { OpenDocument } from "./OpenDocument.tsx";
import { PassForm } from "./PassForm.tsx";
import { printDocument } from "./printDocument.ts";

interface Props {
  readonly paper: WrittenPaper;
  readonly written: WrittenSet;
  readonly passed: Readonly<Record<string, Override>>;
  readonly pass: (name: string, override: Override | undefined) => void;
}

/** One paper that was written: opened, printed, kept as a file, and what it or its lines wait for. */
export function PaperItem({ paper, written, passed, pass }: Props) {
  const { id, title, gate, lines = [], html, markdown } = paper;
  const held = lines.filter((line) => line.gate.waitsFor.length > 0);
  const still = held.filter((line) => line.gate.override === undefined).length;
  const file = (name: string, text: string, type: string, what: string) => (
    <button type="button" aria-label={`${what}: ${title}`} onClick={() => saveFile(text, name, type)}>
      {what}
    </button>
  );
  return (
    <li class="paper">
      <h4>{title}</h4>
      <p class="ways">
        <OpenDocument html={html} label={title} />
        <button type="button" aria-label={`Print: ${title}`} onClick={() => printDocument(html)}>
          Print
        </button>
        {file(`${id}.html`, html, "text/html", "Save as HTML")}
        {file(`${id}.md`, markdown, "text/markdown", "Save as Markdown")}
        {id === "trial-sheet" &&
          written.sheet !== undefined &&
          file("trial-sheet.csv", written.sheet, "text/csv", "Save as CSV to fill in")}
        {id === "engine-record" &&
          written.record !== undefined &&
          file("engine-record.json", written.record, "application/json", "Save the record as JSON")}
      </p>
      {gate !== undefined && gate.waitsFor.length > 0 && (
        <PassForm label={title} gate={gate} override={passed[id]} pass={(override) => pass(id, override)} />
      )}
      {held.length > 0 && (
        <details class="more">
          <summary>
            {still} of {lines.length} lines held
            <span class="sr-only"> on the {title.toLowerCase()}</span>
          </summary>
          {held.map((line) => (
            <div class="line" key={line.pass}>
              <h5>{line.label}</h5>
              <PassForm
                label={line.label}
                gate={line.gate}
                override={passed[line.pass]}
                pass={(override) => pass(line.pass, override)}
              />
            </div>
          ))}
        </details>
      )}
    </li>
  );
}
