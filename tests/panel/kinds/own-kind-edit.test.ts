/** A kind of the plan's own as it is typed. */
import { describe, expect, test } from "vitest";
import { kindOf, planBook } from "../../../src/core/kinds/own-kinds.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  blankOwnKind,
  groupChoices,
  ownDistances,
  ownKindFrom,
  ownKindProblem,
  speciesChoices,
} from "../../../src/panel/kinds/own-kind-edit.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

const { plan } = smallPlan();

function tomato() {
  const kind = book.kind("tomato");
  if (!kind) throw new Error("no tomato");
  return kind;
}

test("a blank one has an id and a group of its own, free in plan and book", () => {
  const first = blankOwnKind(plan, "moonfruit");
  expect(first).toMatchObject({ id: "own-kind-1", name: "moonfruit", group: "own-kind-1" });
  const next = blankOwnKind({ ...plan, ownKinds: [first] }, "");
  expect(next.id).toBe("own-kind-2");
});

test("own figures for a kind change nothing until something is typed", () => {
  expect(kindOf(ownKindFrom(tomato()))).toEqual(tomato());
});

describe("a kind cannot be kept", () => {
  test.each([
    ["", /Type the kind's name/],
    ["  ", /Type the kind's name/],
    ["Aubergine", /eggplant is known here already/],
    ["Solanum lycopersicum", /tomato is known here already/],
  ])("under the name %j", (name, reason) => {
    expect(ownKindProblem({ ...blankOwnKind(plan, ""), name }, book)).toMatch(reason);
  });

  test("but under one of its own, and under the name of the kind it stands for", () => {
    expect(ownKindProblem(blankOwnKind(plan, "moonfruit"), book)).toBeNull();
    expect(ownKindProblem(ownKindFrom(tomato()), book)).toBeNull();
  });
});

test("groups: its own, those of other own kinds, the built-in ones by name", () => {
  const other = { ...blankOwnKind(plan, "sunroot"), id: "own-kind-9", group: "own-kind-9" };
  const withOther: Plan = { ...plan, ownKinds: [other] };
  const choices = groupChoices(withOther, blankOwnKind(withOther, ""));
  expect(choices[0]).toEqual({ value: "own-kind-10", label: "a group of its own" });
  expect(choices[1]).toEqual({ value: "own-kind-9", label: "that of sunroot" });
  expect(choices).toContainEqual({ value: "squash", label: "squash and pumpkin" });
  expect(new Set(choices.map(({ value }) => value)).size).toBe(choices.length);
});

test("own figures for a kind keep its group among the choices", () => {
  const own = ownKindFrom(tomato());
  const values = groupChoices(plan, own).map(({ value }) => value);
  expect(values).toContain(own.group);
  expect(new Set(values).size).toBe(values.length);
});

test("species of a group with their kinds, without the kind itself", () => {
  const own = { ...blankOwnKind(plan, "moonfruit"), group: "squash" };
  const choices = speciesChoices("squash", own, planBook({ ...plan, ownKinds: [own] }));
  expect(choices[0]?.label).toMatch(/^Cucurbita pepo \(summer squash, pepo pumpkin/);
  expect(choices.some(({ label }) => label.includes("moonfruit"))).toBe(false);
});

test("its distances in words", () => {
  const format = (metres: number) => `${metres} m`;
  const own = blankOwnKind(plan, "moonfruit");
  expect(ownDistances(own, format)).toBe("no distance of its own");
  expect(ownDistances({ ...own, isolationM: { home: 9, stock: 40 } }, format)).toBe(
    "9 m home, 40 m stock",
  );
});
