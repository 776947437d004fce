/** Whether a text in small letters has every word of what was typed. */
export function containsWords(text: string, typed: string): boolean {
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** Hides the groups of a list in which nothing is left to be seen. */
export function hideEmptyGroups(list: HTMLElement): void {
  for (const group of list.querySelectorAll<HTMLElement>("[data-group]"))
    group.hidden = group.querySelector("[data-text]:not([hidden])") === null;
}
