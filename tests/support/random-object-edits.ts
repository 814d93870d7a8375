/** Random commands on objects, for properties of the store: copies, lining up, locking, pasting. */
import * as fc from "fast-check";
import { alignObjects, alignSides } from "../../src/core/edits/align.ts";
import { arrayObjects, duplicateObjects } from "../../src/core/edits/array.ts";
import { clipText, pasteObjects, pasteShift, readClip } from "../../src/core/edits/clipboard.ts";
import { distributeObjects } from "../../src/core/edits/distribute.ts";
import type { Edit } from "../../src/core/edits/edit.ts";
import { setLocked, unlockAll } from "../../src/core/edits/lock.ts";
import type { Plan } from "../../src/core/model/plan.ts";

interface Here {
  readonly plan: Plan;
  readonly layoutId: string;
  readonly ids: readonly string[];
}

/** More objects than this are not copied any further: a run must end. */
const OBJECTS_MOST = 60;

const number = fc.nat({ max: 1000 });

/** Up to three of the objects there are. */
function some(ids: readonly string[], from: number): readonly string[] {
  const size = Math.max(1, ids.length);
  const chosen = [from, from * 7 + 1, from * 13 + 2].map((at) => ids[at % size]);
  return [...new Set(chosen.filter((id) => id !== undefined))];
}

function copying(here: Here, edit: (here: Here) => Edit | null): Edit | null {
  return here.ids.length > OBJECTS_MOST ? null : edit(here);
}

function pasting({ plan, layoutId, ids }: Here, from: number): Edit | null {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  if (!layout) return null;
  const text = clipText(plan, layout, some(ids, from));
  const read = readClip(text ?? "", () => true);
  if (!read.ok) return null;
  const shift = pasteShift(plan, layout, read.clip);
  return pasteObjects(layoutId, read.clip, shift, "Paste");
}

export const objectEditMakers: readonly fc.Arbitrary<
  readonly [string, (here: Here) => Edit | null]
>[] = [
  fc
    .tuple(number, fc.constantFrom(...alignSides), fc.constantFrom("first", "sheet"))
    .map(([a, side, frame]) => [
      `align ${side} ${a}`,
      ({ layoutId, ids }) => alignObjects(layoutId, some(ids, a), side, frame, "Align"),
    ]),
  fc
    .tuple(number, fc.constantFrom("across", "along"), fc.constantFrom(null, 0, 0.5))
    .map(([a, axis, gapM]) => [
      `space ${axis} ${a}`,
      ({ layoutId, ids }) =>
        distributeObjects(layoutId, some(ids, a), { axis, frame: "first", gapM }, "Space"),
    ]),
  number.map((a) => [
    `duplicate ${a}`,
    (here) =>
      copying(here, ({ layoutId, ids }) => duplicateObjects(layoutId, some(ids, a), "Duplicate")),
  ]),
  number.map((a) => [
    `repeat ${a}`,
    (here) =>
      copying(here, ({ layoutId, ids }) =>
        arrayObjects(
          layoutId,
          some(ids, a).slice(0, 1),
          { columns: 2, rows: 2, gapAcrossM: 0.5, gapAlongM: 0.5 },
          "Repeat",
        ),
      ),
  ]),
  number.map((a) => [`paste ${a}`, (here) => copying(here, (now) => pasting(now, a))]),
  fc
    .tuple(number, fc.boolean())
    .map(([a, isLocked]) => [
      `lock ${a}`,
      ({ layoutId, ids }) => setLocked(layoutId, some(ids, a), isLocked, "Lock"),
    ]),
  fc.constant([`unlock all`, ({ layoutId }) => unlockAll(layoutId)]),
];
