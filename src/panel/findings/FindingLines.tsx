import { type RefObject, Suspense, lazy, useEffect, useMemo, useState } from "react";
import {
  type Finding,
  briefFinding,
  checkOf,
  describeFinding,
} from "../../core/checks/all-checks.ts";
import { type Wording, severitySign, severityWord } from "../../core/checks/wording.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { FindingGroupLine } from "./FindingGroupLine.tsx";
import { FindingLine } from "./FindingLine.tsx";
import { useFindingNews } from "./finding-news.ts";
import type { FindingGroup, FindingRow } from "./finding-rows.ts";
import { useFindingsState } from "./findings-state.ts";
import { groupTitle } from "./findings-words.ts";
import * as texts from "./words.ts";

/** Looked for only when asked: the arranger is not part of the first load. */
const WaysOut = lazy(async () => ({ default: (await import("./WaysOut.tsx")).WaysOut }));

/** As grown nothing is moved or sown anew: only what can still be done in the field. */
const FieldWaysOut = lazy(async () => ({
  default: (await import("../grown/FieldWaysOut.tsx")).FieldWaysOut,
}));

/** A line of the list: one finding, or many of one cause. */
type Line =
  | { readonly finding: Finding; readonly isInGroup: boolean; readonly group?: never }
  | { readonly group: FindingGroup; readonly finding?: never };

interface FindingLinesProps {
  readonly rows: readonly FindingRow[];
  readonly wording: Wording;
}

export function FindingLines({ rows, wording }: FindingLinesProps) {
  const openFinding = useWindowStore((state) => state.openFinding);
  const unfolded = useFindingsState((state) => state.unfolded);
  const waysOutFor = useFindingsState((state) => state.waysOutFor);
  const isGrown = usePlanStore(({ reading }) => reading !== null);
  const roving = useRovingRows("[data-stop]");
  const lines = useMemo(
    () => rows.flatMap((row) => linesOf(row, unfolded, openFinding)),
    [rows, unfolded, openFinding],
  );
  const at = useWaysOutPlace(lines, waysOutFor);
  useClosedWithLayout();
  useFocusAfterSolved(lines, at, roving.ref);
  const waysOut = waysOutFor !== null && (
    <li key={`ways-out ${waysOutFor}`} className="ways-out-row">
      <Suspense fallback={<p role="status">{texts.lookingForWaysOut}</p>}>
        {isGrown ? (
          <FieldWaysOut findingId={waysOutFor} onClose={close} onDone={leaveSolved} />
        ) : (
          <WaysOut findingId={waysOutFor} />
        )}
      </Suspense>
    </li>
  );
  return (
    <ul className="plain-list finding-list" {...roving}>
      {lines.slice(0, at).map((line) => (
        <ListLine key={keyOf(line)} line={line} wording={wording} />
      ))}
      {waysOut}
      {lines.slice(at).map((line) => (
        <ListLine key={keyOf(line)} line={line} wording={wording} />
      ))}
    </ul>
  );
}

const close = () => useFindingsState.getState().askWaysOut(null);
const leaveSolved = () => useFindingsState.getState().leaveSolved();

/** Ways out are those of one layout: in another they would stand below some other finding. */
function useClosedWithLayout(): void {
  useEffect(
    () =>
      usePlanStore.subscribe((now, before) => {
        if (now.layoutId !== before.layoutId) close();
      }),
    [],
  );
}

/** A folded group hides nothing that is opened. */
function linesOf(
  { finding, group }: FindingRow,
  unfolded: ReadonlySet<string>,
  openFinding: string | null,
): readonly Line[] {
  if (!group) return [{ finding, isInGroup: false }];
  const isUnfolded = unfolded.has(group.id) || group.findings.some(({ id }) => id === openFinding);
  return [
    { group },
    ...(isUnfolded ? group.findings.map((each) => ({ finding: each, isInGroup: true })) : []),
  ];
}

/**
 * Before which line the ways out stand: right after their finding. While one of them is tried the
 * finding is gone; they stay where they were.
 */
function useWaysOutPlace(lines: readonly Line[], id: string | null): number {
  const [place, setPlace] = useState(0);
  const after = lines.findIndex(({ finding }) => finding?.id === id) + 1;
  if (after > 0 && after !== place) setPlace(after);
  return Math.min(after > 0 ? after : place, lines.length);
}

/** The list follows a change a moment later: only then is the line there that the focus goes to. */
function useFocusAfterSolved(
  lines: readonly Line[],
  place: number,
  list: RefObject<HTMLUListElement | null>,
): void {
  const solved = useFindingsState((state) => state.solved);
  useEffect(() => {
    if (solved === null || lines.some(({ finding }) => finding?.id === solved)) return;
    useFindingsState.setState({ solved: null });
    const stops = [...(list.current?.querySelectorAll<HTMLElement>(".finding-open") ?? [])];
    const next = stops[Math.min(Math.max(0, place - 1), stops.length - 1)];
    (next ?? document.getElementById("findings-heading"))?.focus();
  }, [solved, lines, place, list]);
}

function keyOf({ finding, group }: Line): string {
  return group ? `group ${group.id}` : finding.id;
}

function ListLine({ line, wording }: { readonly line: Line; readonly wording: Wording }) {
  return line.group ? (
    <GroupEntry group={line.group} wording={wording} />
  ) : (
    <FindingEntry finding={line.finding} isInGroup={line.isInGroup} wording={wording} />
  );
}

interface FindingEntryProps {
  readonly finding: Finding;
  readonly isInGroup: boolean;
  readonly wording: Wording;
}

function FindingEntry({ finding, isInGroup, wording }: FindingEntryProps) {
  const isOpen = useWindowStore(({ openFinding }) => openFinding === finding.id);
  const isNew = useFindingNews(({ fresh }) => fresh.has(finding.id));
  const brief = useMemo(() => briefFinding(finding, wording), [finding, wording]);
  const text = isOpen ? describeFinding(finding, wording).sentences.join(" ") : "";
  return (
    <FindingLine
      id={finding.id}
      severity={finding.severity}
      sign={severitySign[finding.severity]}
      word={severityWord[finding.severity]}
      title={brief.title}
      figures={brief.figures}
      isNew={isNew}
      isInGroup={isInGroup}
      isOpen={isOpen}
      text={text}
      hasWaysOut={checkOf(finding).hasWaysOut === true}
    />
  );
}

function GroupEntry({
  group,
  wording,
}: {
  readonly group: FindingGroup;
  readonly wording: Wording;
}) {
  const { id, findings, cause } = group;
  const openFinding = useWindowStore((state) => state.openFinding);
  const isUnfolded = useFindingsState(({ unfolded }) => unfolded.has(id));
  const [worst] = findings;
  if (!worst) return null;
  const check = checkOf(worst);
  return (
    <FindingGroupLine
      id={id}
      severity={worst.severity}
      sign={severitySign[worst.severity]}
      word={severityWord[worst.severity]}
      title={groupTitle(check.title, cause === null ? null : wording.nameOf(cause))}
      count={findings.length}
      isUnfolded={isUnfolded || findings.some((finding) => finding.id === openFinding)}
      subjects={[...new Set(findings.flatMap(({ subjects }) => subjects))].join(" ")}
      worstId={check.hasWaysOut === true ? worst.id : ""}
      worstTitle={check.hasWaysOut === true ? briefFinding(worst, wording).title : ""}
    />
  );
}
