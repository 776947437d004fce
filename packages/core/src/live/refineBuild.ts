import { type EvaluateOptions, evaluation } from "../evaluate.ts";
import { type Refinement, refine, type StopSignal } from "./refine.ts";

export interface RefineOptions extends EvaluateOptions {
  /** When it is aborted, the refining ends with its reason at the next breath; what was derived by then is kept. */
  readonly signal?: StopSignal;
}

/**
 * Evaluates one build, and says soon what is known: the first report comes as soon as what is remembered from builds
 * before and what is cheap was judged, others follow while the rest is worked out, and the last is what `evaluate`
 * gives. Between them others have their turn at least every tenth of a second, unless a single value takes longer.
 * @param input a build from `readBuildText` or `withField`, or plain data in the shape of a build file
 * @throws as `evaluate` does, before the first report; the reason of the signal when it was aborted
 */
export function refineBuild(
  input: unknown,
  options: RefineOptions = {},
): AsyncGenerator<Refinement, void, void> {
  return refine(() => evaluation(input, options), options.signal);
}
