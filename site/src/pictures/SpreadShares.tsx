import { href } from "../data/href.ts";
import { factLabel, factPath } from "../data/names.ts";
import "./pictures.css";

interface Props {
  /** Share of each input in the width of a band, largest first. */
  readonly spread: readonly { readonly path: string; readonly share: number }[];
  /** How many are shown by name. */
  readonly most?: number;
}

/** Shares below this are counted together [-]. */
const LEAST = 0.005;
const percent = (share: number) => `${Math.round(share * 100)} %`;

/** What spreads a value: the share of each input, as bars with their numbers. */
export function SpreadShares({ spread, most = 6 }: Props) {
  const shown = spread.filter(({ share }) => share >= LEAST).slice(0, most);
  const rest = 1 - shown.reduce((sum, { share }) => sum + share, 0);
  return (
    <>
      <ul class="plain-list spread-shares">
        {shown.map(({ path, share }) => {
          const page = factPath(path);
          return (
            <li>
              <span class="spread-name">
                {page === undefined ? factLabel(path) : <a href={href(page)}>{factLabel(path)}</a>}
              </span>
              <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                <rect class="track" width="100" height="8" />
                <rect class="share" width={share * 100} height="8" />
              </svg>
              <b class="number">{percent(share)}</b>
            </li>
          );
        })}
      </ul>
      {rest >= LEAST && <p class="quiet">Other inputs together: {percent(rest)}</p>}
    </>
  );
}
