import {
  type DerivationStep,
  fieldLabel,
  formatNumber,
  Nominals,
  quantities,
  type StepInput,
  stepsTo,
} from "trialfit";
import { printInput, printResult, readInput } from "../../data/inputValue.ts";
import { prettyUnits, prettyView } from "../../data/prettyUnits.ts";
import type { FromTrace, ToTrace, TraceInput, TraceStepView, TraceView } from "../traceProtocol.ts";
import { parseFormula } from "./parseFormula.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { formulaMath, math, mathBox, symbolMath, valueMath } from "./typesetMath.ts";

const inline = (symbol: string) => math(symbolMath(symbol), "inline");

function viewInput(
  step: DerivationStep,
  input: StepInput,
  numberOf: ReadonlyMap<string, number>,
): TraceInput {
  const { symbol, path, label, value, written, assumed } = input;
  const before = numberOf.get(path);
  const quantity = quantities.get(step.id)!;
  const [taken, read] = [printInput(quantity, symbol, value), readInput(quantity, symbol, value)];
  return {
    symbol: inline(symbol),
    label,
    text: read === undefined ? (written ?? taken) : `${taken} (${written ?? read})`,
    ...(before === undefined ? { path } : { step: before }),
    assumed,
  };
}

function viewStep(step: DerivationStep, numberOf: ReadonlyMap<string, number>): TraceStepView {
  const { id, name, symbol, unit, decimals, formula, method, inputs, beside, takenFor, value } = step;
  const quantity = quantities.get(id)!;
  const read = formula === undefined ? undefined : parseFormula(formula);
  const known = new Map(
    inputs.map((one) => [one.symbol, prettyUnits(printInput(quantity, one.symbol, one.value))]),
  );
  const plain = printResult(quantity, value);
  const setNumber = (letter: string) =>
    known.has(letter) ? valueMath(known.get(letter)!) : symbolMath(letter);
  const line = (label: string, inner: string) => mathBox(label, `${symbolMath(symbol)}<mo>=</mo>${inner}`);
  return {
    id,
    name,
    ...(read === undefined
      ? {}
      : {
          formula: line(`Formula of ${name}: ${symbol} = ${formula}`, formulaMath(read)),
          numbers: line(`${name} with the numbers of this build`, formulaMath(read, setNumber)),
        }),
    ...(method === undefined ? {} : { method }),
    inputs: inputs.map((one) => viewInput(step, one, numberOf)),
    beside: beside.map(({ path, label, written }) => ({ path, label, text: written })),
    takenFor,
    symbol: inline(symbol),
    ...(plain === undefined ? {} : { plain }),
    value: formatNumber(value, unit, { decimals }),
  };
}

function viewTrace(nominals: Nominals, id: string): TraceView {
  const { name } = quantities.get(id)!;
  const derived = stepsTo(nominals, id);
  switch (derived.state) {
    case "missing":
      return { state: "none", name, why: `needs ${derived.missing.map(fieldLabel).join("; ")}` };
    case "impossible":
      return { state: "none", name, why: `cannot be: ${derived.reason}` };
    case "value": {
      const numberOf = new Map(derived.steps.map((step, at) => [step.id, at + 1]));
      return { state: "value", name, steps: derived.steps.map((step) => viewStep(step, numberOf)) };
    }
  }
}

let last: { readonly text: string; readonly nominals: Nominals | undefined } | undefined;

function nominalsOf({ text, file }: ToTrace["ground"]): Nominals | undefined {
  if (last?.text !== text) {
    const { build } = readWhatCan(text, file);
    last = { text, nominals: build && new Nominals(build) };
  }
  return last.nominals;
}

/** How numbers of a build come about, from what was entered to each of them. */
export function traceNumbers({ ground, ids }: Omit<ToTrace, "kind">): FromTrace["traces"] {
  const nominals = nominalsOf(ground);
  if (nominals === undefined) return {};
  return Object.fromEntries(
    ids.filter((id) => quantities.has(id)).map((id) => [id, prettyView(viewTrace(nominals, id))]),
  );
}
