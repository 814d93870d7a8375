import * as fc from "fast-check";
import { expect, test } from "vitest";
import { findingId } from "../../../src/core/checks/finding.ts";
import { idRanks, inIdOrder } from "../../../src/core/nearness/id-order.ts";

/** Ids of which some begin with all of another, and go on with what stands before or after a bar. */
const id = fc.array(fc.constantFrom("a", "b", "0", "}", "~", " ", "é", "😀"), {
  minLength: 1,
  maxLength: 4,
});
const list = fc.uniqueArray(
  id.map((parts) => parts.join("")),
  { minLength: 2, maxLength: 12 },
);

test("two each are in the order of the ids that findings about them have", () => {
  fc.assert(
    fc.property(list, (ids) => {
      const items = ids.map((each) => ({ id: each }));
      const twos = ids.flatMap((_, one) =>
        ids.map((__, other) => [one, other] as const).filter(([a, b]) => a !== b),
      );
      const columns = {
        one: Uint32Array.from(twos, ([one]) => one),
        other: Uint32Array.from(twos, ([, other]) => other),
      };
      // Each two once, whichever of them comes first.
      const asked = Uint32Array.from(
        twos.flatMap(([one, other], pair) =>
          (one + other) % 2 === Number(one < other) ? [pair] : [],
        ),
      );
      const ranks = idRanks(items);
      if (!ranks) throw new Error("no ranks");
      const told = [...inIdOrder(asked, columns, ranks)].map((pair) =>
        findingId("overlap", [
          ids[columns.one[pair] ?? 0] ?? "",
          ids[columns.other[pair] ?? 0] ?? "",
        ]),
      );
      expect(told).toEqual(told.toSorted());
      expect(new Set(told).size).toBe((ids.length * (ids.length - 1)) / 2);
    }),
  );
});

test("ids that hold what stands between two have no ranks", () => {
  expect(idRanks([{ id: "a" }, { id: "a|b" }])).toBeNull();
});
