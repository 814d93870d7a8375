/** Any sequence of what a grower does to a plan, for properties of the store. */
import * as fc from "fast-check";
import type { Finding } from "../../src/core/checks/all-checks.ts";
import { acceptanceOf } from "../../src/core/checks/acceptance.ts";
import { acceptFinding, withdrawAcceptance } from "../../src/core/edits/accept-finding.ts";
import type { Edit } from "../../src/core/edits/edit.ts";
import { copyLayout, removeLayout, renameLayout } from "../../src/core/edits/layout-edits.ts";
import { moveObjects, setOutline, turnObjects } from "../../src/core/edits/move-objects.ts";
import {
  addBed,
  addPlantings,
  addSurrounding,
  changePlan,
  changePlantings,
  changeSurrounding,
  changeVariety,
  removeObjects,
  removeVariety,
} from "../../src/core/edits/object-edits.ts";
import type { Plan } from "../../src/core/model/plan.ts";
import type { usePlanStore } from "../../src/store/plan/plan-store.ts";
import { bed, planting } from "./garden-plan.ts";
import { objectEditMakers } from "./random-object-edits.ts";

type Store = typeof usePlanStore;

/** A step that finds out from the present state what it does. */
export interface Step {
  readonly does: string;
  readonly run: (store: Store) => void;
}

interface Here {
  readonly plan: Plan;
  readonly layoutId: string;
  /** Ids of beds, plantings and surroundings of the layout shown. */
  readonly ids: readonly string[];
  readonly findings: readonly Finding[];
}

type EditMaker = (here: Here) => Edit | null;

const number = fc.nat({ max: 1000 });
/** Whole and half metres: plantings meet and touch exactly. */
const metres = fc.integer({ min: -60, max: 60 }).map((half) => half / 2);

function pick<T>(list: readonly T[], index: number): T | undefined {
  return list[index % Math.max(1, list.length)];
}

const editMakers: readonly fc.Arbitrary<readonly [string, EditMaker]>[] = [
  ...objectEditMakers,
  fc.tuple(number, number, metres, metres).map(([a, b, dx, dy]) => [
    `move ${a} ${b}`,
    ({ layoutId, ids }) =>
      moveObjects(
        layoutId,
        [pick(ids, a), pick(ids, b)].filter((id) => id !== undefined),
        dx,
        dy,
      ),
  ]),
  fc
    .tuple(number, metres, metres, fc.integer({ min: -3, max: 3 }))
    .map(([a, x, y, turns]) => [
      `turn ${a}`,
      ({ layoutId, ids }) => turnObjects(layoutId, [pick(ids, a) ?? ""], { x, y }, turns * 30),
    ]),
  fc.tuple(number, metres, metres, fc.integer({ min: 1, max: 20 })).map(([a, x, y, lengthM]) => [
    `resize ${a}`,
    ({ layoutId, ids }) =>
      setOutline(layoutId, pick(ids, a) ?? "", {
        shape: "rectangle",
        x,
        y,
        widthM: 1,
        lengthM,
        turnDeg: 45,
      }),
  ]),
  fc
    .tuple(number, fc.constantFrom("none", "cage", "bags", "hand"))
    .map(([a, cover]) => [
      `cover ${a}`,
      ({ layoutId, ids }) => changePlantings(layoutId, [pick(ids, a) ?? ""], { cover }, "Cover"),
    ]),
  fc
    .tuple(number, fc.constantFrom("seed", "food"), fc.constantFrom("yes", "cut", "first-year"))
    .map(([a, purpose, flowering]) => [
      `purpose ${a}`,
      ({ layoutId, ids }) =>
        changePlantings(layoutId, [pick(ids, a) ?? ""], { purpose, flowering }, "Purpose"),
    ]),
  fc
    .tuple(number, fc.integer({ min: 20_900, max: 21_100 }), fc.boolean())
    .map(([a, date, is]) => [
      `date ${a}`,
      ({ layoutId, ids }) =>
        changePlantings(
          layoutId,
          [pick(ids, a) ?? ""],
          { start: is ? { method: "transplanted", date } : undefined, keepApart: is },
          "Date",
        ),
    ]),
  fc
    .tuple(number, fc.option(fc.integer({ min: 0, max: 100 })), fc.boolean())
    .map(([a, m, is]) => [
      `variety ${a}`,
      ({ plan }) =>
        changeVariety(
          pick(plan.varieties, a)?.id ?? "",
          { isolationM: m ?? undefined, hybrid: is },
          "Variety",
        ),
    ]),
  number.map((a) => [
    `delete ${a}`,
    ({ layoutId, ids }) => removeObjects(layoutId, [pick(ids, a) ?? ""]),
  ]),
  number.map((a) => [
    `delete variety ${a}`,
    ({ plan }) => removeVariety(pick(plan.varieties, a)?.id ?? "", "Delete variety"),
  ]),
  fc.tuple(number, metres, metres).map(([a, x, y]) => [
    `plant ${a}`,
    ({ plan, layoutId, ids }) => {
      const id = `new-${a}`;
      const variety = pick(plan.varieties, a)?.id;
      if (variety === undefined || ids.includes(id)) return null;
      const outline = { shape: "rectangle", x, y, widthM: 1, lengthM: 2, turnDeg: 0 } as const;
      const { bed: _none, ...loose } = planting(a + 100, variety);
      return addPlantings(layoutId, [{ ...loose, id, outline }], "Plant");
    },
  ]),
  number.map((a) => [
    `bed ${a}`,
    ({ layoutId, ids }) => (ids.includes(`bed-${a + 100}`) ? null : addBed(layoutId, bed(a + 100))),
  ]),
  fc.tuple(number, metres, metres).map(([a, x, y]) => [
    `wild plant ${a}`,
    ({ ids }) =>
      ids.includes(`wild-${a + 10}`)
        ? null
        : addSurrounding({
            id: `wild-${a + 10}`,
            label: "wild carrot",
            what: "pollen",
            kind: a % 2 === 0 ? "wild-carrot" : "tomato",
            outline: { shape: "point", x, y },
            flowering: "yes",
            cover: "none",
          }),
  ]),
  fc
    .tuple(number, fc.constantFrom("pollen", "hedge"))
    .map(([a, what]) => [
      `surrounding ${a}`,
      ({ plan }) => changeSurrounding(pick(plan.surroundings, a)?.id ?? "", { what }, "Change"),
    ]),
  fc
    .constantFrom("home", "sale", "stock")
    .map((level) => [`level ${level}`, () => changePlan({ level }, "Level")]),
  number.map((a) => [
    `accept ${a}`,
    ({ findings, layoutId }) => {
      const finding = pick(findings, a);
      return finding ? acceptFinding(acceptanceOf(finding, layoutId, "it is far enough")) : null;
    },
  ]),
  number.map((a) => [
    `withdraw ${a}`,
    ({ plan, layoutId }) => withdrawAcceptance(pick(plan.accepted, a)?.finding ?? "", layoutId),
  ]),
  number.map((a) => [
    `copy layout ${a}`,
    ({ plan, layoutId }) =>
      plan.layouts.some((layout) => layout.id === `copy-${a}`)
        ? null
        : copyLayout(layoutId, `copy-${a}`, `Copy ${a}`),
  ]),
  number.map((a) => [`rename ${a}`, ({ layoutId }) => renameLayout(layoutId, `Layout ${a}`)]),
  number.map((a) => [
    `remove layout ${a}`,
    ({ plan }) => removeLayout(pick(plan.layouts, a)?.id ?? ""),
  ]),
];

function hereOf(store: Store): Here {
  const { plan, layoutId, result } = store.getState();
  const layout = plan.layouts.find((entry) => entry.id === layoutId);
  const drawn = [...(layout?.beds ?? []), ...(layout?.plantings ?? []), ...plan.surroundings];
  return { plan, layoutId, ids: drawn.map(({ id }) => id), findings: result.findings };
}

const anyEdit = fc.oneof(...editMakers);

/** An edit kept as one step, after some previews of other edits. */
const anyCommit: fc.Arbitrary<Step> = fc
  .tuple(fc.array(anyEdit, { maxLength: 3 }), anyEdit)
  .map(([previews, [does, make]]) => ({
    does,
    run: (store) => {
      for (const [, makePreview] of previews) {
        const edit = makePreview(hereOf(store));
        if (edit) store.getState().preview(edit);
      }
      const edit = make(hereOf(store));
      if (edit) store.getState().commit(edit);
      else store.getState().cancelPreview();
    },
  }));

const anyPreview: fc.Arbitrary<Step> = anyEdit.map(([does, make]) => ({
  does: `preview: ${does}`,
  run: (store) => {
    const edit = make(hereOf(store));
    if (edit) store.getState().preview(edit);
  },
}));

const anyWalk: fc.Arbitrary<Step> = fc.oneof(
  fc.constant<Step>({ does: "undo", run: (store) => store.getState().undo() }),
  fc.constant<Step>({ does: "redo", run: (store) => store.getState().redo() }),
  fc.constant<Step>({ does: "cancel", run: (store) => store.getState().cancelPreview() }),
  number.map<Step>((a) => ({
    does: `show layout ${a}`,
    run: (store) => {
      const { plan, showLayout } = { ...store.getState() };
      showLayout(pick(plan.layouts, a)?.id ?? "");
    },
  })),
);

export const anySteps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof(
    { arbitrary: anyCommit, weight: 6 },
    { arbitrary: anyPreview, weight: 2 },
    { arbitrary: anyWalk, weight: 3 },
  ),
  { minLength: 1, maxLength: 25 },
);

/** Commits only, each a change of the plan. */
export const anyCommits: fc.Arbitrary<readonly Step[]> = fc.array(anyCommit, {
  minLength: 1,
  maxLength: 20,
});
