import { useEffect, useMemo } from "preact/hooks";

interface Props {
  readonly html: string;
  /** What is opened, for those who hear only this. */
  readonly label: string;
}

/** A link to a document that the page holds: it opens beside it, to read and to print. Nothing leaves the machine. */
export function OpenDocument({ html, label }: Props) {
  const address = useMemo(() => URL.createObjectURL(new Blob([html], { type: "text/html" })), [html]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return (
    <a class="open-document" href={address} target="_blank" rel="noopener" aria-label={`Open ${label}`}>
      Open
    </a>
  );
}
