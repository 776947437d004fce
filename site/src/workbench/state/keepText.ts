const KEY = "trialfit.build";

/** Keeps the file in this browser, so that closing the page loses nothing. Where the browser keeps nothing, so be it. */
export function keepText(text: string): void {
  try {
    localStorage.setItem(KEY, text);
  } catch {
    // Storage may be switched off or full; the file can still be saved.
  }
}

export function keptText(): string | undefined {
  try {
    return localStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}
