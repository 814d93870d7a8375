/** How a harvest was isolated, frozen into its lot; days against the calendar of JavaScript. */
import { describe, expect, test } from "vitest";
import { allIsolationPairs } from "../../../src/core/checks/isolation.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { frozenIsolation } from "../../../src/core/record/frozen-isolation.ts";
import type { Entry, IsolationRecord, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { bloom, day, source, squareAt, trialPlan } from "../../support/trial-plan.ts";

let count = 0;
const entry = (of: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id: `e-${(count += 1)}`,
  of,
  on: day(`2027-${on}`),
  what,
  ...more,
});

const AUTUMN = day("2027-10-01");

/** A carrot with another 5 m away, wild ones by the road, and one far beyond twice any distance. */
const garden = (entries: readonly Entry[], more: Partial<Plan> = {}) =>
  trialPlan(
    {
      p: { at: 0, kind: "carrot", bloom: bloom("06-10", "06-30"), plants: 60 },
      q: { at: 6, kind: "carrot", bloom: bloom("06-20", "07-20") },
      b: { at: 9, kind: "common-bean" },
    },
    [
      source("road", "wild-carrot", squareAt(40), { bloom: bloom("08-01", "09-10") }),
      source("far", "carrot", squareAt(60_000), { bloom: bloom("06-10", "06-30") }),
    ],
    { entries, ...more },
  );

const frozen = (plan: Plan) => frozenIsolation(plan, "layout-1", "p", AUTUMN) as IsolationRecord;
const ids = ({ sources }: IsolationRecord) => sources.map(({ id }) => id);

const calendarDays = (from: string, to: string) =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);

describe("what is listed", () => {
  test("every source of its group within twice its distance, and no other, the weakest first", () => {
    const plan = garden([]);
    const record = frozen(plan);
    const { result, book } = checkAsGrown(plan, "layout-1", AUTUMN);
    const near = allIsolationPairs(result.stands, book)
      .filter(({ seedParent, distanceM, requiredM }) => {
        return seedParent === "p" && distanceM <= 2 * (requiredM ?? Infinity);
      })
      .map(({ pollenSource }) => pollenSource);
    expect(new Set(ids(record))).toEqual(new Set(near));
    expect(ids(record)).toEqual(["q", "road"]);
    expect(record.standing).toBe("conflict");
    expect(record.sources.map(({ metres }) => metres)).toEqual([5, 39]);
    expect(record).toMatchObject({ level: "home", judgedOn: AUTUMN, plants: 60 });
    expect(record.requiredM).toBeGreaterThan(0);
    expect(record.levelMet, "a conflict meets no level").toBeUndefined();
  });

  test("a planting that was not meant for seed is judged as seed; one of nothing is null", () => {
    const plan = garden([]);
    const eaten: Plan = {
      ...plan,
      layouts: plan.layouts.map((layout) => ({
        ...layout,
        plantings: layout.plantings.map((each) =>
          each.id === "p" ? { ...each, purpose: "food" as const } : each,
        ),
      })),
    };
    expect(frozen(eaten).sources).toEqual(frozen(plan).sources);
    expect(frozenIsolation(plan, "layout-1", "nothing", AUTUMN)).toBeNull();
  });

  test("more sources than a lot can hold are counted, and the worst are kept", () => {
    const plan = trialPlan(
      { p: { at: 0, kind: "carrot", bloom: bloom("06-10", "06-30") } },
      Array.from({ length: 230 }, (_, index) =>
        source(`s${index}`, "carrot", squareAt(10 + index), {
          bloom: index === 229 ? bloom("06-10", "06-30") : bloom("08-01", "08-02"),
        }),
      ),
    );
    const record = frozen(plan);
    expect(record.sources).toHaveLength(200);
    expect(record.moreSources).toBe(30);
    expect(record.sources[0]).toMatchObject({ id: "s229", standing: "conflict" });
  });
});

describe("days", () => {
  const seen = [
    entry("p", "06-12", "first flower"),
    entry("p", "07-01", "last flower"),
    entry("q", "06-22", "first flower"),
    entry("q", "07-15", "last flower"),
  ];

  test("open together, and how many of them were seen, by the calendar", () => {
    const [q] = frozen(garden(seen)).sources;
    const expected = calendarDays("2027-06-22", "2027-07-01") + 1;
    expect(q).toMatchObject({ id: "q", togetherDays: expected, seenTogetherDays: expected });
    expect(q?.bloom).toEqual({ ...bloom("06-22", "07-15"), opens: "seen", closes: "seen" });
  });

  test("where no last flower was seen only forecast days are left, and that is told", () => {
    const record = frozen(garden(seen.filter(({ what }) => what !== "last flower")));
    const q = record.sources.find(({ id }) => id === "q");
    expect(q?.seenTogetherDays, "on the day q was first seen nobody saw p still open").toBe(0);
    expect(q?.bloom?.closes).toBe("own");
    expect(record.notObserved.join("\n")).toContain("Variety q: its last flower was not seen");
    expect(record.notObserved.join("\n")).toContain("Source road: nothing was written of it");
  });

  test("what was seen is not among what was not observed", () => {
    const words = frozen(garden(seen)).notObserved.join("\n");
    expect(words).not.toMatch(/flower was not seen/);
    expect(words).toContain("nobody wrote that it was rogued");
  });
});

describe("levels", () => {
  const caged = [
    entry("p", "06-01", "covered", { cover: "cage" }),
    entry("p", "06-12", "first flower"),
    entry("p", "07-01", "last flower"),
    entry("p", "07-10", "uncovered"),
  ];

  test("a cover that stood meets every level, and the days it stood are kept", () => {
    const record = frozen(garden(caged));
    expect(record).toMatchObject({ standing: "cover", levelMet: "stock" });
    // What speaks for the level met is in the list, also beyond twice what home asks.
    expect(record.levelMetM).toBeGreaterThan(record.requiredM ?? Infinity);
    expect(record.covers).toEqual([
      { cover: "cage", first: day("2027-06-01"), last: day("2027-07-09") },
    ]);
    expect(record.notObserved.join("\n")).toContain("pollinators were let in");
  });

  test("a distance typed by the grower meets no level", () => {
    const plan = garden([]);
    const typed: Plan = {
      ...plan,
      varieties: plan.varieties.map((each) => ({ ...each, isolationM: 1 })),
    };
    expect(frozen(typed).standing).toBe("distance");
    expect(frozen(typed).levelMet).toBeUndefined();
  });
});

test("a lot with its record survives the file word for word", () => {
  const plan = garden([entry("p", "06-12", "first flower")]);
  const isolation = frozen(plan);
  const lot = { id: "lot-1", code: "C-27", variety: "v-p", state: "in stock" as const, isolation };
  const read = readPlan(writePlan({ ...plan, lots: [lot] }), "plan.json", () => true);
  expect(read.ok && read.value.lots).toEqual([lot]);
});
