import "../pictures/pictures.css";
import "./workbench.css";
import { render } from "preact";
import { href } from "../data/href.ts";
import type { DemoText, FormData } from "./protocol.ts";
import { Workbench } from "./view/Workbench.tsx";

async function read<T>(address: string | undefined): Promise<T> {
  const answer = await fetch(address ?? "");
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json() as Promise<T>;
}

if (import.meta.env.PROD && "serviceWorker" in navigator)
  navigator.serviceWorker.register(href("/offline.js")).catch(() => {
    // Without it the workbench needs the network at each visit; nothing else changes.
  });

const root = document.getElementById("workbench");
if (root !== null) {
  try {
    const [form, demos] = await Promise.all([
      read<FormData>(root.dataset.form),
      read<readonly DemoText[]>(root.dataset.demos),
    ]);
    root.replaceChildren();
    render(<Workbench form={form} demos={demos} />, root);
  } catch (error) {
    root.textContent = `The workbench could not start (${String(error)}). Load the page again.`;
  }
  root.setAttribute("aria-busy", "false");
}
