import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";

/** A component that is fetched when it is first shown. */
export function later<P extends object>(load: () => Promise<FunctionComponent<P>>): FunctionComponent<P> {
  let fetched: FunctionComponent<P> | undefined;
  return (props) => {
    const [Shown, show] = useState(() => fetched);
    const [failure, fail] = useState("");
    useEffect(() => {
      if (fetched !== undefined) return;
      load().then(
        (component) => {
          fetched = component;
          show(() => component);
        },
        (error: unknown) => fail(String(error)),
      );
    }, []);
    if (Shown !== undefined) return <Shown {...props} />;
    return (
      <p role="status">
        {failure === "" ? "Fetching…" : `It could not be fetched (${failure}). Load the page again.`}
      </p>
    );
  };
}
