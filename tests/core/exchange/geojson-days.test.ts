/** Days on the ground through GeoJSON and back: sown under glass, set out, cleared. */
import { describe, expect, test } from "vitest";
import { bloomBasis } from "../../../src/core/calendar/bloom-window.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { planGeojson } from "../../../src/core/exchange/plan-geojson.ts";
import { readGeojson } from "../../../src/core/exchange/read-geojson.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { book, day, trialPlan } from "../../support/trial-plan.ts";

const start = {
  method: "transplanted" as const,
  date: day("2027-05-20"),
  sownUnderGlass: day("2027-04-08"),
};
const site = { name: "Garden", upBearingDeg: 0, position: { longitude: 8, latitude: 50 } };

const weeks = { first: day("2027-06-20"), last: day("2027-07-20") };

/** What a pair of tomatoes of two varieties comes to after a journey through a file. */
function readAgain(
  plan: ReturnType<typeof trialPlan>,
  change = (properties: Record<string, unknown>) => properties,
) {
  const written = JSON.parse(planGeojson(checkLayout(plan, "layout-1"))) as {
    features: { properties: Record<string, unknown> }[];
  };
  for (const feature of written.features) feature.properties = change(feature.properties);
  const read = readGeojson(written, "days.geojson", book);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

/** Findings of pairs cleared by time or not, as words of kind and severity. */
function timeFindings(plan: ReturnType<typeof trialPlan>): readonly string[] {
  const { result } = checkLayout(plan, plan.layouts[0]?.id ?? "");
  return result.findings.map(({ check, severity }) => `${severity} ${check}`).toSorted();
}

describe("a forecast read back from a file stays a forecast", () => {
  // Sown 100 days apart: only time can clear them, on a bloom that the kind's figures give.
  const plan = trialPlan(
    {
      p: { at: 0, kind: "pea", bloom: null, start: { method: "sown", date: day("2027-03-01") } },
      q: { at: 2, kind: "pea", bloom: null, start: { method: "sown", date: day("2027-07-20") } },
    },
    [],
    { site },
  );

  test("with what it rests on, and the same findings", () => {
    const stands = checkLayout(plan, "layout-1").result.standById;
    const bloom = stands.get("p")?.bloom;
    if (!bloom) throw new Error("the pea has no bloom");
    const again = readAgain(plan);
    expect(again.layouts[0]?.plantings[0]?.bloom).toEqual({
      ...bloom.outer,
      basis: bloomBasis(bloom),
    });
    expect(["published", "rule of thumb"]).toContain(bloomBasis(bloom));
    expect(timeFindings(again)).toEqual(timeFindings(plan));
    expect(timeFindings(again)).not.toEqual([]);
  });

  test("and an older file, which does not say, is not trusted with more", () => {
    const again = readAgain(plan, (properties) => ({ ...properties, bloomBasis: null }));
    expect(again.layouts[0]?.plantings[0]?.bloom).toMatchObject({ basis: "rule of thumb" });
  });

  test("while typed days come back as typed, and survive a plan file", () => {
    const typed = trialPlan({ p: { at: 0, kind: "pea", start, bloom: weeks } }, [], { site });
    expect(readAgain(typed).layouts[0]?.plantings[0]?.bloom).toEqual(weeks);
    const kept = readPlan(
      writePlan(readAgain(plan)),
      "again.json",
      (kind) => book.kind(kind) !== undefined,
    );
    if (!kept.ok) throw new Error(JSON.stringify(kept.problems));
    expect(kept.value.layouts[0]?.plantings[0]?.bloom).toMatchObject({
      basis: expect.stringMatching(/published|rule of thumb/),
    });
  });
});

test("all three come back as they went out", () => {
  const plan = trialPlan(
    { p: { at: 0, kind: "tomato", start, end: day("2027-10-10") }, q: { at: 9, kind: "pea" } },
    [],
    { site },
  );
  const text = planGeojson(checkLayout(plan, "layout-1"));
  expect(text).toContain("2027-10-10");
  const read = readGeojson(JSON.parse(text), "days.geojson", book);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const [p, q] = read.value.layouts[0]?.plantings ?? [];
  expect(p).toMatchObject({ start, end: day("2027-10-10") });
  expect(q).not.toHaveProperty("end");
});
