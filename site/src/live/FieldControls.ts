import { type Entry, readNumber, rewrite, type Scale, writeEntry } from "./Entry.ts";

type Control = HTMLInputElement | HTMLSelectElement;
/** A number and its tolerance, as they stand in their boxes. */
type Texts = readonly [value: string, tolerance: string];

function startOf(control: Control): string {
  if (control instanceof HTMLInputElement) return control.defaultValue;
  return (
    [...control.options].find((option) => option.defaultSelected)?.value ?? control.options[0]?.value ?? ""
  );
}

/** The controls of one field on a rule's page: what is entered, in which unit, and what is wrong with it. */
export class FieldControls {
  readonly path: string;
  private readonly box: HTMLElement;
  private unit: string;
  /** What was typed, in which unit, and what another unit made of it: however often that changes, it is not rounded again. */
  private typed: { readonly unit: string; readonly texts: Texts; readonly now: Texts } | undefined;

  constructor(box: HTMLElement) {
    this.box = box;
    this.path = box.dataset.path ?? "";
    const unit = this.control("unit");
    this.unit = unit === null ? "" : startOf(unit);
    // A unit may have been chosen before this was here to follow.
    if (unit !== null && unit.value !== this.unit) this.changeUnit();
  }

  private control(part: string): Control | null {
    return this.box.querySelector<Control>(`[data-part="${part}"]`);
  }

  private pieces(read: (control: Control) => string): Entry {
    const part = (name: string) => {
      const control = this.control(name);
      return control === null ? undefined : read(control);
    };
    return {
      value: part("value") ?? "",
      unit: part("unit"),
      word: part("word"),
      tolerance: part("tolerance"),
    };
  }

  /** What stands in the controls now; undefined where nothing is entered. */
  get entry(): Entry | undefined {
    const entry = this.pieces((control) => control.value);
    return entry.value.trim() === "" ? undefined : entry;
  }

  /** Whether it holds a text that no reader of numbers could read; the evaluator says more of it. */
  get isNoNumber(): boolean {
    const value = this.control("value");
    return (
      this.control("unit") !== null && value !== null && value.value.trim() !== "" && !/\d/.test(value.value)
    );
  }

  get changed(): boolean {
    return writeEntry(this.pieces((control) => control.value)) !== writeEntry(this.pieces(startOf));
  }

  /** Takes over what a control was just set to: a slider sets the number, another unit keeps the size. */
  follow(target: EventTarget | null): void {
    const value = this.control("value");
    const slide = this.control("slide");
    if (target === slide && value !== null && slide !== null) value.value = slide.value;
    if (target === this.control("unit")) this.changeUnit();
    if (target === value && value !== null && slide !== null) {
      const number = readNumber(value.value);
      if (Number.isFinite(number)) slide.value = String(number);
    }
  }

  /** Everything as at first, after the form was reset. */
  restart(): void {
    this.unit = this.control("unit")?.value ?? "";
    const slide = this.control("slide");
    if (!(slide instanceof HTMLInputElement)) return;
    const { least, most, step } = slide.dataset;
    Object.assign(slide, { min: least, max: most, step, value: slide.defaultValue });
  }

  private scale(symbol: string): Scale {
    const menu = this.control("unit") as HTMLSelectElement;
    const option = [...menu.options].find((one) => one.value === symbol);
    return { zero: Number(option?.dataset.zero), step: Number(option?.dataset.step) };
  }

  private changeUnit(): void {
    const symbol = this.control("unit")?.value ?? "";
    const [from, to] = [this.scale(this.unit), this.scale(symbol)];
    const value = this.control("value");
    const tolerance = this.control("tolerance");
    const slide = this.control("slide");
    const shown: Texts = [value?.value ?? "", tolerance?.value ?? ""];
    const isMade = this.typed?.now.every((text, index) => text === shown[index]) === true;
    const typed = isMade ? this.typed! : { unit: this.unit, texts: shown };
    const typedIn = this.scale(typed.unit);
    const now: Texts =
      typed.unit === symbol
        ? typed.texts
        : [rewrite(typed.texts[0], typedIn, to), rewrite(typed.texts[1], typedIn, to, true)];
    this.typed = { unit: typed.unit, texts: typed.texts, now };
    this.unit = symbol;
    if (value !== null) value.value = now[0];
    if (tolerance !== null) tolerance.value = now[1];
    if (slide instanceof HTMLInputElement && value !== null) {
      slide.min = rewrite(slide.min, from, to);
      slide.max = rewrite(slide.max, from, to);
      slide.step = rewrite(slide.step, from, to, true);
      slide.value = value.value;
    }
  }

  /** Shows what is wrong, or that nothing is. */
  report(problem: string | undefined): void {
    const error = this.box.querySelector<HTMLElement>(".error");
    if (error === null) return;
    error.textContent = problem ?? "";
    error.hidden = problem === undefined;
    this.control("value")?.setAttribute("aria-invalid", String(problem !== undefined));
    this.box.toggleAttribute("data-changed", this.changed);
  }
}
