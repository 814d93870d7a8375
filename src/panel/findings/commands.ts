import { checkOf } from "../../core/checks/all-checks.ts";
import { useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { type Command, type Now, shift, withLoaded } from "../commands/command.ts";
import { commandNow } from "../state/plan-actions.ts";
import { useFindingsState } from "./findings-state.ts";
import * as words from "./words.ts";

/** Shows where the selected planting could lie, without dragging it; asked for again, hides it. */
export const clearGround = {
  id: "clear-ground",
  name: words.clearGroundCommand,
  group: "view",
  also: words.clearGroundAlso,
  whyNot: ({ selection, result }) => {
    if (useClearGroundState.getState().isAsked) return null;
    const isPlanting = Boolean(result.standById.get(selection[0] ?? "")?.planting);
    return selection.length === 1 && isPlanting ? null : words.selectOnePlanting;
  },
  run: () => {
    const { isAsked, ask } = useClearGroundState.getState();
    ask(!isAsked);
  },
} as const satisfies Command;

/** Shades the sheet by how much of the selected planting's seed would be crossed there. */
export const crossingShade = {
  id: "crossing-shade",
  name: words.crossingShade,
  group: "view",
  also: words.crossingShadeAlso,
  whyNot: ({ selection, result }) => {
    if (useCrossingShadeState.getState().isAsked) return null;
    const isParent = result.standById.get(selection[0] ?? "")?.isSeedParent === true;
    return selection.length === 1 && isParent ? null : words.selectOneSeedPlanting;
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

const needsFinding = ({ kept: { result } }: Now) =>
  Object.values(result.counts).every((count) => count === 0) ? words.noFindings : null;

export const findingCommands = [
  {
    id: "next-finding",
    name: words.nextFinding,
    group: "view",
    keys: [{ key: "n" }],
    also: words.nextFindingAlso,
    whyNot: needsFinding,
    run: () => stepBy(1),
  },
  {
    id: "previous-finding",
    name: words.previousFinding,
    group: "view",
    keys: [shift("N")],
    also: words.previousFindingAlso,
    whyNot: needsFinding,
    run: () => stepBy(-1),
  },
  {
    id: "ways-out",
    name: words.waysOutCommand,
    group: "view",
    also: words.waysOutAlso,
    whyNot: (now) => (solvable(now) === null ? words.noWaysOut : null),
    run: (now) => useFindingsState.getState().askWaysOut(solvable(now)),
  },
] as const satisfies readonly Command[];

/** The open finding, if ways out of it are looked for. */
function solvable({ result, openFinding }: Now): string | null {
  if (openFinding === null) return null;
  const open = result.findings.find(({ id }) => id === openFinding);
  return open && checkOf(open).hasWaysOut === true ? open.id : null;
}
