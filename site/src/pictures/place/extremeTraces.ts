import { quantities, traceKinds } from "trialfit";

/** Traces by the quantity that names their extreme. */
export const extremeTraces: ReadonlyMap<string, string> = new Map(
  [...traceKinds.values()].flatMap(({ id, extremes }) =>
    extremes.filter(({ of }) => quantities.has(of)).map(({ of }): [string, string] => [of, id]),
  ),
);
