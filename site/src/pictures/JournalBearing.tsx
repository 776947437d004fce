import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import type { BearingScene } from "./scene/bearingOf.ts";
import { lengthText } from "./scene/lengthText.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `bearingOf(nominals, which)`. */
  readonly bearing: BearingScene | NoScene;
  readonly name?: string;
}

const CENTRE = { x: WIDTH / 2, y: 150 };
const HOUSING = 118;
/** Half the play as it is drawn. */
const PLAY = 15;

/** How many times too wide the play is drawn. */
export function playFactor({ housing, clearance }: BearingScene): number {
  const perMm = HOUSING / (housing / 2);
  return Number((PLAY / ((clearance / 2) * perMm)).toPrecision(2));
}

/** What the picture shows, in words with its numbers. */
export function describeBearing(bearing: BearingScene, name?: string): string {
  const { word, journal, housing, clearanceText, notes } = bearing;
  return `${word}${name === undefined ? "" : ` of ${name}`}: journal ${lengthText(journal)} in a housing of ${lengthText(housing)}, play ${clearanceText}, drawn ${playFactor(bearing)} times too wide. ${notes.join("; ")}.`;
}

/** A journal in its bearing. The play is exaggerated, and the picture says so. */
export function JournalBearing({ bearing, name }: Props) {
  if (bearing.state !== "value") return <NotDrawn scene={bearing} />;
  const { journal, housing, clearance, clearanceText, eccentricity, length, notes } = bearing;
  const perMm = HOUSING / (housing / 2);
  const shell = ((journal + clearance) / 2) * perMm;
  // The journal gives way, so that shell and housing keep their sizes.
  const radius = shell - PLAY;
  const shift = PLAY * Math.min(1, Math.max(0, eccentricity ?? 0));
  const lines = [
    `play ${clearanceText}, drawn ${playFactor(bearing)}× too wide`,
    ...(eccentricity === undefined ? [] : ["journal as it lies under its mean load, which acts downwards"]),
    ...notes,
  ];
  const bottom = CENTRE.y + HOUSING + 22;
  return (
    <Picture height={bottom + 20} notes={lines} description={describeBearing(bearing, name)}>
      <circle class="cut" cx={CENTRE.x} cy={CENTRE.y} r={HOUSING + 12} />
      <circle class="piston" cx={CENTRE.x} cy={CENTRE.y} r={HOUSING} />
      <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={shell} />
      <path
        class="line"
        d={`M${CENTRE.x - HOUSING - 12} ${CENTRE.y}h${12 + HOUSING - shell}M${CENTRE.x + shell} ${CENTRE.y}h${12 + HOUSING - shell}`}
      />
      <circle class="chief" cx={CENTRE.x} cy={CENTRE.y + shift} r={radius} />
      <path
        class="fine"
        d={`M${CENTRE.x - radius} ${CENTRE.y + shift}h${2 * radius}M${CENTRE.x} ${CENTRE.y + shift - radius}v${2 * radius}`}
      />
      {eccentricity !== undefined && (
        <path class="line" d={`M${CENTRE.x} ${CENTRE.y + shift - 34}v60m-5 -9l5 9l5 -9`} />
      )}
      <Dimension
        from={[CENTRE.x - radius, CENTRE.y + shift + 58]}
        to={[CENTRE.x + radius, CENTRE.y + shift + 58]}
        text={`journal ${lengthText(journal)}`}
      />
      <Dimension from={[CENTRE.x - HOUSING, bottom - 2]} to={[CENTRE.x + HOUSING, bottom - 2]} text="" />
      <text x={CENTRE.x} y={bottom + 14} text-anchor="middle">
        housing {lengthText(housing)}
        {length === undefined ? "" : `, shell ${lengthText(length)} long`}
      </text>
    </Picture>
  );
}
