/** The bar of an outline that is being drawn: what it becomes, what was set, what can be done next. */
import type { Point } from "../../core/geometry/point.ts";
import {
  type OutlineTarget,
  leastCorners,
  outlineTargets,
} from "../../core/outlines/drawn-outline.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { outlineDraftWords as words } from "./outline-draft-words.ts";
import { STRAIGHT, type Shaping } from "./outline-shaping.ts";
import type { DraftBar } from "./sketch-store.ts";

interface OutlineDraft {
  readonly corners: readonly Point[];
  readonly shaping: Shaping;
  readonly target: OutlineTarget;
  readonly fault: string | null;
}

interface OutlineActs {
  readonly pick: (target: OutlineTarget) => void;
  readonly back: () => void;
  /** Opens the fields for what comes next. */
  readonly type: () => void;
  readonly typeCorner: () => void;
  readonly shape: (shaping: Shaping) => void;
  readonly close: () => void;
  readonly drop: () => void;
}

type Action = DraftBar["actions"][number];

function action([label, short]: readonly [string, string], act: () => void): Action {
  return { label, short, act };
}

export function outlineBar(draft: OutlineDraft, acts: OutlineActs): DraftBar {
  const { target, fault } = draft;
  return {
    text: textOf(draft),
    fault,
    choice: {
      label: words.targetLabel,
      value: target,
      options: targetOptions(),
      pick: (value) =>
        acts.pick(outlineTargets.find((each) => each.value === value)?.value ?? "bed"),
    },
    actions: actionsOf(draft, acts),
  };
}

/** A second edge of the site takes the place of the first, and that is said before. */
function targetOptions() {
  const hasEdge = usePlanStore.getState().plan.site.outline !== undefined;
  return outlineTargets.map(({ value, label }) => ({
    value,
    label: value === "site" && hasEdge ? words.replaces(label) : label,
  }));
}

function textOf({ corners, shaping }: OutlineDraft): string {
  switch (shaping.kind) {
    case "straight":
      return corners.length === 0 ? words.begin : words.count(corners.length);
    case "via":
      return words.atVia;
    case "end":
      return words.atEnd;
    case "middle":
      return words.atMiddle;
    case "rim":
      return words.atRim;
  }
}

function actionsOf(
  { corners, shaping, target }: OutlineDraft,
  acts: OutlineActs,
): readonly Action[] {
  const cancel: Action = { label: words.cancel, act: acts.drop };
  const straight = () => acts.shape(STRAIGHT);
  switch (shaping.kind) {
    case "middle":
      return [action(words.typeFirst, acts.typeCorner), action(words.corners, straight)];
    case "rim":
      return [action(words.typeDiameter, acts.type), action(words.corners, straight), cancel];
    case "via":
    case "end":
      // The corners set before stay: of a curve its own places alone are given up.
      return [action(words.straight, straight), { label: words.cancel, act: straight }];
    case "straight":
      break;
  }
  if (corners.length === 0) {
    const round = () => acts.shape({ kind: "middle" });
    return [action(words.typeFirst, acts.typeCorner), action(words.round, round)];
  }
  const canClose = corners.length >= leastCorners(target);
  return [
    action(words.back, acts.back),
    action(words.typeSide, acts.type),
    action(words.typeCorner, acts.typeCorner),
    action(words.curve, () => acts.shape({ kind: "via" })),
    ...(canClose
      ? [action([closeLabel(corners.length), closeLabel(corners.length)], acts.close)]
      : []),
    cancel,
  ];
}

function closeLabel(count: number): string {
  if (count > 2) return words.closeOutline;
  return count === 2 ? words.keepLine : words.keepPoint;
}
