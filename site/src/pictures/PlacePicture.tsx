import type { Nominals, Report } from "trialfit";
import { drawView } from "./place/drawView.tsx";
import type { View } from "./place/View.ts";
import type { KnownBands } from "./scene/printed.ts";

/** A build to draw from. */
export interface DrawnBuild {
  readonly name: string;
  readonly nominals: Nominals;
  /** What was found of it, with every band that was searched. */
  readonly report?: Report;
}

/** The bands of a report. */
function bandsOf({ report }: DrawnBuild): KnownBands {
  return (id) => {
    const { low, nominal, high } = report?.quantities.find((one) => one.id === id) ?? {};
    return low === undefined || nominal === undefined || high === undefined
      ? undefined
      : { low, nominal, high };
  };
}

interface Props {
  /** From `viewsOfRule` or `viewsOfQuantity`: the first that a build can show is drawn. */
  readonly views: readonly View[];
  /** Builds whose numbers may be drawn, the preferred one first. */
  readonly builds: readonly DrawnBuild[];
  /** Quantities whose numbers stand under a picture that has none of its own. */
  readonly tells?: readonly string[];
  /** Words of the caption after the name of the build, such as that it is invented. */
  readonly about?: string;
}

/** The picture that is drawn, and of which build; undefined when none gives enough for any view. */
export function choosePlace<B extends DrawnBuild>(
  views: readonly View[],
  builds: readonly B[],
  tells: readonly string[] = [],
) {
  for (const view of views)
    for (const build of builds) {
      const picture = drawView(view, build.nominals, { name: build.name, tells, bands: bandsOf(build) });
      if (picture !== undefined) return { view, build, picture };
    }
  return undefined;
}

/** The place in the engine that a rule or quantity is about, drawn from the numbers of a build. */
export function PlacePicture({ views, builds, tells, about }: Props) {
  const chosen = choosePlace(views, builds, tells);
  if (chosen === undefined) return null;
  return (
    <figure class="place-picture">
      {chosen.picture}
      <figcaption>
        {chosen.build.name}
        {about === undefined ? "" : `, ${about}`}
      </figcaption>
    </figure>
  );
}
