/**
 * Stands in, within a worker, for preact: pictures are drawn there once, as text, by components that are plain
 * functions of what they show. `markup.test.ts` holds it to preact over all pictures of the demo builds.
 */
export { Fragment, jsx, jsx as jsxs, render };

type Child = Element | string | number | boolean | null | undefined | readonly Child[];
type Props = Readonly<Record<string, unknown>> & { readonly children?: Child };
type Component = (props: Props) => Child;

interface Element {
  readonly type: string | Component;
  readonly props: Props;
}

/** Elements of HTML that have no end tag. */
const VOID = /^(?:area|base|br|col|embed|hr|img|input|link|meta|param|source|track|wbr)$/;
const ESCAPED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", '"': "&quot;" };

const escaped = (text: string) => text.replace(/[&<"]/g, (letter) => ESCAPED[letter]!);

const Fragment: Component = ({ children }) => children;

function jsx(type: string | Component, props: Props): Element {
  return { type, props };
}

function attribute(name: string, value: unknown): string {
  const isSaid = /^(?:aria|data)-/.test(name);
  if (value === undefined || value === null || (value === false && !isSaid)) return "";
  if (value === "" || (value === true && !isSaid)) return ` ${name}`;
  if (typeof value === "object" || typeof value === "function")
    throw new TypeError(`the attribute ${name} is no text and cannot be drawn in a worker`);
  return ` ${name}="${escaped(String(value))}"`;
}

/** A picture as markup, with every text escaped. */
function render(child: Child): string {
  if (typeof child === "string" || typeof child === "number") return escaped(String(child));
  if (typeof child !== "object" || child === null) return "";
  if (Array.isArray(child)) return child.map(render).join("");
  const { type, props } = child as Element;
  if (typeof type === "function") return render(type(props));
  const { children, ...rest } = props;
  const attributes = Object.entries(rest).map(([name, value]) => attribute(name, value));
  const begin = `<${type}${attributes.join("")}`;
  if (VOID.test(type)) return `${begin}/>`;
  return `${begin}>${render(children)}</${type}>`;
}
