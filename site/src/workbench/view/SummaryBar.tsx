import { VerdictMark } from "../../components/VerdictMark.tsx";
import type { CountWord, Trouble } from "../protocol.ts";
import type { BenchState } from "../state/BenchState.ts";
import { marks } from "./marks.ts";

const duration = (ms: number) => (ms < 1000 ? `${Math.round(ms)} ms` : `${(ms / 1000).toFixed(1)} s`);

/** The first of what is wrong, with its line. */
function firstOf([first, ...others]: readonly Trouble[]): string {
  if (first === undefined) return "";
  const place = first.line === undefined ? "" : `line ${first.line}: `;
  const more = others.length === 0 ? "" : ` And ${others.length} more.`;
  return `${place}${first.text}${more}`;
}

/** How the build stands: the headline and how many rules say what. */
export function SummaryBar({ state }: { readonly state: BenchState }) {
  const { report, foreseen, done, first, took, failure, troubles } = state;
  const wrong = troubles.length;
  return (
    <div class="standing">
      <p class="headline" aria-live="polite">
        {failure !== undefined
          ? `The evaluator stopped: ${failure}`
          : report === undefined
            ? done
              ? "The file cannot be read: see the File panel."
              : "Working…"
            : report.lead[0]?.text}
      </p>
      {wrong > 0 && (
        <p class="trouble" role="alert">
          {/* Without a report nothing is judged at all: then the first slip is what one looks for. */}
          {report === undefined && done
            ? firstOf(troubles)
            : `${wrong === 1 ? "One entry" : `${wrong} entries`} cannot be read and ${wrong === 1 ? "is" : "are"} left out of every verdict.`}
        </p>
      )}
      {/* Stands there before there is a report, so that nothing below it moves when one comes. */}
      <ul class="counts">
        {(Object.keys(marks) as CountWord[]).map((word) => (
          <li key={word}>
            <b class="number">{report === undefined ? "–" : report.counts[word]}</b>{" "}
            {marks[word] === undefined ? "to be confirmed" : <VerdictMark word={marks[word]} />}
          </li>
        ))}
        <li class="quiet number" aria-live="off">
          {report === undefined
            ? ""
            : done
              ? `first verdicts after ${duration(first)}, all after ${duration(took)}`
              : foreseen
                ? "as worked out when this site was built; being worked out here…"
                : report.counts.pending > 0
                  ? "working…"
                  : "every verdict is there; what would settle the open ones is being looked for…"}
        </li>
      </ul>
    </div>
  );
}

/** The same in one line, for a phone; the bar above says it to those who listen. */
export function SlimBar({ state }: { readonly state: BenchState }) {
  const { report, done, troubles } = state;
  if (report === undefined) return null;
  const { fails, open, unknown, toConfirm } = report.counts;
  const wrong = troubles.length === 0 ? "" : ` · ${troubles.length} cannot be read`;
  return (
    <p class="slim number" aria-hidden="true">
      {fails} fail · {open} open · {unknown} unknown · {toConfirm} to be confirmed{wrong}
      {done ? "" : " · working…"}
    </p>
  );
}
