import type { OrderBook } from "../data/OrderBook.ts";
import { type Asked, askFor, askText } from "./askFor.ts";

const lists = new WeakMap<HTMLElement, OrderList>();

function add<K extends keyof HTMLElementTagNameMap>(
  to: HTMLElement,
  tag: K,
  text = "",
): HTMLElementTagNameMap[K] {
  const element = to.appendChild(document.createElement(tag));
  element.textContent = text;
  return element;
}

const counted = (count: number, word: string) => `${count} ${word}${count === 1 ? "" : "s"}`;

/** The list of what to ask sellers for, to be copied or printed. */
export class OrderList {
  private readonly place: HTMLElement;
  private readonly data: Promise<OrderBook>;
  private turn = 0;

  private constructor(place: HTMLElement) {
    this.place = place;
    this.data = fetch(place.dataset.source ?? "").then((answer) => answer.json() as Promise<OrderBook>);
    place.querySelector("[data-copy]")?.addEventListener("click", () => void this.copy());
    place.querySelector("[data-print]")?.addEventListener("click", () => this.print());
  }

  /** The list at this place, made once. */
  static of(place: HTMLElement): OrderList {
    const list = lists.get(place) ?? new OrderList(place);
    lists.set(place, list);
    return list;
  }

  /** Shows what the shown rules ask of these parts. */
  async show(parts: readonly string[], shown: readonly HTMLElement[]): Promise<void> {
    this.turn += 1;
    const turn = this.turn;
    const data = await this.data.catch(() => undefined);
    if (turn !== this.turn) return;
    const output = this.place.querySelector<HTMLElement>("[data-asked]")!;
    if (data === undefined) {
      output.textContent = "The list could not be loaded.";
      return;
    }
    const rules = shown.map(({ dataset }) => ({
      id: dataset.rule ?? "",
      stops: dataset.weight === "stop",
    }));
    const asked = askFor(data, parts, rules);
    output.replaceChildren();
    for (const [part, list] of asked) this.showPart(output, data.parts[part] ?? part, list);
    this.text.value = askText(data, asked);
    this.say("");
  }

  private get text(): HTMLTextAreaElement {
    return this.place.querySelector("textarea")!;
  }

  private showPart(to: HTMLElement, label: string, list: readonly Asked[]): void {
    add(to, "h3", label);
    if (list.length === 0) add(to, "p", "The rules shown read nothing of this part.").className = "quiet";
    const items = add(to, "dl");
    for (const { field, rules, stops, needed } of list) {
      const item = add(items, "div");
      const head = add(item, "dt", field.label);
      add(head, "span", ` ${field.form}`).className = "quiet";
      add(item, "dd", field.help);
      const marks = [
        `Asked by ${counted(rules, "rule")}${stops === 0 ? "" : `, ${counted(stops, "stop")}`}`,
        ...(needed ? [] : ["only where the seller has it: another way to the same numbers"]),
        ...(field.usual ? ["left out, a usual value is taken"] : []),
      ];
      add(item, "dd", `${marks.join("; ")}.`).className = "quiet";
    }
  }

  private say(text: string): void {
    const said = this.place.querySelector("output");
    if (said !== null) said.value = text;
  }

  private async copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(this.text.value);
      this.say("Copied");
    } catch {
      this.text.closest("details")?.setAttribute("open", "");
      this.text.select();
      this.say("Copy the marked text");
    }
  }

  private print(): void {
    const root = document.documentElement;
    root.classList.add("print-order");
    window.addEventListener("afterprint", () => root.classList.remove("print-order"), { once: true });
    window.print();
  }
}
