import type { ContactScene, MechanismScene } from "./Scene.ts";

/** The nearest place that a picture marks. */
export function markedContact({ contacts }: MechanismScene, mark?: string): ContactScene | undefined {
  return mark === undefined ? contacts[0] : contacts.find(({ trace }) => trace === mark);
}
