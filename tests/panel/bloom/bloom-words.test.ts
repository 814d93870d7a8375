/** Words about heat, days, cold and sowing dates. */
import { describe, expect, test } from "vitest";
import type { StaggerOffer } from "../../../src/core/remedies/stagger.ts";
import type { Job } from "../../../src/core/fieldwork/season-calendar.ts";
import { basisWords } from "../../../src/panel/bloom/basis-words.ts";
import { coldWords } from "../../../src/panel/bloom/cold-words.ts";
import { heatSumText, heatWords, readHeatSum } from "../../../src/panel/bloom/heat-text.ts";
import { jobCounts, jobDay, weekWords } from "../../../src/panel/season/season-jobs.ts";
import {
  inOrderOfUse,
  noOfferWords,
  offerNotes,
  offerTitle,
  offersNote,
} from "../../../src/panel/findings/stagger-words.ts";
import { day } from "../../support/small-plan.ts";

const maize = { method: "modified average", baseC: 10, capC: 30, cDays: [699, 777] } as const;

describe("heat", () => {
  test("is read and shown in C-days or F-days", () => {
    expect(readHeatSum("1258.2 - 1398.6", "F")).toEqual({
      ok: true,
      value: [expect.closeTo(699), expect.closeTo(777)],
    });
    expect(readHeatSum("730", "C")).toEqual({ ok: true, value: [730, 730] });
    expect(heatSumText([699, 777], "F")).toBe("1258-1399");
    expect(heatWords(maize, "F")).toBe("1258-1399 F-days, modified average, base 50 °F, cap 86 °F");
    expect(heatWords({ ...maize, capC: null }, "C")).toBe(
      "699-777 C-days, modified average, base 10 °C, no cap",
    );
  });
  test.each(["", "warm", "900-800", "0", "1-2-3", "99999"])("but not %s", (text) => {
    expect(readHeatSum(text, "C").ok).toBe(false);
  });
});

describe("what a bloom rests on", () => {
  test("names the figure and how far it is to be trusted", () => {
    const heat = {
      by: "heat",
      heat: maize,
      of: "kind",
      source: "corn-growing-degrees",
      basis: "published",
    } as const;
    expect(basisWords(heat, "sown", "C")).toMatch(/^Counted in heat: 699-777 C-days.*Source: /);
    const recalled = {
      by: "days",
      days: [30, 40],
      of: "kind",
      source: "no-such-source",
      basis: "rule of thumb",
    } as const;
    expect(basisWords(recalled, "transplanted", "C")).toBe(
      "Counted in days: 30-40 from setting out. A rule of thumb, not checked: your own days in the variety go before it.",
    );
    const own = { by: "days", days: [60, 60], of: "variety", source: null, basis: "own" } as const;
    expect(basisWords(own, "sown", "C")).toBe(
      "Counted in days: 60 from sowing. The variety's own figure.",
    );
  });

  test("for biennials tells the cold, in numbers where a function is published", () => {
    const winter = { first: day("2026-10-01"), last: day("2027-03-31") };
    expect(coldWords({ kind: "carrot", winter, cDays: 310.4 }, "carrot")).toContain(
      "310 C-days. The first carrots flower after 126, nine in ten after 336",
    );
    expect(coldWords({ kind: "onion", winter, days: 30, share: 0.5 }, "onion")).toContain(
      "30 days that count in full, which meets 50 % of the cold they need",
    );
    expect(coldWords(null, "beet")).toMatch(/^Beet is a biennial/);
  });
});

const offer: StaggerOffer = {
  planting: "p",
  start: day("2027-05-20"),
  startShift: 19,
  bloomShift: 10,
  counted: "heat",
  gapDays: 14,
  guardDays: 14,
  frost: null,
  isBounded: true,
  conflictsAfter: 0,
  edit: { title: "", apply: (plan) => plan },
};

describe("a sowing date", () => {
  test("says honestly how days of sowing shrink", () => {
    expect(offerTitle(offer, "M1-1", true)).toBe("Sow M1-1 19 days later, on 20 May");
    expect(offerNotes(offer)).toEqual([
      "19 days of sowing become 10 days of bloom (53 %), counted in heat.",
      "Then 14 days lie between the two blooms, 14 wanted: no slack.",
      "No conflict is left.",
    ]);
    expect(offersNote([offer])).not.toContain("moves less than sowing");
  });

  test("counted in days warns that it promises too much", () => {
    const inDays: StaggerOffer = { ...offer, counted: "days", startShift: -1, bloomShift: -1 };
    expect(offerTitle(inDays, "B1", false)).toBe("Set out B1 1 day earlier, on 20 May");
    expect(offersNote([offer, inDays])).toContain("moves less than sowing");
  });

  test("without frost trouble goes before one with", () => {
    const cold: StaggerOffer = {
      ...offer,
      startShift: -3,
      frost: "before last frost",
      conflictsAfter: 2,
    };
    expect(inOrderOfUse([cold, offer])).toEqual([offer, cold]);
    expect(offerNotes(cold).join(" ")).toMatch(/last spring frost.*2 conflicts are left/);
  });

  test("that is not there is explained", () => {
    expect(noOfferWords(true, false)).toContain("typed");
    expect(noOfferWords(false, false)).toContain("Neither");
    expect(noOfferWords(false, true)).toContain("that the frosts allow");
  });
});

test("the calendar's days and weeks are named, its jobs counted in their order", () => {
  expect(jobDay(day("2027-05-20"))).toBe("Thu 20 May");
  expect(weekWords({ monday: day("2026-12-28"), label: "2026-W53" })).toBe(
    "Week 53: 28 Dec to 3 Jan 2027",
  );
  const job = (name: Job["job"]): Job => ({
    job: name,
    planting: "p",
    day: 0,
    text: "",
    caution: null,
  });
  expect(jobCounts([job("seed ripe"), job("sow"), job("seed ripe")])).toEqual([
    { name: "sow", count: 1 },
    { name: "seed ripe", count: 2 },
  ]);
});
