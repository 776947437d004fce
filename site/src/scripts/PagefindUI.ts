/** What the frame hands to the interface of the search. */
interface Options {
  /** Selector of the place into which it goes. */
  readonly element: string;
}

/**
 * Stands in for the interface of the search until its dialog is opened: it is the largest script of a page, and most
 * pages are read without it.
 */
export class PagefindUI {
  constructor(options: Options) {
    const dialog = document.querySelector(options.element)?.closest("dialog");
    if (dialog === null || dialog === undefined) return;
    const opened = new MutationObserver(() => {
      if (!dialog.open) return;
      opened.disconnect();
      void load(options, dialog);
    });
    opened.observe(dialog, { attributeFilter: ["open"] });
    if (dialog.open) {
      opened.disconnect();
      void load(options, dialog);
    }
  }
}

async function load(options: Options, dialog: HTMLDialogElement): Promise<void> {
  // @ts-expect-error The package has no types.
  const { PagefindUI: Interface } = await import("@pagefind/default-ui/npm_dist/mjs/ui-core.mjs");
  new Interface(options);
  dialog.querySelector("input")?.focus();
}
