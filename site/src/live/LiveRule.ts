/**
 * A rule that can be tried with other numbers. Until somebody touches it, this is all that the page carries: the
 * evaluator comes with the first touch.
 */
export class LiveRule extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector("form");
    if (form === null) return;
    form.hidden = false;
    this.querySelector("[data-without-script]")?.remove();
    form.addEventListener("submit", (event) => event.preventDefault());
    const touch = () => {
      for (const kind of TOUCHES) form.removeEventListener(kind, touch);
      void import("./startSession.tsx").then(({ startSession }) => startSession(this, form));
    };
    for (const kind of TOUCHES) form.addEventListener(kind, touch);
  }
}

const TOUCHES = ["focusin", "pointerdown", "input"] as const;
