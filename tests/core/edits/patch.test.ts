/** Patches kept for undo: forward and back are inverse, small, and leave untouched things alone. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { applyPatch, difference } from "../../../src/core/edits/patch.ts";
import { LAYOUT, gardenPlan } from "../../support/garden-plan.ts";

/** What a plan is made of: text, numbers, lists, objects. */
const { anyValue } = fc.letrec<{ anyValue: unknown }>((tie) => ({
  anyValue: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.oneof(fc.string({ maxLength: 3 }), fc.double(), fc.boolean(), fc.constant(null)),
    fc.array(tie("anyValue"), { maxLength: 5 }),
    fc.dictionary(fc.constantFrom("id", "name", "x", "y", "outline"), tie("anyValue")),
  ),
}));

/** A value and the same with something in it changed: unchanged parts are the same objects. */
const anyChange = fc
  .tuple(anyValue, anyValue, fc.infiniteStream(fc.nat({ max: 6 })))
  .map(([before, grafted, choices]) => ({ before, after: changed(before, grafted, choices) }));

function changed(value: unknown, grafted: unknown, choices: Iterator<number>): unknown {
  const choice = choices.next().value as number;
  if (choice === 0) return grafted;
  if (Array.isArray(value)) {
    const at = choice % (value.length + 1);
    if (choice === 1) return value.toSpliced(at, 1);
    if (choice === 2) return value.toSpliced(at, 0, grafted);
    if (choice === 3) return value.toReversed();
    return value.map((item: unknown, index) =>
      index === at ? changed(item, grafted, choices) : item,
    );
  }
  if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value);
    const at = choice % (entries.length + 1);
    if (choice === 1) return Object.fromEntries(entries.toSpliced(at, 1));
    if (choice === 2) return { ...value, added: grafted };
    return Object.fromEntries(
      entries.map(([key, item], index) => [
        key,
        index === at ? changed(item, grafted, choices) : item,
      ]),
    );
  }
  return value;
}

/** Every object and list within a value. */
function parts(value: unknown, found = new Set<unknown>()): ReadonlySet<unknown> {
  if (typeof value === "object" && value !== null) {
    found.add(value);
    for (const inner of Object.values(value)) parts(inner, found);
  }
  return found;
}

describe("for any change", () => {
  test("forward gives what came after, back what was before", () => {
    fc.assert(
      fc.property(anyChange, ({ before, after }) => {
        const patch = difference(before, after);
        if (patch === null) {
          expect(after).toEqual(before);
          return;
        }
        expect(applyPatch(before, patch, "forward")).toEqual(after);
        expect(applyPatch(after, patch, "back")).toEqual(before);
        const once = applyPatch(applyPatch(before, patch, "forward"), patch, "back");
        expect(once).toEqual(before);
        expect(applyPatch(once, patch, "forward")).toEqual(after);
      }),
      { numRuns: 2000 },
    );
  });

  test("neither value is changed in place", () => {
    fc.assert(
      fc.property(anyChange, ({ before, after }) => {
        const copies = [structuredClone(before), structuredClone(after)];
        const patch = difference(before, after);
        if (patch) {
          applyPatch(before, patch, "forward");
          applyPatch(after, patch, "back");
        }
        expect([before, after]).toEqual(copies);
      }),
    );
  });

  test("an object the change did not touch is the same object afterwards", () => {
    fc.assert(
      fc.property(anyValue, anyValue, fc.integer({ min: 1, max: 4 }), (kept, grafted, count) => {
        const untouched = Array.from({ length: count }, () => ({ kept }));
        const before = { list: [...untouched, { name: "old" }], other: untouched };
        const after = { list: [...untouched, { name: "new", grafted }], other: untouched };
        const patch = difference(before, after);
        const forward = patch && applyPatch(before, patch, "forward");
        expect(forward?.other).toBe(untouched);
        untouched.forEach((item, index) => expect(forward?.list[index]).toBe(item));
        for (const part of parts(kept)) expect(parts(forward)).toContain(part);
      }),
    );
  });
});

test("equal content is no difference, even in new objects", () => {
  fc.assert(
    fc.property(anyValue, (value) => {
      expect(difference(value, structuredClone(value))).toBeNull();
    }),
  );
});

test("a thousand edits of a plan with five thousand plantings hold far less than the plan", () => {
  let plan = gardenPlan(5000);
  let held = 0;
  for (let step = 1; step <= 1000; step += 1) {
    const next = moveObjects(LAYOUT, [`planting-${step * 5}`], 0.1, 0.2).apply(plan);
    held += JSON.stringify(difference(plan, next)).length;
    plan = next;
  }
  expect(held).toBeLessThan(JSON.stringify(plan).length / 2);
});
