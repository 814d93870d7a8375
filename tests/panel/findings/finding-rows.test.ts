import { describe, expect, test } from "vitest";
import { acceptanceOf } from "../../../src/core/checks/acceptance.ts";
import { type Finding, checkOf } from "../../../src/core/checks/all-checks.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { IdPages } from "../../../src/core/lists/id-pages.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { workedOff } from "../../../src/panel/state/slices.ts";
import { fieldPlan } from "../../bench/field.ts";
import {
  GROUP_LEAST,
  countOf,
  filtered,
  findingRows,
  findingSteps,
  inOrder,
  titlesFound,
} from "../../../src/panel/findings/finding-rows.ts";

/** A finding as far as the list looks at it. */
function found(
  id: string,
  more: Partial<Pick<Finding, "check" | "severity" | "subjects" | "measuredM" | "requiredM">> = {},
): Finding {
  return { id, check: "isolation", severity: "conflict", subjects: [id, "x"], ...more } as Finding;
}

const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

describe("the lines of the list", () => {
  test("conflicts stand before cautions and unknowns, the larger shortfall first", () => {
    const rows = findingRows([
      found("unknown", { severity: "unknown" }),
      found("near enough", { measuredM: 7, requiredM: 8 }),
      found("caution", { severity: "caution" }),
      found("no distance"),
      found("far too close", { measuredM: 10, requiredM: 800 }),
    ]);
    expect(inOrder(rows).map(({ id }) => id)).toEqual([
      "far too close",
      "near enough",
      "no distance",
      "caution",
      "unknown",
    ]);
  });

  test("many unknowns of one check are one line with all of them", () => {
    const unknowns = numbers(23).map((number) =>
      found(`p${number}`, {
        check: "missing-bloom",
        severity: "unknown",
        subjects: [`p${number}`],
      }),
    );
    const rows = findingRows([...unknowns, found("other", { subjects: ["a", "b"] })]);
    expect(rows).toHaveLength(2);
    expect(rows[0]?.finding?.id).toBe("other");
    expect(rows[1]?.group?.findings).toHaveLength(23);
    expect(rows[1]?.group?.cause).toBeNull();
  });

  test("pairs with one neighbour are one line that names it; fewer than a handful stay apart", () => {
    const pairs = (count: number) =>
      numbers(count).map((number) => found(`p${number}`, { subjects: [`p${number}`, "road"] }));
    expect(findingRows(pairs(GROUP_LEAST))).toMatchObject([{ group: { cause: "road" } }]);
    expect(findingRows(pairs(GROUP_LEAST - 1))).toHaveLength(GROUP_LEAST - 1);
  });

  test("ten pairs of five tomatoes: each finding stands in one line, and none is lost", () => {
    const five = numbers(5);
    const pairs = five.flatMap((a) =>
      five.filter((b) => b > a).map((b) => found(`${a} ${b}`, { subjects: [`t${a}`, `t${b}`] })),
    );
    const listed = inOrder(findingRows(pairs)).map(({ id }) => id);
    expect(listed).toHaveLength(10);
    expect(new Set(listed)).toEqual(new Set(pairs.map(({ id }) => id)));
  });

  test("findings of two severities or two checks never share a line", () => {
    const rows = findingRows([
      ...numbers(4).map((number) => found(`a${number}`, { subjects: [`a${number}`, "road"] })),
      ...numbers(4).map((number) =>
        found(`b${number}`, { subjects: [`b${number}`, "road"], severity: "caution" }),
      ),
      ...numbers(4).map((number) =>
        found(`c${number}`, {
          subjects: [`c${number}`, "road"],
          severity: "caution",
          check: "mixing",
        }),
      ),
    ]);
    expect(rows.map(({ group }) => group?.findings.map(({ id }) => id[0]).join(""))).toEqual([
      "aaaa",
      "bbbb",
      "cccc",
    ]);
  });
});

test("filters leave out severities, other checks, and what is not about the chosen", () => {
  const findings = [
    found("one"),
    found("two", { severity: "caution" }),
    found("three", { check: "overlap", subjects: ["bed"] }),
  ];
  const ids = (filter: Partial<Parameters<typeof filtered>[1]>) =>
    filtered(findings, { without: new Set(), check: null, about: null, ...filter }).map(
      ({ id }) => id,
    );
  expect(ids({})).toEqual(["one", "two", "three"]);
  expect(ids({ without: new Set(["conflict"]) })).toEqual(["two"]);
  expect(ids({ check: "overlap" })).toEqual(["three"]);
  expect(ids({ about: new Set(["two"]) })).toEqual(["two"]);
});

describe("what the filters and counts say", () => {
  const book = cropBook();
  const checked = (plan: Plan) => {
    const [layout] = plan.layouts;
    if (!layout) throw new Error("The field has no layout.");
    return runChecks(plan, layout, book);
  };

  test("is the same as told by the findings, accepted ones left out", () => {
    const plan = fieldPlan(300, 8);
    const all = checked(plan).findings;
    const overlaps = all.filter(({ check }) => check === "overlap");
    expect(overlaps.length).toBeGreaterThan(0);
    const accept = (finding: Finding) => acceptanceOf(finding, "layout-1", "as it is");
    for (const accepted of [[], overlaps.map(accept), all.slice(0, 40).map(accept)]) {
      const result = checked({ ...plan, accepted });
      expect(result.accepted.length > 0).toBe(accepted.length > 0);
      const titles = new Map(result.findings.map((each) => [each.check, checkOf(each).title]));
      expect([...titlesFound(result)]).toEqual([...titles]);
      expect(countOf(result)).toBe(result.findings.length);
    }
  });

  test("is told without any finding being made; those are made a page at a step", () => {
    let made = 0;
    const one = IdPages.later({
      length: 1000,
      idAt: (place) => `f${1000 + place}`,
      at: (place) => {
        made += 1;
        return found(`f${1000 + place}`);
      },
    });
    const none = IdPages.of<Finding>([]);
    const result = { byCheck: new Map([["isolation", [one, none, none]]]), accepted: [] };
    expect([...titlesFound(result).keys()]).toEqual(["isolation"]);
    expect(made).toBe(0);
    const steps = findingSteps(result);
    steps.next();
    expect(made).toBeLessThan(300);
    workedOff(steps);
    expect(made).toBe(1000);
    expect(one.all).toHaveLength(1000);
    expect(made).toBe(1000);
  });
});
