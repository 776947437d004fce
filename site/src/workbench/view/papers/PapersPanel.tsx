import "./papers.css";
import { useEffect, useReducer } from "preact/hooks";
import type { Override, PaperProgress, PaperPurpose } from "trialfit/papers";
import type { PaperGround, WrittenSet } from "../../deskProtocol.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { papers as store } from "../../state/PaperStore.ts";
import { saveFile } from "../saveFile.ts";
import { OpenDocument } from "./OpenDocument.tsx";
import { PaperItem } from "./PaperItem.tsx";
import { PaperOrderForm } from "./PaperOrderForm.tsx";
import { printDocument } from "./printDocument.ts";

interface Props {
  readonly papers: readonly PaperPurpose[];
  readonly state: BenchState;
}

/** How far the writing is, in words and as a bar. */
function Progress({ progress: { rooms } }: { readonly progress: PaperProgress }) {
  const words =
    rooms === undefined
      ? "Judging the build…"
      : `Finding between which sizes each dimension may come out: ${rooms.found} of ${rooms.of}…`;
  return (
    <div class="progress">
      <p role="status">{words}</p>
      <progress
        aria-label="How far the papers are"
        {...(rooms === undefined ? {} : { value: rooms.found, max: Math.max(1, rooms.of) })}
      />
    </div>
  );
}

/** All papers that were written, as one document. */
function WholeSet({ written }: { readonly written: WrittenSet }) {
  return (
    <p class="ways">
      <b>All in one</b>
      <OpenDocument html={written.html} label="all papers" />
      <button type="button" aria-label="Print all papers" onClick={() => printDocument(written.html)}>
        Print
      </button>
      <button
        type="button"
        aria-label="Save as HTML: all papers"
        onClick={() => saveFile(written.html, "papers.html", "text/html")}
      >
        Save as HTML
      </button>
    </p>
  );
}

/** What the papers were written from, and what is on the bench now, say the same. */
const same = (a: PaperGround, b: PaperGround) =>
  a.text === b.text && a.set === b.set && (a.before === b.before || b.before === undefined);

/** The papers of the job, written from the build on the bench. */
export default function PapersPanel({ papers, state }: Props) {
  const [, draw] = useReducer((count: number, _: undefined) => count + 1, 0);
  store.begin(papers.map(({ id }) => id));
  useEffect(() => store.listen(() => draw(undefined)), []);
  const { order, ground, written, progress, failure } = store.state;
  const now: PaperGround = {
    text: state.history.text ?? "",
    file: "build.yaml",
    set: state.options.set,
    before: state.beside?.text,
  };
  const write = () => store.write(now);
  const pass = (name: string, override: Override | undefined) => {
    const { [name]: _, ...others } = order.passed;
    store.change({ passed: override === undefined ? others : { ...others, [name]: override } });
    store.write(ground ?? now);
  };
  const unwritten = papers.filter(
    ({ id }) => order.only.includes(id) && written?.papers.every((one) => one.id !== id),
  );
  return (
    <div class="papers">
      <p>
        The work beside the engine is done on paper. What is on it comes from the build as it stands here: the
        same papers as the command <code>trialfit papers</code> writes.
      </p>
      <PaperOrderForm
        papers={papers}
        order={order}
        compared={state.beside !== undefined}
        busy={progress !== undefined}
        change={(part) => store.change(part)}
        write={write}
      />
      {progress !== undefined && <Progress progress={progress} />}
      {failure !== undefined && (
        <p class="trouble" role="alert">
          The papers could not be written: {failure}
        </p>
      )}
      {written !== undefined && ground !== undefined && (
        <section class={`written ${progress === undefined ? "" : "older"}`} aria-labelledby="papers-written">
          <h3 id="papers-written">Written</h3>
          {!same(ground, now) && (
            <p class="trouble" role="status">
              The build has changed since these were written: write them anew before they are used.
            </p>
          )}
          <WholeSet written={written} />
          <ul class="written-papers">
            {written.papers.map((paper) => (
              <PaperItem key={paper.id} paper={paper} written={written} passed={order.passed} pass={pass} />
            ))}
          </ul>
          {progress === undefined && unwritten.length > 0 && (
            <p class="quiet">
              Not there, since this build gives them nothing to say or they were chosen after writing:{" "}
              {unwritten.map(({ title }) => title).join(", ")}.
            </p>
          )}
        </section>
      )}
    </div>
  );
}
