import "./choosing.css";
import { useEffect } from "preact/hooks";
import type { RemedyProgress } from "trialfit";
import type { BenchActions } from "../../state/BenchActions.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { choosing, isSame, useChoosing } from "../../state/ChoosingStore.ts";
import { groundOf } from "./groundOf.ts";
import { RemedyRow } from "./RemedyRow.tsx";
import { Seeking } from "./Seeking.tsx";
import { Told } from "./Told.tsx";

interface Props {
  readonly rule: string;
  readonly title: string;
  readonly state: BenchState;
  readonly actions: BenchActions;
}

const doing = ({ dimensions }: RemedyProgress): string =>
  dimensions === undefined ? "Judging the build…" : "Trying the sizes on which it rests, one by one…";

/** What would make one finding hold: the smallest change of each size alone, and why others do not do. */
export default function RemedyPanel({ rule, title, state, actions }: Props) {
  useChoosing();
  const now = groundOf(state);
  const asked = choosing.change(rule);
  useEffect(() => {
    if (asked === undefined || !isSame(asked.ground, now)) choosing.mend(now, rule);
  }, []);
  const { view, progress, failure, ground } = asked ?? {};
  const isAbout = ground !== undefined && isSame(ground, now);
  const tried = progress?.dimensions;
  return (
    <section class="choosing" aria-label={`What would make it hold: ${title}`}>
      <Seeking
        words={{ begin: "Look for it", end: "Stop looking", anew: "Look again" }}
        about={title}
        doing={progress === undefined ? undefined : doing(progress)}
        share={tried === undefined ? undefined : { done: tried.tried, of: tried.of }}
        said={view === undefined ? "" : view.head.text}
        answered={view !== undefined}
        begin={() => choosing.mend(now, rule)}
        end={() => choosing.leave("mend")}
      />
      {failure !== undefined && (
        <p class="trouble" role="alert">
          It could not be sought: {failure}
        </p>
      )}
      {view !== undefined && (
        <div class={`answer ${isAbout ? "" : "older"}`}>
          {!isAbout && (
            <p class="trouble" role="status">
              The build has changed since this was found: look again before a change is tried.
            </p>
          )}
          <Told lines={view.measure} />
          {view.remedies.length > 0 && (
            <>
              <ol class="remedies">
                {view.remedies.map((remedy) => (
                  <RemedyRow
                    key={`${remedy.path} ${remedy.work}`}
                    remedy={remedy}
                    isAbout={isAbout}
                    put={(size) =>
                      actions.put({
                        sizes: [size],
                        by: `tried: ${size.path} ${size.text}`,
                        rule: { id: rule, title },
                      })
                    }
                  />
                ))}
              </ol>
              <p class="quiet">{view.terms}</p>
              <p class="tone-bad">
                <b class="label">caution</b>
                {view.caution}
              </p>
            </>
          )}
          <Told lines={view.not} />
        </div>
      )}
    </section>
  );
}
