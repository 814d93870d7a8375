import { expect, test } from "vitest";
import {
  blankVariety,
  varietyProblem,
  withKind,
} from "../../../src/panel/seed-list/variety-edit.ts";
import { varietyRequirement } from "../../../src/panel/state/requirement-words.ts";
import { book, smallPlan } from "../../support/small-plan.ts";

const { plan } = smallPlan();

test("a variety needs a name and a kind, and is not in the list already", () => {
  const blank = blankVariety(plan);
  expect(blank.id).toBe("variety-4");
  expect(varietyProblem(plan, blank)).toBe("Type the variety's name");
  expect(varietyProblem(plan, { ...blank, name: "Old Ferry" })).toBe("Pick the kind it belongs to");
  expect(varietyProblem(plan, { ...blank, name: "old ferry", kind: "tomato" })).toBe(
    "Old Ferry is already in the seed list",
  );
  expect(varietyProblem(plan, { ...blank, name: "Old Ferry", kind: "beet" })).toBeNull();
});

test("another kind takes the old kind's form and figure away", () => {
  const variety = { id: "v", name: "n", kind: "tomato", form: "x", figure: "y", wantedPlants: 3 };
  expect(withKind(variety, "beet")).toEqual({ id: "v", name: "n", kind: "beet", wantedPlants: 3 });
  expect(withKind(variety, "tomato")).toBe(variety);
});

test("a variety's own distance stands before the published one", () => {
  const [variety] = plan.varieties;
  if (!variety) throw new Error("no variety");
  expect(varietyRequirement(plan, variety, book)?.from).toBe("figure");
  expect(varietyRequirement(plan, { ...variety, isolationM: 12 }, book)).toMatchObject({
    metres: 12,
    from: "variety",
  });
  expect(varietyRequirement(plan, { ...variety, kind: "moonfruit" }, book)).toBeNull();
});
