/**
 * What the checks say about each sample plan, word for word. UPDATE=1 rewrites the files; look at
 * the difference before keeping it.
 */
import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { describeFinding, type Finding } from "../../src/core/checks/all-checks.ts";
import { describeStanding } from "../../src/core/checks/pair-words.ts";
import { severitySign, severityWord, wordingFor } from "../../src/core/checks/wording.ts";
import { joinGroundReckoning } from "../../src/core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../src/core/checks/seed-lots.ts";
import { groundReckoning } from "../../src/core/ground/ground-reckoning.ts";
import { seedReckoning } from "../../src/core/shelf/seed-reckoning.ts";
import { countBySeverity } from "../../src/core/checks/finding.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { planBook } from "../../src/core/kinds/own-kinds.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";
import { shapeCentre } from "../../src/core/geometry/outline.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { problemText } from "../../src/core/model/problem.ts";
import { readPlan, writePlan } from "../../src/core/model/read-plan.ts";
import { compareGolden } from "./golden-file.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

const folder = new URL("../../sample-plots/", import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith(".json"));

function sample(file: string): Plan {
  const text = readFileSync(new URL(file, folder), "utf8");
  const read = readPlan(text, file, (kind) => cropBook().kind(kind) !== undefined);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  return read.value;
}

function checked(plan: Plan, layout: Layout) {
  const result = runChecks(plan, layout, planBook(plan));
  return { result, wording: wordingFor(plan, layout, (id) => result.standById.get(id)) };
}

function layoutNamed(plan: Plan, name: string): Layout {
  const layout = plan.layouts.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return layout;
}

/** Everything told about a layout, as lines of text. */
function report(plan: Plan, layout: Layout): string {
  const { result, wording } = checked(plan, layout);
  const counts = countBySeverity(result.findings);
  const told = (finding: Finding) => {
    const { title, sentences } = describeFinding(finding, wording);
    const head = `${severitySign[finding.severity]} ${severityWord[finding.severity]}: ${title}`;
    return [head, ...sentences.map((sentence) => `    ${sentence}`)];
  };
  const standing = result.pairs.map(
    (pair) =>
      `  ${wording.nameOf(pair.seedParent)} from ${wording.nameOf(pair.pollenSource)}: ${describeStanding(pair, wording)}`,
  );
  return [
    `${plan.title}, ${layout.name}: conflict ${counts.conflict}, caution ${counts.caution}, unknown ${counts.unknown}`,
    ...result.findings.flatMap(told),
    "Accepted:",
    ...result.accepted.flatMap(told),
    "On what each near pair rests:",
    ...standing,
    "",
  ].join("\n");
}

describe.each(files)("%s", (file) => {
  test("says what it said before", () => {
    const plan = sample(file);
    const text = plan.layouts.map((layout) => report(plan, layout)).join("\n");
    compareGolden(file.replace(/json$/, "txt"), text);
  });

  test("is kept whole by reading and writing", () => {
    const text = readFileSync(new URL(file, folder), "utf8");
    const written: unknown = JSON.parse(writePlan(sample(file)));
    expect(written).toMatchObject(JSON.parse(text) as object);
  });

  test("stands on paper as one farm's: codes of their own, every planting in its bed", () => {
    for (const layout of sample(file).layouts) {
      const codes = [...layout.beds, ...layout.plantings].map(({ code }) => code);
      expect(new Set(codes).size).toBe(codes.length);
      const codeOf = new Map(layout.beds.map(({ id, code }) => [id, code]));
      for (const { code, bed } of layout.plantings) {
        expect(code.startsWith(`${codeOf.get(bed ?? "")}-`)).toBe(true);
      }
    }
  });
});

describe("the garden to solve", () => {
  const plan = sample("garden-to-solve.json");
  const layout = plan.layouts[0] as Layout;

  test("has three conflicts, one caution, one unknown", () => {
    const { findings } = checked(plan, layout).result;
    expect(countBySeverity(findings)).toEqual({ conflict: 3, caution: 1, unknown: 1 });
  });

  test("is cleared of two conflicts by dragging Amber Lantern, of the third by dragging Slatewing", () => {
    const solved = layoutNamed(sample("garden-solved.json"), "Solved");
    const dragged = ["p6", "p9"].map((id) => {
      const [from, to] = [layout, solved].map((each) => {
        const planting = each.plantings.find((candidate) => candidate.id === id);
        if (!planting) throw new Error(`no ${id}`);
        return shapeCentre(planting.outline);
      }) as [{ x: number; y: number }, { x: number; y: number }];
      return moveObjects(layout.id, [id], to.x - from.x, to.y - from.y);
    });
    const conflicts = dragged.map((_, index) => {
      const after = dragged.slice(0, index + 1).reduce((before, edit) => edit.apply(before), plan);
      return countBySeverity(checked(after, after.layouts[0] as Layout).result.findings).conflict;
    });
    expect(conflicts).toEqual([1, 0]);
  });

  test("has one variety still to place, and free ground for it", () => {
    const placed = new Set(layout.plantings.map(({ variety }) => variety));
    expect(plan.varieties.filter(({ id }) => !placed.has(id)).map(({ name }) => name)).toEqual([
      "Quarry White",
    ]);
  });
});

describe("the garden solved", () => {
  const plan = sample("garden-solved.json");

  test("has nothing left, and its chosen layout stands first", () => {
    const layout = layoutNamed(plan, "Solved");
    expect([plan.chosenLayout, plan.layouts[0]]).toEqual([layout.id, layout]);
    const { result } = checked(plan, layout);
    expect(result.findings).toEqual([]);
    expect(result.pairs.map(({ standing }) => standing).sort()).toEqual(["cover", "time"]);
  });

  test("keeps the first layout to compare with", () => {
    const first = layoutNamed(plan, "First thoughts");
    expect(countBySeverity(checked(plan, first).result.findings)).toEqual({
      conflict: 3,
      caution: 0,
      unknown: 0,
    });
    expect(first).toEqual(sample("garden-to-solve.json").layouts[0]);
  });
});

test("the field's two conflicts are cleared by dragging Cinderpath to the far end of U6", () => {
  const plan = sample("two-acre-field.json");
  const layout = plan.layouts[0] as Layout;
  const count = (after: Plan) =>
    countBySeverity(checked(after, after.layouts[0] as Layout).result.findings);
  expect(count(plan).conflict).toBe(2);
  const planting = layout.plantings.find(({ id }) => id === "p16");
  const bed = layout.beds.find(({ code }) => code === "U6");
  if (!planting || bed?.outline.shape !== "rectangle") throw new Error("not the field expected");
  const { x, y } = shapeCentre(planting.outline);
  const edit = moveObjects(layout.id, ["p16"], bed.outline.x - x, bed.outline.y + 30 * 0.3048 - y);
  expect(count(edit.apply(plan)).conflict).toBe(0);
});

describe("the walled garden", () => {
  const plan = sample("walled-garden.json");
  const layout = plan.layouts[0] as Layout;
  const { findings } = checked(plan, layout).result;

  test("has four years of ground, the last by the field record", () => {
    const years = plan.earlierCrops.map(({ year }) => year);
    expect([...new Set(years)]).toEqual([2023, 2024, 2025, 2026]);
    const recorded = plan.earlierCrops.filter(({ knownFrom }) => knownFrom === "record");
    expect(new Set(recorded.map(({ year }) => year))).toEqual(new Set([2026]));
    expect(plan.cameFrom?.season).toBe("2026");
  });

  test("has biennials in their second year, standing and from store", () => {
    const locked = layout.plantings.filter(({ locked: isLocked }) => isLocked === true);
    expect(locked.map(({ code }) => code)).toEqual(["R1-1", "B1-1", "D2-1"]);
    const [carrot] = plan.varieties;
    expect(carrot).toMatchObject({ name: "Long Meadow", toSetOut: [{ plants: 66, plot: "D1-1" }] });
    const set = layout.plantings.filter(({ variety }) => variety === carrot?.id);
    expect(set.reduce((sum, { plants = 0 }) => sum + plants, 0)).toBe(42);
  });

  test("has no conflict, three cautions of rotation, and two unknowns", () => {
    expect(countBySeverity(findings)).toMatchObject({ conflict: 0, unknown: 2 });
    const of = (check: string) => findings.filter((finding) => finding.check === check);
    expect(of("rotation")).toHaveLength(3);
    expect(of("volunteers")).toMatchObject([{ severity: "unknown" }]);
  });
});
