import { containsWords, hideEmptyGroups } from "./listFilter.ts";

/** Filters the entries of a long page by words typed above them. */
export class WordFilter extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector("form");
    if (form === null) return;
    form.hidden = false;
    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("input", () => this.update(form));
    this.update(form);
  }

  private update(form: HTMLFormElement): void {
    const text = String(new FormData(form).get("text") ?? "");
    const items = [...this.querySelectorAll<HTMLElement>("[data-text]")];
    for (const item of items) item.hidden = !containsWords(item.dataset.text ?? "", text);
    hideEmptyGroups(this);
    const shown = items.filter((item) => !item.hidden).length;
    const noun = this.dataset.noun ?? "entries";
    const output = form.querySelector("output");
    if (output !== null)
      output.value =
        shown === items.length
          ? `All ${shown} ${noun}`
          : shown === 0
            ? `No ${noun} with “${text.trim()}”`
            : `${shown} of ${items.length} ${noun}`;
  }
}
