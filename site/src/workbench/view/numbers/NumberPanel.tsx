import "./numbers.css";
import { useEffect, useReducer } from "preact/hooks";
import { href } from "../../../data/href.ts";
import { numbers, useNumbers } from "../../state/NumberStore.ts";
import { nowOnBench } from "../../state/nowOnBench.ts";
import type { TraceInput, TraceStepView, TraceView } from "../../traceProtocol.ts";
import { Markup } from "../Markup.tsx";

interface Props {
  /** Ids of quantities. */
  readonly ids: readonly string[];
  /** Goes to the field of an entry. */
  readonly goTo: (path: string) => void;
}

/** MathML that the worker made; it escapes every text. */
function Letter({ html }: { readonly html: string }) {
  return <span class="symbol" dangerouslySetInnerHTML={{ __html: html }} />;
}

function Input({ input, goTo }: { readonly input: TraceInput; readonly goTo: Props["goTo"] }) {
  const { symbol, label, text, path, step, assumed } = input;
  return (
    <li>
      <Letter html={symbol} /> <span class="number">{text}</span>:{" "}
      {path === undefined ? (
        <span>
          {label}, step {step}
        </span>
      ) : (
        <button type="button" class="link" onClick={() => goTo(path)}>
          {label}
        </button>
      )}
      {assumed && <span class="quiet"> (assumed: neither measured nor published)</span>}
    </li>
  );
}

function Step({ step, goTo }: { readonly step: TraceStepView; readonly goTo: Props["goTo"] }) {
  const { id, name, formula, numbers: set, method, inputs, beside, takenFor, symbol, value, plain } = step;
  return (
    <li>
      <p>
        <a href={href(`/quantities/${id}/`)}>{name}</a>
      </p>
      {formula !== undefined && <Markup html={formula} />}
      {set !== undefined && <Markup html={set} />}
      {formula === undefined && method !== undefined && <p class="quiet">{method}</p>}
      <p class="result number">
        <Letter html={symbol} /> = {plain !== undefined && `${plain} = `}
        <b>{value}</b>
      </p>
      <ul class="inputs plain-list">
        {inputs.map((input) => (
          <Input key={input.symbol} input={input} goTo={goTo} />
        ))}
        {beside.map(({ path, label, text }) => (
          <li key={path}>
            <button type="button" class="link" onClick={() => goTo(path)}>
              {label}
            </button>
            : {text}
          </li>
        ))}
        {takenFor.map((text) => (
          <li class="quiet" key={text}>
            taken for granted: {text}
          </li>
        ))}
      </ul>
    </li>
  );
}

function Trace({ trace, goTo }: { readonly trace: TraceView; readonly goTo: Props["goTo"] }) {
  if (trace.state === "none")
    return (
      <p>
        {trace.name} {trace.why}.
      </p>
    );
  const { steps } = trace;
  return (
    <ol class="steps" aria-label={`Steps to: ${trace.name}`}>
      {steps.map((step) => (
        <Step key={step.id} step={step} goTo={goTo} />
      ))}
    </ol>
  );
}

/** How the numbers of a finding come about: from what was entered to what the rule compares, step by step. */
export default function NumberPanel({ ids, goTo }: Props) {
  const [, draw] = useReducer((count: number, _: undefined) => count + 1, 0);
  useEffect(() => {
    numbers.follow({ text: nowOnBench.text, file: "build.yaml" });
    return nowOnBench.listen((text) => {
      numbers.follow({ text, file: "build.yaml" });
      draw(undefined);
    });
  }, []);
  useNumbers(ids);
  const traces = ids.flatMap((id) => numbers.trace(id) ?? []);
  const current = numbers.isAbout(nowOnBench.text);
  if (numbers.failure !== undefined)
    return (
      <p class="trouble" role="alert">
        It could not be worked out: {numbers.failure}
      </p>
    );
  return (
    <div class="numbers" aria-busy={!current}>
      {traces.length === 0 ? (
        <p role="status">Working it out…</p>
      ) : (
        <p class="quiet">
          At the nominal sizes of this build; what the tolerances add stands in the finding itself.
        </p>
      )}
      {traces.map((trace) => (
        <Trace key={trace.name} trace={trace} goTo={goTo} />
      ))}
    </div>
  );
}
