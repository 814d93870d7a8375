/**
 * A plant found in flower on a walk, as a pollen source: placed where the walker stands, or by
 * distance and direction, and what it endangers told before it is kept.
 */
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Edit } from "../edits/edit.ts";
import type { Point } from "../geometry/point.ts";
import { roundShape } from "../geometry/round.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import type { Plan, Surrounding } from "../model/plan.ts";
import { type Signature, addEntry } from "./write-entry.ts";
import * as steps from "../words/step-words.ts";
import { foundWords } from "./field-words.ts";

export interface FoundSource {
  /** Unlike any other on whatever device: two helpers may find plants apart. */
  readonly id: string;
  readonly label: string;
  readonly kind: string;
  /** Sheet metres. */
  readonly at: Point;
  /** How far it may lie from there, metres; 0 where it was measured. */
  readonly unsureM: number;
  /** The day it was found in flower. */
  readonly on: DayNumber;
}

/** Below this a place is as sure as a tape. */
const LEAST_UNSURE_M = 0.5;

/**
 * The pollen source. A place known to some metres only is drawn as large as that, so that no
 * distance is thought longer than it may be. It was open on the day it was found and may have been
 * long before: until the grower says, it flowers all season.
 */
export function foundSurrounding(plan: Pick<Plan, "season">, found: FoundSource): Surrounding {
  const { id, label, kind, at, unsureM, on } = found;
  const isSure = unsureM < LEAST_UNSURE_M;
  const { first, last } = plan.season;
  return {
    id,
    label,
    what: "pollen",
    kind,
    outline: isSure
      ? { shape: "point", x: at.x, y: at.y }
      : roundShape({ x: at.x, y: at.y, diameterM: 2 * unsureM }),
    flowering: "yes",
    cover: "none",
    bloom: { first: Math.min(first, on), last: Math.max(last, on) },
    note: isSure
      ? foundWords.sure(shortDate(on))
      : foundWords.unsure(shortDate(on), Math.ceil(unsureM)),
  };
}

/** One step of undo: the source, and the entry that it was seen in flower. */
export function placeFoundSource(found: FoundSource, signature: Signature): Edit {
  const entry = addEntry(
    { of: found.id, on: found.on, what: "note", note: foundWords.inFlower },
    signature,
    found.label,
  );
  return {
    title: steps.add(found.label),
    apply: (plan) => {
      if (plan.surroundings.some(({ id }) => id === found.id)) return plan;
      const surroundings = [...plan.surroundings, foundSurrounding(plan, found)];
      return entry.apply({ ...plan, surroundings });
    },
  };
}

export interface Endangered {
  /** The layout with the source in it: for words. */
  readonly checked: CheckedLayout;
  /** Seed parents that its distance alone does not clear, the nearest first. */
  readonly pairs: readonly IsolationPair[];
}

/** What a source would endanger. @param now the layout without it, as planned or as grown */
export function endangeredBy(now: CheckedLayout, found: FoundSource): Endangered {
  const surroundings = [...now.plan.surroundings, foundSurrounding(now.plan, found)];
  const checked = recheckLayout(now, { ...now.plan, surroundings }) ?? now;
  const pairs = checked.result.pairs
    .filter(({ pollenSource }) => pollenSource === found.id)
    .sort((a, b) => a.distanceM - b.distanceM);
  return { checked, pairs };
}

/**
 * The place so far in a true direction from another.
 * @param bearingDeg degrees clockwise from true north
 * @param upBearingDeg true bearing of the sheet's up
 */
export function placeTowards(
  from: Point,
  distanceM: number,
  bearingDeg: number,
  upBearingDeg: number,
): Point {
  const turn = ((bearingDeg - upBearingDeg) * Math.PI) / 180;
  return { x: from.x + distanceM * Math.sin(turn), y: from.y + distanceM * Math.cos(turn) };
}
