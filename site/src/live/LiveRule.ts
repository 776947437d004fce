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
    const output = this.querySelector("[data-output]");
    // Until the evaluator is there, a change is seen to be waited for.
    form.addEventListener("input", () => output?.setAttribute("aria-busy", "true"));
    const touch = () => {
      for (const kind of TOUCHES) form.removeEventListener(kind, touch);
      import("./startSession.tsx").then(
        ({ startSession }) => startSession(this, form),
        () => this.say("The evaluator cannot be fetched: the verdict shown is that of the numbers at first."),
      );
    };
    for (const kind of TOUCHES) form.addEventListener(kind, touch);
  }

  private say(text: string): void {
    const place = this.querySelector<HTMLElement>("[data-general]");
    if (place === null) return;
    place.textContent = text;
    place.hidden = false;
  }
}

const TOUCHES = ["focusin", "pointerdown", "input"] as const;
