import { render } from "preact";
import { LiveVerdict, NoVerdict } from "../components/LiveVerdict.tsx";
import { startWorker } from "../worker/startWorker.ts";
import { FieldControls } from "./FieldControls.ts";
import type { LiveAnswer, LiveProblem } from "./LiveAnswer.ts";
import type { LiveRequest } from "./LiveRequest.ts";

/** A pause in typing after which the build is judged [ms]. */
const PAUSE = 120;

const NO_NUMBER = "This is no number.";

/** Judges the rule anew whenever a field of the form changes, in a worker, and shows what it says. */
export function startSession(host: HTMLElement, form: HTMLFormElement): void {
  const { rule = "", demo = "" } = host.dataset;
  const output = host.querySelector<HTMLElement>("[data-output]")!;
  const general = host.querySelector<HTMLElement>("[data-general]")!;
  const fields = [...form.querySelectorAll<HTMLElement>("[data-path]")].map((box) => new FieldControls(box));
  const worker = startWorker();
  let number = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** The verdict shown is that of other numbers: it is dimmed, and says so, until the new one is there. */
  const wait = () => output.setAttribute("aria-busy", "true");

  const complain = (problems: readonly LiveProblem[]) => {
    for (const field of fields) field.report(problems.find(({ path }) => path === field.path)?.text);
    const others = problems.filter(({ path }) => !fields.some((field) => field.path === path));
    general.textContent = others.map(({ label, text }) => `${label} ${text}`.trim()).join(" ");
    general.hidden = others.length === 0;
  };
  const ask = () => {
    const changed = fields.filter((field) => field.changed);
    number += 1;
    const request: LiveRequest = {
      number,
      rule,
      demo,
      changes: Object.fromEntries(changed.map((field) => [field.path, field.entry])),
    };
    wait();
    worker.postMessage(request);
  };
  const askSoon = () => {
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE);
  };
  worker.addEventListener("message", ({ data }: MessageEvent<LiveAnswer>) => {
    if (data.number !== number) return;
    output.setAttribute("aria-busy", "false");
    complain("problems" in data ? data.problems : []);
    render("view" in data ? <LiveVerdict view={data.view} /> : <NoVerdict />, output);
  });
  worker.addEventListener("error", () => {
    output.setAttribute("aria-busy", "false");
    complain([{ path: "", label: "", text: "The evaluator stopped: there is no verdict on these numbers." }]);
    render(<NoVerdict />, output);
  });
  form.addEventListener("input", ({ target }) => {
    for (const field of fields) field.follow(target);
    wait();
    // What can be seen to be unreadable is said while the evaluator is still being fetched.
    for (const field of fields) if (field.isNoNumber) field.report(NO_NUMBER);
    askSoon();
  });
  form.addEventListener("reset", () =>
    setTimeout(() => {
      for (const field of fields) field.restart();
      ask();
    }),
  );
  output.removeAttribute("aria-busy");
  for (const field of fields) if (field.isNoNumber) field.report(NO_NUMBER);
  if (fields.some((field) => field.changed)) ask();
}
