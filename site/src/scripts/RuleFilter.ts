import { addressOf, type Chosen, fillForm, matches, readForm } from "./Chosen.ts";
import { hideEmptyGroups } from "./listFilter.ts";

/** Filters the list of rules on the page; what is chosen stands in the address, so that it can be shared. */
export class RuleFilter extends HTMLElement {
  private asked: readonly string[] = [];

  connectedCallback(): void {
    const form = this.querySelector("form");
    if (form === null) return;
    form.hidden = false;
    this.querySelector("[data-without-script]")?.remove();
    const open = () => {
      fillForm(form, new URLSearchParams(location.search));
      this.update(form);
    };
    form.addEventListener("input", ({ target }) => {
      const typed = target instanceof HTMLInputElement && target.type === "search";
      this.remember(this.update(form), typed);
    });
    form.addEventListener("submit", (event) => event.preventDefault());
    for (const button of this.querySelectorAll("[data-clear]"))
      button.addEventListener("click", () => {
        fillForm(form, new URLSearchParams());
        this.remember(this.update(form), false);
        form.querySelector("input")?.focus();
      });
    window.addEventListener("popstate", open);
    open();
  }

  /** A choice is a step that the back button takes back; letters as they are typed are not. */
  private remember(chosen: Chosen, typed: boolean): void {
    const address = addressOf(chosen);
    if (typed) history.replaceState(null, "", address);
    else history.pushState(null, "", address);
  }

  private update(form: HTMLFormElement): Chosen {
    const items = [...this.querySelectorAll<HTMLElement>("[data-text]")];
    const chosen = readForm(form);
    for (const item of items) item.hidden = !matches(item, chosen);
    hideEmptyGroups(this);
    for (const menu of form.querySelectorAll("select")) countOptions(menu, items, chosen);
    const shown = items.filter((item) => !item.hidden);
    const output = form.querySelector("output");
    if (output !== null)
      output.value =
        shown.length === items.length
          ? `All ${items.length} rules`
          : `${shown.length} of ${items.length} rules`;
    const empty = this.querySelector<HTMLElement>("[data-empty]");
    if (empty !== null) empty.hidden = shown.length > 0;
    void this.showOrder(chosen.get("order") ?? [], shown);
    return chosen;
  }

  private async showOrder(parts: readonly string[], shown: readonly HTMLElement[]): Promise<void> {
    const place = this.querySelector<HTMLElement>("[data-order-list]");
    if (place === null) return;
    place.hidden = parts.length === 0;
    if (parts.length === 0) return;
    this.asked = parts;
    const { OrderList } = await import("./OrderList.ts");
    // What was chosen first may be answered last.
    if (this.asked !== parts) return;
    await OrderList.of(place).show(parts, shown);
  }
}

/** Says beside each option how many rules it would leave, with everything else as chosen. */
function countOptions(menu: HTMLSelectElement, items: readonly HTMLElement[], chosen: Chosen): void {
  for (const option of menu.options) {
    const { label } = option.dataset;
    if (label === undefined) continue;
    const wanted = new Map([...chosen, [menu.name, [option.value]]]);
    const count = items.filter((item) => matches(item, wanted)).length;
    option.text = `${label} (${count})`;
    option.disabled = count === 0 && !option.selected;
  }
}
