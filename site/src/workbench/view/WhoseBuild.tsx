import type { DemoText } from "../protocol.ts";
import type { BenchState } from "../state/BenchState.ts";
import { usePrinting } from "./usePrinting.ts";

interface Props {
  readonly state: BenchState;
  readonly demos: readonly DemoText[];
}

const today = () =>
  new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });

/** Whether the build on the bench is a demo with invented data, one that was changed, or a person's own. */
export function WhoseBuild({ state, demos }: Props) {
  const printing = usePrinting();
  const { text } = state.history;
  const demo = demos.find(({ name }) => name === state.name);
  const said =
    text === undefined
      ? ""
      : demo === undefined
        ? "Your build, kept in this browser only."
        : demo.text === text
          ? "A demo build: all of its data is invented."
          : "It began as a demo build with invented data; only what you changed is yours.";
  return (
    <p class="whose-build quiet">
      {said}
      {demo !== undefined && demo.text === text && (
        <span class="on-screen"> Change something, or open a file of your own.</span>
      )}
      {printing && <span> Printed {today()}.</span>}
    </p>
  );
}
