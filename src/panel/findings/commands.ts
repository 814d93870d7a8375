import { checkOf } from "../../core/checks/all-checks.ts";
import { useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { type Command, type Now, shift, withLoaded } from "../commands/command.ts";
import { commandNow } from "../state/plan-actions.ts";
import { useFindingsState } from "./findings-state.ts";

/** Shows where the selected planting could lie, without dragging it; asked for again, hides it. */
export const clearGround = {
  id: "clear-ground",
  name: "Clear ground of the selected planting",
  group: "View",
  also: "where free place",
  whyNot: ({ selection, result }) => {
    if (useClearGroundState.getState().isAsked) return null;
    const isPlanting = Boolean(result.standById.get(selection[0] ?? "")?.planting);
    return selection.length === 1 && isPlanting ? null : "Select one planting";
  },
  run: () => {
    const { isAsked, ask } = useClearGroundState.getState();
    ask(!isAsked);
  },
} as const satisfies Command;

/** Shades the sheet by how much of the selected planting's seed would be crossed there. */
export const crossingShade = {
  id: "crossing-shade",
  name: "Shade by how much would cross",
  group: "View",
  also: "estimate outcrossing pollen",
  whyNot: ({ selection, result }) => {
    if (useCrossingShadeState.getState().isAsked) return null;
    const isParent = result.standById.get(selection[0] ?? "")?.isSeedParent === true;
    return selection.length === 1 && isParent ? null : "Select one planting kept for seed";
  },
  run: () => {
    const { isAsked, ask } = useCrossingShadeState.getState();
    ask(!isAsked);
  },
} as const satisfies Command;

/** Opens the next finding of the list, or the one before. */
function stepBy(by: 1 | -1): void {
  void withLoaded(
    () => import("./step-finding.ts"),
    ({ stepFinding }) => stepFinding(commandNow(), by),
  );
}

const needsFinding = ({ result }: Now) =>
  result.findings.length === 0 ? "There are no findings" : null;

export const findingCommands = [
  {
    id: "next-finding",
    name: "Next finding",
    group: "View",
    keys: [{ key: "n" }],
    also: "conflict caution unknown warning",
    whyNot: needsFinding,
    run: () => stepBy(1),
  },
  {
    id: "previous-finding",
    name: "Previous finding",
    group: "View",
    keys: [shift("N")],
    also: "conflict caution unknown warning",
    whyNot: needsFinding,
    run: () => stepBy(-1),
  },
  {
    id: "ways-out",
    name: "Ways out of the open finding",
    group: "View",
    also: "remedy solve conflict",
    whyNot: (now) => (solvable(now) === null ? "No open finding has ways out" : null),
    run: (now) => useFindingsState.getState().askWaysOut(solvable(now)),
  },
] as const satisfies readonly Command[];

/** The open finding, if ways out of it are looked for. */
function solvable({ result, openFinding }: Now): string | null {
  const open = result.findings.find(({ id }) => id === openFinding);
  return open && checkOf(open).hasWaysOut === true ? open.id : null;
}
