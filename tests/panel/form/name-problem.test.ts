/** A name is refused where the plan's schema would refuse it, and no sooner. */
import { expect, test } from "vitest";
import { name, note } from "../../../src/core/model/schema-parts.ts";
import { LIMITS } from "../../../src/core/model/limits.ts";
import { nameProblem } from "../../../src/panel/form/name-problem.ts";

test.each([
  ["name", name, {}],
  ["note", note, { most: LIMITS.note }],
] as const)("the longest %s is the schema's", (field, schema, asked) => {
  for (const length of [LIMITS[field], LIMITS[field] + 1]) {
    const text = "x".repeat(length);
    expect(nameProblem(text, asked) === null).toBe(schema.safeParse(text).success);
  }
});

test("nothing typed is refused only where a name is needed", () => {
  expect(nameProblem("  ", { isNeeded: "A layout needs a name" })).toBe("A layout needs a name");
  expect(nameProblem("")).toBeNull();
  expect(
    nameProblem("x".repeat(201), { tooLong: (most) => `A title has at most ${most} letters` }),
  ).toBe("A title has at most 200 letters");
});
