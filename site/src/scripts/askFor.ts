import type { OrderBook, OrderField } from "../data/OrderBook.ts";

/** A rule that is shown, with whether it stops an order. */
export interface ShownRule {
  readonly id: string;
  readonly stops: boolean;
}

/** A field to ask for, with how many of the shown rules rest on it. */
export interface Asked {
  readonly field: OrderField;
  readonly rules: number;
  readonly stops: number;
  /** False where it is only another way to what was asked for already. */
  readonly needed: boolean;
}

/** Fields of these parts on which the shown rules rest, by part; what most stops ask for first. */
export function askFor(
  data: OrderBook,
  parts: readonly string[],
  shown: readonly ShownRule[],
): ReadonlyMap<string, readonly Asked[]> {
  const found = new Map<number, { rules: number; stops: number; needed: boolean }>();
  for (const { id, stops } of shown) {
    const [needed, instead] = data.rules[id] ?? [[], []];
    for (const place of [...needed, ...instead]) {
      const one = found.get(place) ?? { rules: 0, stops: 0, needed: false };
      found.set(place, {
        rules: one.rules + 1,
        stops: one.stops + (stops ? 1 : 0),
        needed: one.needed || needed.includes(place),
      });
    }
  }
  const asked = [...found].map(([place, counts]) => ({ field: data.fields[place]!, ...counts }));
  const ordered = asked.sort(
    (a, b) => Number(b.needed) - Number(a.needed) || b.stops - a.stops || b.rules - a.rules,
  );
  return new Map(
    Object.keys(data.parts)
      .filter((part) => parts.includes(part))
      .map((part) => [part, ordered.filter(({ field }) => field.part === part)]),
  );
}

/** The list as plain text, to be sent to a seller. */
export function askText(data: OrderBook, asked: ReadonlyMap<string, readonly Asked[]>): string {
  return [...asked]
    .map(([part, list]) => {
      const lines = list.map(
        ({ field, needed }) => `- ${field.label} (${field.form})${needed ? "" : ", if you have it"}:`,
      );
      return [data.parts[part], ...lines].join("\n");
    })
    .join("\n\n");
}
