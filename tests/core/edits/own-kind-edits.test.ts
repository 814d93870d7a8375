/** Own kinds come, change and go; one that is needed stays. */
import { describe, expect, test } from "vitest";
import {
  addOwnKind,
  changeOwnKind,
  ownKindRefusal,
  removeOwnKind,
} from "../../../src/core/edits/own-kind-edits.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import type { OwnKind, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";

const MOONFRUIT: OwnKind = {
  id: "own-kind-1",
  name: "moonfruit",
  group: "own-kind-1",
  lifeCycle: "annual",
  carrier: "insects",
  breeding: "outcrossing",
  isolationM: { home: 90 },
};

const empty = emptyPlan("p", 2027);
const plan = addOwnKind(MOONFRUIT).apply(empty);

function withVarieties(...names: readonly string[]): Plan {
  const varieties = names.map((name, index) => ({ id: `v${index}`, name, kind: MOONFRUIT.id }));
  return { ...plan, varieties };
}

test("a kind travels with the plan's file", () => {
  const read = readPlan(writePlan(withVarieties("Pale Lamp")), "plan.json", () => false);
  expect(read).toEqual({ ok: true, value: withVarieties("Pale Lamp") });
});

test("a changed kind takes the old one's place", () => {
  const changed = { ...MOONFRUIT, isolationM: {} };
  expect(changeOwnKind(changed).apply(plan).ownKinds).toEqual([changed]);
});

test("adding and removing it leaves the plan as it was", () => {
  expect(removeOwnKind(MOONFRUIT).apply(plan)).toEqual(empty);
});

describe("a kind that is needed", () => {
  test.each([
    [["Pale Lamp"], "moonfruit stays while Pale Lamp is of that kind."],
    [["Pale Lamp", "Owl"], "moonfruit stays while Pale Lamp and Owl are of that kind."],
    [
      ["Pale Lamp", "Owl", "Dusk"],
      "moonfruit stays while Pale Lamp and 2 others are of that kind.",
    ],
  ])("by %j is not removed, and it says why", (names, words) => {
    const used = withVarieties(...names);
    expect(ownKindRefusal(used, MOONFRUIT)).toContain(words);
    expect(removeOwnKind(MOONFRUIT).apply(used)).toBe(used);
  });

  test("by a neighbour is not removed either", () => {
    const used: Plan = {
      ...plan,
      surroundings: [
        {
          id: "s1",
          label: "Moonfruit next door",
          what: "pollen",
          kind: MOONFRUIT.id,
          outline: { shape: "point", x: 0, y: 0 },
          flowering: "yes",
          cover: "none",
        },
      ],
    };
    expect(ownKindRefusal(used, MOONFRUIT)).toContain("Moonfruit next door is of that kind");
  });

  test("that grew here in an earlier year is not removed either", () => {
    const outline = { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 } as const;
    const crop = { id: "e1", outline, kind: MOONFRUIT.id, year: 2025 };
    const used: Plan = { ...plan, earlierCrops: [crop] };
    expect(removeOwnKind(MOONFRUIT).apply(used)).toBe(used);
    expect(ownKindRefusal(used, MOONFRUIT)).toContain("the earlier crop of 2025 is of that kind");
  });

  test("but own figures for a built-in kind can go: that kind comes back", () => {
    const own = { ...MOONFRUIT, id: "tomato", name: "tomato" };
    const used: Plan = {
      ...addOwnKind(own).apply(empty),
      varieties: [{ id: "v1", name: "Amber Lantern", kind: "tomato" }],
    };
    expect(ownKindRefusal(used, own)).toBeNull();
    expect(removeOwnKind(own).apply(used).ownKinds).toEqual([]);
  });
});
