/**
 * Paper has no links: while the page is printed, each link of the text carries a number, and the addresses stand
 * in a list at the end. An address is listed once.
 */
function writeAddresses(list: HTMLElement): void {
  const numbers = new Map<string, number>();
  for (const link of document.querySelectorAll<HTMLAnchorElement>("main a[href]:not(.sl-anchor-link)")) {
    if (link.closest(".printed-links, nav, .site-footer") !== null) continue;
    if (link.getAttribute("href")!.startsWith("#") || !/^https?:$/.test(link.protocol)) continue;
    if (!numbers.has(link.href)) numbers.set(link.href, numbers.size + 1);
    link.dataset.printed = String(numbers.get(link.href));
  }
  const items = [...numbers.keys()].map((address) => {
    const item = document.createElement("li");
    item.textContent = decodeURI(address);
    return item;
  });
  list.querySelector("ol")!.replaceChildren(...items);
  list.hidden = items.length === 0;
}

const list = document.querySelector<HTMLElement>(".printed-links");
if (list !== null) {
  addEventListener("beforeprint", () => writeAddresses(list));
  addEventListener("afterprint", () => {
    list.hidden = true;
  });
}
