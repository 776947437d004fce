/** Paper cannot be opened: while a page is printed, everything that folds stands open. */
const opened = new Set<HTMLDetailsElement>();

addEventListener("beforeprint", () => {
  for (const details of document.querySelectorAll<HTMLDetailsElement>("main details:not([open])")) {
    // The workbench chooses by itself what of its report is printed; a curve is printed, not its table as well.
    if (details.closest("#workbench, figure") !== null) continue;
    details.open = true;
    opened.add(details);
  }
});
addEventListener("afterprint", () => {
  for (const details of opened) details.open = false;
  opened.clear();
});
