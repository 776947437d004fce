/** Writes a size in every unit of its kind. What reads and converts comes with the first touch. */
export class UnitConverter extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector("form");
    if (form === null) return;
    form.hidden = false;
    this.querySelector("[data-without-script]")?.remove();
    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("input", () => void this.update(form));
  }

  private async update(form: HTMLFormElement): Promise<void> {
    const { convertUnits } = await import("./convertUnits.ts");
    // Read after the wait: what was typed first may be answered last.
    const data = new FormData(form);
    const text = String(data.get("size") ?? "");
    const result = convertUnits(text, String(data.get("kind") ?? "m"));
    const error = this.querySelector<HTMLElement>("[data-error]");
    const rows = this.querySelector<HTMLElement>("[data-rows]");
    if (error === null || rows === null) return;
    const problem = "problem" in result && text.trim() !== "" ? result.problem : "";
    error.textContent = problem;
    error.hidden = problem === "";
    form.querySelector("input")?.setAttribute("aria-invalid", String(problem !== ""));
    rows.replaceChildren(...("rows" in result ? result.rows : []).map(rowOf));
  }
}

function rowOf({ unit, text }: { readonly unit: string; readonly text: string }): HTMLElement {
  const row = document.createElement("div");
  const name = row.appendChild(document.createElement("dt"));
  const value = row.appendChild(document.createElement("dd"));
  name.textContent = unit;
  value.textContent = text;
  return row;
}
