import { containsWords } from "./listFilter.ts";

/** What is chosen in a filter: name of a control → its values; what is not chosen is not there. */
export type Chosen = ReadonlyMap<string, readonly string[]>;

type Control = HTMLInputElement | HTMLSelectElement;

export function readForm(form: HTMLFormElement): Chosen {
  const data = new FormData(form);
  const names = [...new Set(data.keys())];
  const entries = names.map((name) => {
    const values = data.getAll(name).map((value) => String(value).trim());
    return [name, values.filter((value) => value !== "")] as const;
  });
  return new Map(entries.filter(([, values]) => values.length > 0));
}

/** Sets the controls to what stands in the address; what they do not offer is left out. */
export function fillForm(form: HTMLFormElement, query: URLSearchParams): void {
  for (const control of form.querySelectorAll<Control>("[name]")) {
    const wanted = query.getAll(control.name);
    if (control instanceof HTMLInputElement && control.type === "checkbox")
      control.checked = wanted.includes(control.value);
    else {
      const [first = ""] = wanted;
      const offered =
        control instanceof HTMLInputElement || [...control.options].some(({ value }) => value === first);
      control.value = offered ? first : "";
    }
  }
}

export function addressOf(chosen: Chosen): string {
  const query = new URLSearchParams(
    [...chosen].flatMap(([name, values]) => values.map((value) => [name, value])),
  ).toString();
  return `${location.pathname}${query === "" ? "" : `?${query}`}${location.hash}`;
}

/** Whether an item has every chosen thing; of several values of one name, one is enough. */
export function matches(item: HTMLElement, chosen: Chosen): boolean {
  return [...chosen].every(([name, values]) => {
    const own = item.dataset[name] ?? "";
    if (name === "text") return values.every((value) => containsWords(own, value));
    const words = own.split(" ");
    return values.some((value) => words.includes(value));
  });
}
