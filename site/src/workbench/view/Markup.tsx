/** Markup that our own picture components made in the worker; they escape every text that comes from a file. */
export function Markup({ html }: { readonly html: string }) {
  return <div class="drawing" dangerouslySetInnerHTML={{ __html: html }} />;
}
