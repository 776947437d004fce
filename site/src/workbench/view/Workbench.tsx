import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { DemoText, FormData, ReportView } from "../protocol.ts";
import { firstText } from "../state/firstText.ts";
import { nowOnBench } from "../state/nowOnBench.ts";
import { useBench } from "../state/useBench.ts";
import { FilePanel } from "./FilePanel.tsx";
import { FindingList } from "./FindingList.tsx";
import { later } from "./later.tsx";
import { PartForm } from "./PartForm.tsx";
import { PicturePanel } from "./PicturePanel.tsx";
import { SlimBar, SummaryBar } from "./SummaryBar.tsx";
import { type Tab, Tabs } from "./Tabs.tsx";
import { Toolbar } from "./Toolbar.tsx";
import { useDroppedFile } from "./useDroppedFile.ts";
import { LOST, useLinks } from "./useLinks.ts";
import { useUndoKeys } from "./useUndoKeys.ts";
import { useWide } from "./useWide.ts";
import { WantedList } from "./WantedList.tsx";
import { WhoseBuild } from "./WhoseBuild.tsx";

interface Props {
  readonly form: FormData;
  readonly demos: readonly DemoText[];
  /** What was said of the first demo when the site was built. */
  readonly foreseen: Promise<ReportView | undefined>;
  /** Told once the evaluator has said something: what takes time may begin now. */
  readonly onJudged: () => void;
}

const ChoosingPanel = later(async () => (await import("./choosing/ChoosingPanel.tsx")).default);
const ComparePanel = later(async () => (await import("./comparing/ComparePanel.tsx")).default);
const MeasuringPanel = later(async () => (await import("./measuring/MeasuringPanel.tsx")).default);
const PapersPanel = later(async () => (await import("./papers/PapersPanel.tsx")).default);

/** The whole workbench: the form of the build, and what the evaluator says of it. */
export function Workbench({ form, demos, foreseen, onJudged }: Props) {
  const [state, actions] = useBench();
  const [chosen, choose] = useState("findings");
  const [draft, setDraft] = useState<string>();
  const [unfolded, setUnfolded] = useState<ReadonlySet<string>>(new Set());
  const wide = useWide();
  useDroppedFile(actions, () => choose("measuring"));
  useUndoKeys(actions);
  useLinks(actions);
  const labels = useMemo(
    () =>
      new Map(
        form.parts.flatMap((part) =>
          part.fields.map(({ path, label }) => [path, part.key === "" ? label : `${part.label}: ${label}`]),
        ),
      ),
    [form],
  );

  useEffect(() => {
    firstText(demos).then(async ({ text, by, lost }) => {
      const begun = actions.start(text, by);
      if (lost) actions.refuse(LOST);
      const view = begun && text === demos[0]!.text ? await foreseen : undefined;
      if (view !== undefined) actions.foresee(view);
    });
  }, [demos, actions, foreseen]);
  const judged = state.done || (state.report !== undefined && !state.foreseen);
  useEffect(() => {
    if (judged) onJudged();
  }, [judged, onJudged]);

  const unfold = useCallback((key: string, open: boolean) => {
    setUnfolded((set) => {
      const next = new Set(set);
      if (open) next.add(key);
      else next.delete(key);
      return next;
    });
  }, []);
  const goTo = useCallback(
    (path: string) => {
      unfold(path.includes(".") ? path.split(".")[0]! : "", true);
      if (!wide) choose("parts");
      requestAnimationFrame(() =>
        requestAnimationFrame(() => {
          const row = document.getElementById(`field-${path.replace(".", "-")}-row`);
          row?.scrollIntoView({ block: "center" });
          row?.querySelector<HTMLElement>("input, select, textarea")?.focus({ preventScroll: true });
        }),
      );
    },
    [unfold, wide],
  );
  const { text = "" } = state.history;
  useEffect(() => nowOnBench.set(text), [text]);
  useEffect(() => {
    if (draft === text) setDraft(undefined);
  }, [draft, text]);
  const nameOf = useCallback((path: string) => labels.get(path), [labels]);
  const [called, call] = useState(0);
  // Once something was chosen here, what came of it stays in sight.
  const chose = useRef(false);
  chose.current ||=
    state.put !== undefined || Object.values(state.entries).some((one) => one.form === "wanted");

  const parts = (
    <PartForm
      form={form}
      state={state}
      actions={actions}
      unfolded={unfolded}
      unfold={unfold}
      toSizes={() => {
        choose("findings");
        call(called + 1);
      }}
    />
  );
  const tabs: readonly Tab[] = [
    ...(wide ? [] : [{ id: "parts", label: "Parts", content: () => parts }]),
    {
      id: "findings",
      label: "Findings",
      content: () =>
        state.report === undefined ? null : (
          <>
            {chose.current && (
              <ChoosingPanel state={state} actions={actions} nameOf={nameOf} goTo={goTo} called={called} />
            )}
            <WantedList wanted={state.report.wanted} nameOf={nameOf} goTo={goTo} />
            <FindingList
              report={state.report}
              parts={form.ruleParts}
              nameOf={nameOf}
              goTo={goTo}
              state={state}
              actions={actions}
            />
          </>
        ),
    },
    { id: "pictures", label: "Pictures", content: () => <PicturePanel text={state.history.text} /> },
    {
      id: "change",
      label: "Compare",
      content: () => <ComparePanel demos={demos} state={state} actions={actions} goTo={goTo} />,
    },
    {
      id: "measuring",
      label: "Measure",
      content: () => <MeasuringPanel form={form} state={state} actions={actions} />,
    },
    { id: "papers", label: "Papers", content: () => <PapersPanel papers={form.papers} state={state} /> },
    {
      id: "file",
      label: "File",
      content: () => <FilePanel state={state} actions={actions} draft={draft} setDraft={setDraft} />,
    },
  ];
  return (
    <div class={`workbench ${wide ? "wide" : ""} ${state.done ? "" : "busy"}`}>
      <h2 class="name">{state.name === "" ? "A build" : state.name}</h2>
      <WhoseBuild state={state} demos={demos} />
      <Toolbar form={form} demos={demos} state={state} actions={actions} />
      {state.refused !== undefined && (
        <p class="trouble" role="alert">
          {state.refused}
        </p>
      )}
      <SummaryBar state={state} />
      <div class="benches">
        {wide && (
          <section class="side" aria-label="Parts">
            {parts}
          </section>
        )}
        <Tabs label="Views of the build" tabs={tabs} chosen={chosen} choose={choose} />
      </div>
      <SlimBar state={state} />
    </div>
  );
}
