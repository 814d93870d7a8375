/** What is offered first to be written down at a plot. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import type { Entry } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { likelyEntries } from "../../../src/core/record/likely-entries.ts";
import { plotFacts } from "../../../src/core/record/plot-facts.ts";
import { plotRecord } from "../../../src/core/record/plot-record.ts";
import { type TrialTraits, bloom, day, source, trialPlan } from "../../support/trial-plan.ts";

const on = (iso: string) => day(`2027-${iso}`);
let count = 0;
const entry = (iso: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id: `e-${(count += 1)}`,
  of: "p",
  on: on(iso),
  what,
  ...more,
});

function firstOf(
  traits: TrialTraits,
  entries: readonly Entry[],
  iso: string,
  kind = "common-bean",
): readonly string[] {
  const plan = trialPlan({ p: { at: 0, kind, ...traits } });
  const stand = checkLayout(plan, "layout-1").result.standById.get("p");
  if (!stand) throw new Error("no stand");
  return likelyEntries(stand, plotRecord(entries), on(iso)).first;
}

const sown = { method: "sown", date: on("05-20") } as const;
const raised = { method: "transplanted", date: on("05-20") } as const;

describe("what is offered first", () => {
  test("before it is sown: sowing, and no flower", () => {
    expect(firstOf({ start: sown }, [], "05-01")[0]).toBe("sown");
    expect(firstOf({ start: raised }, [], "05-01")[0]).toBe("set out");
    expect(firstOf({ start: sown }, [], "05-01")).not.toContain("first flower");
  });

  test("while it grows: up, first flower or none seen, roguing", () => {
    const first = firstOf({ start: sown }, [entry("05-20", "sown")], "06-10");
    expect(first).toEqual(
      expect.arrayContaining(["first flower", "looked at", "emerged", "rogued"]),
    );
    expect(first).not.toContain("sown");
  });

  test("what stood over winter is not sown or set out again", () => {
    const stoodInto = on("01-01");
    for (const start of [
      { method: "sown", date: day("2026-06-18") } as const,
      { method: "transplanted", date: day("2026-08-01") } as const,
      undefined,
    ]) {
      const first = firstOf({ ...(start ? { start } : {}), stoodInto }, [], "04-10", "kale");
      expect(first).toContain("first flower");
      expect(first).not.toContain("sown");
      expect(first).not.toContain("set out");
    }
  });

  test("the cover that is planned and does not stand comes before the flowers", () => {
    expect(firstOf({ start: sown, cover: "cage" }, [], "06-10")[0]).toBe("covered");
    const stands = [entry("06-01", "covered", { cover: "cage" })];
    expect(firstOf({ start: sown, cover: "cage" }, stands, "06-10")).not.toContain("covered");
  });

  test("what is to be cut is cut first; what flowers is past cutting", () => {
    expect(firstOf({ start: sown, flowering: "cut" }, [], "06-10")[0]).toBe("cut before bloom");
    const seen = [entry("06-08", "first flower")];
    expect(firstOf({ start: sown, flowering: "cut" }, seen, "06-10")).not.toContain(
      "cut before bloom",
    );
  });

  test("in flower: its last flower, hands and insects where the cover asks for them, and harvest", () => {
    const open = [entry("06-08", "first flower")];
    expect(firstOf({ start: sown }, open, "06-10")).toEqual(
      expect.arrayContaining(["last flower", "rogued", "harvested"]),
    );
    expect(firstOf({ cover: "hand" }, open, "06-10", "summer-squash")).toContain("hand pollinated");
    const caged = [...open, entry("06-01", "covered", { cover: "cage" })];
    expect(firstOf({ cover: "cage" }, caged, "06-10")).toContain("pollinators let in");
  });

  test("roots in their first year are harvested or lost before they are looked at for flowers", () => {
    const first = firstOf({ start: sown, flowering: "first-year" }, [], "07-06", "beet");
    expect(first.indexOf("harvested")).toBeLessThan(first.indexOf("first flower"));
    expect(first).toContain("first flower");
  });

  test("after bloom: harvest, then cleaned seed", () => {
    const over = [entry("06-08", "first flower"), entry("07-08", "last flower")];
    expect(firstOf({}, over, "08-10")[0]).toBe("harvested");
    expect(firstOf({}, [...over, entry("09-01", "harvested", { count: 9 })], "09-10")).toContain(
      "cleaned",
    );
  });

  test("a neighbour's is looked at and asked about, never sown or harvested by us", () => {
    const plan = trialPlan({ p: { at: 0, kind: "common-bean" } }, [
      source("n", "common-bean", { shape: "point", x: 20, y: 0 }),
    ]);
    const stand = checkLayout(plan, "layout-1").result.standById.get("n");
    if (!stand) throw new Error("no stand");
    const { first, more } = likelyEntries(stand, plotRecord([]), on("06-10"));
    expect(first.slice(0, 3)).toEqual(["first flower", "looked at", "neighbour asked"]);
    expect([...first, ...more]).not.toContain("harvested");
    expect([...first, ...more]).not.toContain("sown");
  });
});

describe("what stands here", () => {
  const plan = trialPlan(
    {
      p: {
        at: 0,
        kind: "common-bean",
        plants: 40,
        rows: 2,
        start: sown,
        bloom: bloom("07-01", "07-20"),
      },
      q: { at: 6, kind: "common-bean", bloom: bloom("07-05", "07-25") },
    },
    [],
    {
      entries: [
        entry("05-25", "sown"),
        entry("06-20", "first flower"),
        entry("06-25", "rogued", { count: 8 }),
      ],
    },
  );
  const facts = (iso: string) => plotFacts(checkAsGrown(plan, "layout-1", on(iso)), "p", on(iso));

  test("is told as seen until that day", () => {
    expect(facts("06-25")).toMatchObject({
      variety: "Variety p",
      isForSeed: true,
      plants: 32,
      rows: 2,
      start: { method: "sown", on: on("05-25"), isSeen: true },
    });
    expect(facts("06-25")?.bloom?.opens).toBe("seen");
    expect(facts("06-01")?.plants).toBe(40);
    expect(facts("06-01")?.bloom?.opens).not.toBe("seen");
  });

  test("with the worst that the checks say of it, and nothing for what is not there", () => {
    expect(facts("06-25")?.worst?.severity).toBe("conflict");
    expect(plotFacts(checkAsGrown(plan, "layout-1", 0), "nowhere", 0)).toBeNull();
  });
});
