import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import type { Variety } from "../../../src/core/model/plan.ts";
import { conflictWords } from "../../../src/panel/seed-list/place-words.ts";
import { likelyBed, tryPlace } from "../../../src/panel/seed-list/place-trial.ts";
import { bedAt, book, day, plantingAt, rectangle, smallPlan } from "../../support/small-plan.ts";

const june = { first: day("2027-06-01"), last: day("2027-08-20") };
const tomato = book.kind("tomato") as Kind;
const start = { method: "transplanted" as const, date: day("2027-05-17") };

/** Old Ferry stands in the first bed; a bed beside it, one far off and a short one. */
function kept() {
  const { plan, layout } = smallPlan([plantingAt(2, 0, { bloom: june, bed: "bed-1" })]);
  const far = { ...bedAt(3, 60), code: "B03" };
  const short = { id: "bed-4", code: "B04", outline: rectangle(90, 0, 0.5) };
  const beds = [...layout.beds, short, far];
  return checkLayout({ ...plan, layouts: [{ ...layout, beds }] }, layout.id);
}

test("a trial names the conflicts it would bring, and changes nothing", () => {
  const checked = kept();
  const variety = checked.plan.varieties[0] as Variety;
  const bed = checked.layout.beds[1];
  if (!bed) throw new Error("There is a second bed.");
  const trial = tryPlace(checked, bed, variety, { kind: tomato, plants: 10, start });
  expect(trial?.conflicts).toHaveLength(1);
  expect(trial?.conflicts[0]).toMatch(
    /Amber Lantern is too close to .*Old Ferry|Old Ferry is too close to .*Amber Lantern/,
  );
  expect(checked.layout.plantings).toHaveLength(1);
});

test("the bed to begin with has room and brings no conflict, though it is not the first", () => {
  const checked = kept();
  const variety = checked.plan.varieties[0] as Variety;
  expect(likelyBed(checked, variety, { kind: tomato, plants: 10, start })?.code).toBe("B03");
});

test("without a start it says that not all is known, and never that it is clear", () => {
  const checked = kept();
  const variety = checked.plan.varieties[0] as Variety;
  const bed = checked.layout.beds[1];
  if (!bed) throw new Error("There is a second bed.");
  const trial = tryPlace(checked, bed, variety, { kind: tomato, plants: 10 });
  expect(trial?.unknowns).toBeGreaterThan(0);
  expect(conflictWords(trial?.conflicts ?? [], true)).toContain("not all is known");
});

test("the bed to begin with is not beside one of its group whose bloom nobody has dated", () => {
  const { plan, layout } = smallPlan([plantingAt(2, 0, { bed: "bed-1" })]);
  const far = { ...bedAt(3, 60), code: "B03" };
  const checked = checkLayout(
    { ...plan, layouts: [{ ...layout, beds: [...layout.beds, far] }] },
    layout.id,
  );
  const variety = checked.plan.varieties[0] as Variety;
  expect(likelyBed(checked, variety, { kind: tomato, plants: 10, start })?.code).toBe("B03");
});
