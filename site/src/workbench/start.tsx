import "../pictures/pictures.css";
import "./workbench.css";
import { render } from "preact";
import { href } from "../data/href.ts";
import type { DemoText, FormData, ReportView } from "./protocol.ts";
import { Workbench } from "./view/Workbench.tsx";

async function read<T>(address: string | undefined): Promise<T> {
  const answer = await fetch(address ?? "");
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json() as Promise<T>;
}

/** Keeps the workbench for use without a network. It fetches every file of it: what is on the page goes first. */
function keepForOffline(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  navigator.serviceWorker.register(href("/offline.js")).catch(() => {
    // Without it the workbench needs the network at each visit; nothing else changes.
  });
}

const root = document.getElementById("workbench");
if (root !== null) {
  // It may come after the rest; without it the verdicts wait for the evaluator.
  const foreseen = read<ReportView>(root.dataset.first).catch(() => undefined);
  try {
    const [form, demos] = await Promise.all([
      read<FormData>(root.dataset.form),
      read<readonly DemoText[]>(root.dataset.demos),
    ]);
    root.replaceChildren();
    render(<Workbench form={form} demos={demos} foreseen={foreseen} onJudged={keepForOffline} />, root);
  } catch (error) {
    root.textContent = `The workbench could not start (${String(error)}). Load the page again.`;
  }
  root.setAttribute("aria-busy", "false");
}
