/**
 * Seasons tried, against a reckoning of its own: sums of warmth by a plain loop over the engine's
 * calendar. Temperatures: Seattle, 2012 to 2015, daily records of NOAA (public domain), as the
 * package vega-datasets 2.7.0 carries them; and invented years for what four cannot show.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { check } from "../../../src/cli/check.ts";
import { readDailyTemperatures } from "../../../src/core/calendar/read-daily-temperatures.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { type SeasonsTried, seasonsTried } from "../../../src/core/crossing-share/seasons-tried.ts";
import { seasonsWords } from "../../../src/core/crossing-share/seasons-words.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { LIMITS } from "../../../src/core/model/limits.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Climate, Plan } from "../../../src/core/model/plan.ts";
import { a4, scenes } from "../../support/printed.ts";
import { bloom, day, trialPlan } from "../../support/trial-plan.ts";

const text = readFileSync(
  new URL("../../fixtures/climate/seattle-2012-2015.csv", import.meta.url),
  "utf8",
);

type Days = NonNullable<Climate["days"]>;

function recordOf(csv: string): Days {
  const read = readDailyTemperatures(csv, "record.csv", "C");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const seattle = recordOf(text);

/** One sunflower counted in heat of its own, another with dates of its own, two metres apart. */
interface Two {
  readonly sown: string;
  readonly least: number;
  readonly most: number;
  readonly length: number;
  /** First and last day of the other, month and day. */
  readonly other: readonly [string, string];
}

function planOf({ sown, least, most, length, other }: Two, days: Days): Plan {
  return trialPlan(
    {
      heat: {
        at: 0,
        kind: "sunflower",
        bloom: null,
        start: { method: "sown", date: day(`2027-${sown}`) },
        variety: {
          heatToFlower: {
            method: "simple average",
            baseC: 8,
            capC: null,
            cDays: [least, most],
          },
          bloomDays: [length, length],
        },
      },
      dated: { at: 3, kind: "sunflower", bloom: bloom(other[0], other[1]) },
    },
    [],
    { site: { name: "", upBearingDeg: 0, climate: { days } } },
  );
}

function triedOf(plan: Plan): SeasonsTried | null {
  const { result } = checkLayout(plan, "layout-1");
  const pair = result.pairs.find(({ seedParent }) => seedParent === "dated");
  const parent = result.standById.get("dated");
  const source = result.standById.get("heat");
  if (!pair || !parent || !source) throw new Error("no pair");
  return seasonsTried(pair, parent, source);
}

const DAY_MS = 86_400_000;
const utc = (iso: string) => Date.parse(`${iso}T00:00:00Z`);

/** `[overlap, gap]` in one year, by nothing but the text of the record. */
function byHand(two: Two, year: number, csv: string): readonly [number, number] {
  const warmth = new Map(
    csv
      .trim()
      .split("\n")
      .slice(1)
      .map((line) => {
        const [date = "", low = "", high = ""] = line.split(",");
        return [utc(date), Math.max(0, (Number(low) + Number(high)) / 2 - 8)] as const;
      }),
  );
  const dayOf = (sum: number) => {
    let left = sum;
    for (let at = utc(`${year}-${two.sown}`); ; at += DAY_MS) {
      left -= warmth.get(at) ?? Number.NaN;
      if (!(left > 1e-9)) return at;
    }
  };
  const [first, last] = [dayOf(two.least), dayOf(two.most) + (two.length - 1) * DAY_MS];
  const [opens, ends] = [utc(`${year}-${two.other[0]}`), utc(`${year}-${two.other[1]}`)];
  let overlap = 0;
  for (let at = opens; at <= ends; at += DAY_MS) if (first <= at && at <= last) overlap += 1;
  if (overlap > 0) return [overlap, 0];
  return [0, Math.round(Math.max(first - ends, opens - last) / DAY_MS) - 1];
}

describe("the years of a public record", () => {
  test("are told as a loop over the same days tells them", () => {
    const day2 = (from: number, to: number) =>
      fc.integer({ min: from, max: to }).map((each) => String(each).padStart(2, "0"));
    const two = fc.record({
      sown: day2(1, 30).map((each) => `05-${each}`),
      least: fc.integer({ min: 400, max: 520 }),
      more: fc.integer({ min: 0, max: 60 }),
      length: fc.integer({ min: 5, max: 20 }),
      opens: day2(1, 31),
    });
    let compared = 0;
    fc.assert(
      fc.property(two, ({ sown, least, more, length, opens }) => {
        const garden: Two = {
          sown,
          // The record is in tenths, so its sums are in twentieths: between them no tie.
          least: least + 0.02,
          most: least + more + 0.02,
          length,
          other: [`08-${opens}`, "09-20"],
        };
        const seasons = triedOf(planOf(garden, seattle));
        if (!seasons) return;
        compared += 1;
        expect(seasons.noBloom).toEqual([]);
        expect(seasons.leftOut).toEqual([]);
        expect(seasons.tried.map(({ year }) => year)).toEqual([2012, 2013, 2014, 2015]);
        for (const { year, overlapDays, gapDays } of seasons.tried) {
          expect([year, overlapDays, gapDays]).toEqual([year, ...byHand(garden, year, text)]);
        }
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(15);
  });

  const garden: Two = {
    sown: "05-01",
    least: 500,
    most: 520,
    length: 14,
    other: ["08-10", "09-10"],
  };

  test("of which days are missing are left out, and said", () => {
    const gappy = text.replaceAll(/^2014-06-(\d\d),.*$/gm, "2014-06-$1,,");
    const seasons = triedOf(planOf(garden, recordOf(gappy)));
    expect(seasons?.leftOut).toEqual([2014]);
    expect(seasons?.tried.map(({ year }) => year)).toEqual([2012, 2013, 2015]);
    expect(seasonsWords(seasons as SeasonsTried)).toContain(
      "1 year left out, as days are missing (2014)",
    );
  });

  test("say nothing where both are dated, or where a record is of one year", () => {
    const oneYear = recordOf(
      text
        .split("\n")
        .filter((line) => /^(date|2012)/.test(line))
        .join("\n"),
    );
    expect(triedOf(planOf(garden, oneYear))).toBeNull();
    const dated = trialPlan(
      {
        heat: { at: 0, kind: "sunflower", bloom: bloom("06-01", "07-01") },
        dated: { at: 3, kind: "sunflower", bloom: bloom("08-10", "09-10") },
      },
      [],
      { site: { name: "", upBearingDeg: 0, climate: { days: seattle } } },
    );
    expect(triedOf(dated)).toBeNull();
  });
});

/** Forty invented years, each of one temperature in May to August: 20 C but for the years named. */
function fortyYears(warm: Readonly<Record<number, number>>): Days {
  const first = day("1987-01-01");
  const last = day("2026-12-31");
  const of = (each: number) => {
    const [year = "", month = ""] = isoFromDay(each).split("-");
    return Number(month) >= 5 && Number(month) <= 8 ? (warm[Number(year)] ?? 20) : 6;
  };
  const values = Array.from({ length: last - first + 1 }, (_, index) => of(first + index));
  return { first, minC: values, maxC: values };
}

describe("forty years", () => {
  // 1,200 C-days above 8 at 12 a day: 100 days from 1 May, so 8 August; other dated to 31 July.
  const garden: Two = {
    sown: "05-01",
    least: 1200,
    most: 1200,
    length: 7,
    other: ["07-01", "07-31"],
  };

  test("are the most a plan takes, and the words name how many and the worst", () => {
    const days = fortyYears({ 1998: 24, 2003: 22, 2019: 21 });
    expect(days.minC.length).toBeLessThanOrEqual(LIMITS.recordedDays);
    const seasons = triedOf(planOf(garden, days));
    // 24 C: 16 a day, the 75th day, 14 July, to 20 July: 7 days. 22 C: the 86th, 25 July, 7 days.
    // 21 C: the 93rd, 1 August: none between.
    expect(seasonsWords(seasons as SeasonsTried)).toBe(
      "overlapped in 2 of 40 years, worst 1998 by 7 days; less than the 7 days wanted lay between in 1 more",
    );
  });

  test("in which heat never came are told as such", () => {
    const seasons = triedOf(planOf(garden, fortyYears({ 1996: 9 })));
    expect(seasons?.noBloom).toEqual([1996]);
    expect(seasonsWords(seasons as SeasonsTried)).toMatch(
      /^overlapped in none of 39 years, nearest \d{4} with 7 days between; in 1 year \(1996\) one of the two did not flower/,
    );
  });

  test("a longer record is refused with the number of days", () => {
    const lines = ["date,min,max", "1980-01-01,1,2", "2026-12-31,1,2"].join("\n");
    const read = readDailyTemperatures(lines, "long.csv", "C");
    expect(read).toMatchObject({ ok: false });
    if (!read.ok) expect(read.problems[0]?.expected).toContain("forty years");
  });
});

describe("are shown", () => {
  const garden: Two = {
    sown: "05-01",
    least: 500.02,
    most: 520.02,
    length: 14,
    other: ["08-10", "09-10"],
  };
  const checked = checkLayout(planOf(garden, seattle), "layout-1");
  const words = "overlapped in none of 4 years, nearest 2012 with";

  test("by the command line, where years are asked for, and only there", async () => {
    const folder = mkdtempSync(join(tmpdir(), "years-"));
    const file = join(folder, "plan.json");
    writeFileSync(file, writePlan(checked.plan));
    const texts: string[] = [];
    const write = vi.spyOn(process.stdout, "write").mockImplementation((piece) => {
      texts.push(String(piece));
      return true;
    });
    const said = async (...options: readonly string[]) => {
      texts.length = 0;
      await check([...options, file]);
      return texts.join("");
    };
    try {
      const inWords = await said("--years");
      expect(inWords).toContain("sown as planned, on the days recorded from 2012 to 2015");
      expect(inWords).toContain(words);
      expect(await said()).not.toContain("overlapped in");
      const report = JSON.parse(await said("--years", "--json")) as {
        pairs: readonly { seasons: SeasonsTried | null }[];
      };
      expect(report.pairs).toHaveLength(2);
      for (const { seasons } of report.pairs) {
        expect(seasons?.tried.map(({ year }) => year)).toEqual([2012, 2013, 2014, 2015]);
        for (const { year, overlapDays, gapDays } of seasons?.tried ?? []) {
          expect([overlapDays, gapDays]).toEqual(byHand(garden, year, text));
        }
      }
      expect(await said("--json")).not.toContain('"seasons"');
    } finally {
      write.mockRestore();
      rmSync(folder, { recursive: true });
    }
  });

  test("in the isolation report", () => {
    const printed = scenes(checked, { ...a4, companions: ["isolation"] })
      .flatMap((page) => page.marks)
      .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
      .join(" ");
    expect(printed).toContain("Years tried: overlapped in none of 4");
  });
});
