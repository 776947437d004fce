/** Prints a document of its own, not the page that it is asked for from. */
export function printDocument(html: string): void {
  const frame = document.createElement("iframe");
  frame.title = "What is being printed";
  frame.className = "printed-document";
  frame.srcdoc = html;
  frame.addEventListener("load", () => {
    const view = frame.contentWindow!;
    view.addEventListener("afterprint", () => setTimeout(() => frame.remove()));
    view.focus();
    view.print();
  });
  document.body.append(frame);
}
