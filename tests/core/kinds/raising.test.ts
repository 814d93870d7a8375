/**
 * Days offered for plants raised under glass. Weeks are those of a published chart (Better Homes
 * and Gardens: tomato 5 to 7, cabbage 5 to 7, cucumber 4, onion 12); hardy plants go out about three
 * weeks before the last frost (News and Record, Greensboro).
 */
import { describe, expect, test } from "vitest";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { raisedKinds, raisingCited, weeksUnderGlass } from "../../../src/core/kinds/raising.ts";
import { raisingOffer } from "../../../src/core/kinds/raising-days.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { book, day, trialPlan } from "../../support/trial-plan.ts";

function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}
const frost = day("2027-05-10");

describe("days offered", () => {
  test("every kind named is one, with a source or as recalled", () => {
    for (const id of raisedKinds) {
      expect([id, book.kind(id)?.id]).toEqual([id, id]);
      const { source, value } = weeksUnderGlass({ id }) ?? { source: "", value: [0, 0] };
      expect(["seedling-weeks", "memory"]).toContain(source);
      expect(value[0]).toBeLessThanOrEqual(value[1]);
    }
    expect(raisingCited("seedling-weeks")).toContain("Better Homes and Gardens");
    expect(raisingCited("memory")).toBe("rule of thumb without a published source");
  });

  test("tender plants go out a week after the last spring frost, hardy ones three before it", () => {
    expect(raisingOffer({}, kindOf("tomato"), frost).setOut?.day).toBe(day("2027-05-17"));
    expect(raisingOffer({}, kindOf("cabbage"), frost).setOut?.day).toBe(day("2027-04-19"));
    expect(raisingOffer({}, kindOf("cabbage"), undefined)).toEqual({
      setOut: null,
      underGlass: null,
    });
  });

  test("sowing is counted back from the day it is set out, else from the one offered", () => {
    // 5 to 7 weeks: six, 42 days.
    expect(raisingOffer({}, kindOf("tomato"), frost).underGlass?.day).toBe(day("2027-04-05"));
    const start = { method: "transplanted", date: day("2027-06-01") } as const;
    expect(raisingOffer({ start }, kindOf("tomato"), frost).underGlass?.day).toBe(
      day("2027-04-20"),
    );
    expect(raisingOffer({ start }, kindOf("cucumber"), undefined).underGlass?.day).toBe(
      day("2027-05-04"),
    );
    expect(raisingOffer({ start }, kindOf("onion"), undefined).underGlass?.day).toBe(
      day("2027-03-09"),
    );
    expect(
      raisingOffer({ start }, kindOf("carrot"), frost).underGlass,
      "no weeks known",
    ).toBeNull();
  });
});

describe("the season's jobs", () => {
  const jobs = (more: object) =>
    seasonJobs(
      checkLayout(trialPlan({ p: { at: 0, kind: "tomato", bloom: null, ...more } }), "layout-1"),
    ).map(({ job, day: on, text, caution }) => ({ job, on, text, caution }));

  test("hold sowing under glass on its own day beside setting out", () => {
    const start = {
      method: "transplanted",
      date: day("2027-05-20"),
      sownUnderGlass: day("2027-04-01"),
    };
    expect(jobs({ start })).toMatchObject([
      { job: "sow under glass", on: day("2027-04-01") },
      { job: "set out", on: day("2027-05-20") },
      ...jobs({ start }).slice(2),
    ]);
    expect(jobs({ start })[0]?.text).toContain("to set out on 20 May");
  });

  test("hold clearing, with a word of care where it is to come before the first flower", () => {
    const start = { method: "transplanted", date: day("2027-05-20") };
    const late = jobs({ start, end: day("2027-10-20") }).find(({ job }) => job === "clear");
    expect(late).toMatchObject({ on: day("2027-10-20"), caution: null });
    const early = jobs({ start, purpose: "food", end: day("2027-05-25") });
    expect(early.find(({ job }) => job === "clear")?.caution).toContain("sooner");
    expect(early.map(({ job }) => job)).not.toContain("first flower");
  });
});
