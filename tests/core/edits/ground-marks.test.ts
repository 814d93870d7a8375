/** Diseases marked on the ground: added, changed, removed, read and refused. */
import { expect, test } from "vitest";
import {
  addGroundMarks,
  changeGroundMark,
  removeGroundMark,
} from "../../../src/core/edits/ground.ts";
import { ownKindRefusal } from "../../../src/core/edits/own-kind-edits.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import type { GroundMark } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";

const mark: Omit<GroundMark, "id"> = {
  outline: { shape: "rectangle", x: 3, y: 4, widthM: 1, lengthM: 2, turnDeg: 0 },
  disease: "white-rot",
  seenOn: dayFromIso("2024-07-12") ?? 0,
};

const isKnown = (id: string) => cropBook().kind(id) !== undefined;

test("marks come under ids of their own, are changed and go, each in one step", () => {
  const plan = addGroundMarks([mark, mark], "Mark").apply(emptyPlan("trial", 2027));
  expect(plan.groundMarks.map(({ id }) => id)).toEqual(["mark-1", "mark-2"]);
  const noted = { ...mark, id: "mark-2", note: "By the gate" };
  const changed = changeGroundMark(noted, "Note").apply(plan);
  expect(changed.groundMarks).toEqual([{ ...mark, id: "mark-1" }, noted]);
  expect(changed.groundMarks[0]).toBe(plan.groundMarks[0]);
  const one = removeGroundMark("mark-1", "Remove").apply(changed);
  expect(one.groundMarks).toEqual([noted]);
  expect(removeGroundMark("mark-1", "Remove").apply(one)).toBe(one);
  const read = readPlan(writePlan(one), "marks.json", isKnown);
  expect(read.ok && read.value.groundMarks).toEqual([noted]);
});

test("a mark of an unknown kind or with a crossed outline is refused by name", () => {
  const refused = (more: Partial<GroundMark>) => {
    const plan = addGroundMarks([{ ...mark, ...more }], "").apply(emptyPlan("trial", 2027));
    const read = readPlan(writePlan(plan), "marks.json", isKnown);
    return read.ok ? [] : read.problems.map(({ object, field }) => `${object} ${field}`);
  };
  expect(refused({ kinds: ["moonfruit"] })).toEqual([`groundMarks[0] "white-rot" kinds`]);
  const corners: [number, number][] = [
    [0, 0],
    [1, 1],
    [1, 0],
    [0, 1],
  ];
  const outline = { shape: "polygon" as const, corners };
  expect(refused({ outline })).toEqual([`groundMarks[0] "white-rot" outline`]);
  expect(refused({ kinds: ["leek"] })).toEqual([]);
});

test("an own kind that a mark names stays", () => {
  const plan = addGroundMarks(
    [{ ...mark, disease: "leaf-spot", name: "Leaf spot", kinds: ["own-kind-1"] }],
    "",
  ).apply(emptyPlan("trial", 2027));
  expect(ownKindRefusal(plan, { id: "own-kind-1", name: "Sea kale" })).toContain("Leaf spot");
});
