/** Writing the record: what is added, corrected and struck out, and that nothing of it is ever lost. */
import { describe, expect, test } from "vitest";
import { applyPatch, difference } from "../../../src/core/edits/patch.ts";
import type { Entry, Plan } from "../../../src/core/model/plan.ts";
import { currentEntries } from "../../../src/core/record/current-entries.ts";
import { fittingFields } from "../../../src/core/record/entry-fields.ts";
import { entryWords } from "../../../src/core/record/entry-words.ts";
import { recordLines } from "../../../src/core/record/record-lines.ts";
import { addEntry, correctEntry, strikeEntry } from "../../../src/core/record/write-entry.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const plan = trialPlan({ p: { at: 0, kind: "common-bean", plants: 40 } });
const signed = (id: string) => ({ id, written: "2027-06-20T07:00:00.000Z", who: "Mara" });
const rogued = { of: "p", on: day("2027-06-20"), what: "rogued" as const, count: 8, note: "pale" };

const add = addEntry(rogued, signed("a"), "A01-1");
const written = add.apply(plan);
const entryOf = (from: Plan, id: string) => from.entries.find((each) => each.id === id) as Entry;

describe("writing the field record", () => {
  test("an entry carries what was seen, who wrote it and when, and is one step that is undone", () => {
    expect(written.entries).toEqual([{ ...rogued, ...signed("a") }]);
    expect(add.title).toBe("A01-1: rogued, 8 plants, 20 Jun");
    const patch = difference(plan, written);
    if (!patch) throw new Error("nothing changed");
    expect(applyPatch(written, patch, "back").entries).toEqual([]);
    expect(written.layouts).toBe(plan.layouts);
  });

  test("an id that is there already is not written twice", () => {
    expect(add.apply(written)).toBe(written);
  });

  test("a correction leaves the entry in the record and holds in its place", () => {
    const fixed = correctEntry(
      entryOf(written, "a"),
      { ...rogued, count: 6 },
      signed("b"),
      "A01-1",
    ).apply(written);
    expect(fixed.entries.map(({ id }) => id)).toEqual(["a", "b"]);
    expect(currentEntries(fixed.entries).map(({ id, count }) => [id, count])).toEqual([["b", 6]]);
    const [line] = recordLines(fixed.entries, "p");
    expect(line?.entry.count).toBe(6);
    expect(line?.before?.count).toBe(8);
  });

  test("what is struck out counts no more, and can still be read with who struck it", () => {
    const struck = strikeEntry(entryOf(written, "a"), signed("c"), "A01-1").apply(written);
    expect(currentEntries(struck.entries)).toEqual([]);
    const [line] = recordLines(struck.entries, "p");
    expect(line?.entry.id).toBe("a");
    expect(line?.struck?.who).toBe("Mara");
  });

  test("struck out after a correction it is the correction that is read", () => {
    const fixed = correctEntry(
      entryOf(written, "a"),
      { ...rogued, count: 6 },
      signed("b"),
      "A01-1",
    ).apply(written);
    const struck = strikeEntry(entryOf(fixed, "b"), signed("c"), "A01-1").apply(fixed);
    expect(currentEntries(struck.entries)).toEqual([]);
    expect(recordLines(struck.entries, "p").map(({ entry }) => entry.count)).toEqual([6]);
  });

  test("values a kind of entry has no use for are left out", () => {
    const more = { count: 3, fruits: 2, grams: 5, cover: "bags" as const, note: "" };
    const fields = { of: "p", on: 0, ...more };
    expect(fittingFields({ ...fields, what: "first flower" })).toEqual({
      of: "p",
      on: 0,
      what: "first flower",
    });
    expect(fittingFields({ ...fields, what: "covered" }).cover).toBe("bags");
    expect(fittingFields({ ...fields, what: "harvested" })).toMatchObject({ count: 3, fruits: 2 });
  });

  test("entries are said in words", () => {
    const words = (more: Partial<Entry> & Pick<Entry, "what">) =>
      entryWords({ id: "x", of: "p", on: 0, ...more });
    expect(words({ what: "rogued", count: 1, note: "pale" })).toBe("rogued, 1 plant: pale");
    expect(words({ what: "covered" })).toBe("covered with a cage");
    expect(words({ what: "looked at" })).toBe("looked at, no flower open");
    expect(words({ what: "hand pollinated", count: 12 })).toBe("hand pollinated, 12 flowers");
    expect(words({ what: "harvested", count: 20, fruits: 31 })).toBe(
      "harvested, 20 plants, 31 fruits",
    );
    expect(words({ what: "done", job: "tape buds" })).toBe("done: tape buds");
  });
});
