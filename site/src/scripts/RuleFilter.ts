/** Filters the list of rules on the page; what is chosen stands in the address, so that it can be shared. */
export class RuleFilter extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector("form");
    if (form === null) return;
    form.hidden = false;
    readAddress(form);
    const update = () => this.update(form);
    form.addEventListener("input", update);
    form.addEventListener("reset", () => setTimeout(update));
    form.addEventListener("submit", (event) => event.preventDefault());
    window.addEventListener("popstate", () => {
      readAddress(form);
      update();
    });
    update();
  }

  private update(form: HTMLFormElement): void {
    const items = [...this.querySelectorAll<HTMLElement>("[data-text]")];
    const chosen = chosenOf(form);
    for (const item of items) item.hidden = !matches(item, chosen);
    for (const group of this.querySelectorAll<HTMLElement>("[data-group]")) {
      group.hidden = group.querySelector("[data-text]:not([hidden])") === null;
    }
    for (const menu of form.querySelectorAll("select")) countOptions(menu, items, chosen);
    const shown = items.filter((item) => !item.hidden).length;
    const output = form.querySelector("output");
    if (output !== null)
      output.value =
        shown === items.length ? `All ${items.length} rules` : `${shown} of ${items.length} rules`;
    const query = new URLSearchParams([...chosen]).toString();
    history.replaceState(null, "", `${location.pathname}${query === "" ? "" : `?${query}`}${location.hash}`);
  }
}

type Chosen = ReadonlyMap<string, string>;

function chosenOf(form: HTMLFormElement): Chosen {
  const entries = [...new FormData(form)].map(([name, value]) => [name, String(value).trim()] as const);
  return new Map(entries.filter(([, value]) => value !== ""));
}

function readAddress(form: HTMLFormElement): void {
  const query = new URLSearchParams(location.search);
  for (const field of form.querySelectorAll<HTMLInputElement | HTMLSelectElement>("[name]")) {
    const wanted = query.get(field.name) ?? "";
    const offered =
      !(field instanceof HTMLSelectElement) || [...field.options].some((option) => option.value === wanted);
    field.value = offered ? wanted : "";
  }
}

function matches(item: HTMLElement, chosen: Chosen): boolean {
  return [...chosen].every(([name, value]) => {
    const own = item.dataset[name] ?? "";
    if (name !== "text") return own.split(" ").includes(value);
    return value
      .toLowerCase()
      .split(/\s+/)
      .every((word) => own.includes(word));
  });
}

/** Says beside each option how many rules it would leave, with everything else as chosen. */
function countOptions(menu: HTMLSelectElement, items: readonly HTMLElement[], chosen: Chosen): void {
  for (const option of menu.options) {
    if (option.dataset.label === undefined) continue;
    const count = items.filter((item) =>
      matches(item, new Map([...chosen, [menu.name, option.value]])),
    ).length;
    option.text = `${option.dataset.label} (${count})`;
    option.disabled = count === 0 && !option.selected;
  }
}
