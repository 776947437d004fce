interface Props {
  readonly html: string;
  /** What is opened, for those who hear only this. */
  readonly label: string;
}

/** Opened documents: kept as long as the page is, so that a reader of one can load it again. */
const opened = new Map<string, string>();

function open(html: string): void {
  const address = opened.get(html) ?? URL.createObjectURL(new Blob([html], { type: "text/html" }));
  opened.set(html, address);
  window.open(address, "_blank", "noopener");
}

/** Opens a document that the page holds beside it, to read and to print. Nothing leaves the machine. */
export function OpenDocument({ html, label }: Props) {
  // Not a link: browsers fetch what a link may lead to ahead of time, and the page allows that for its own files only.
  return (
    <button type="button" aria-label={`Open ${label}`} onClick={() => open(html)}>
      Open
    </button>
  );
}
