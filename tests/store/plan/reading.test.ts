/** The plan read as grown in the store: the same as judged apart, through drags, edits and undo. */
import { beforeEach, describe, expect, test } from "vitest";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import type { Entry } from "../../../src/core/model/plan.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { bloom, day, trialPlan } from "../../support/trial-plan.ts";

const entry = (id: string, of: string, on: string, what: Entry["what"]): Entry => ({
  id,
  of,
  on: day(`2027-${on}`),
  what,
});
const ON = day("2027-06-25");
const plan = trialPlan(
  {
    p: { at: 0, kind: "common-bean", bloom: bloom("06-10", "06-30") },
    q: { at: 6, kind: "common-bean", bloom: bloom("08-01", "08-20") },
    r: { at: 12, kind: "common-bean", bloom: bloom("08-01", "08-20"), cover: "cage" },
  },
  [],
  { entries: [entry("1", "q", "06-20", "first flower"), entry("2", "r", "06-21", "covered")] },
);

const store = () => usePlanStore.getState();
const read = (on = ON) => store().read({ on, judge: checkAsGrown });
const moved = (x: number) => changePlantings("layout-1", ["p"], { outline: squareAt(x) }, "Move P");
const squareAt = (x: number) =>
  ({ shape: "rectangle", x: x + 0.5, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 }) as const;

/** What is on screen equals the shown plan judged apart, and the kept one as planned. */
function expectFresh(on: number | null): void {
  const { shown, kept, grown, plan: committed, result, layoutId } = store();
  const fresh = on === null ? checkLayout(shown, layoutId) : checkAsGrown(shown, layoutId, on);
  expect(result.findings).toEqual(fresh.result.findings);
  expect(result.pairs).toEqual(fresh.result.pairs);
  expect(kept.result.findings).toEqual(checkLayout(committed, layoutId).result.findings);
  expect(grown?.grownOn).toBe(on ?? undefined);
  if (on !== null) {
    const apart = checkAsGrown(committed, layoutId, on).result;
    expect(grown?.result.findings).toEqual(apart.findings);
  }
}

beforeEach(() => store().openPlan(plan));

describe("as grown", () => {
  test("findings follow, and what is drawn and saved stays the plan", () => {
    const before = writePlan(store().plan);
    read();
    expectFresh(ON);
    expect(store().result.findings).not.toEqual(store().kept.result.findings);
    expect(store().shown).toBe(plan);
    expect(writePlan(store().plan)).toBe(before);
    store().read(null);
    expectFresh(null);
  });

  test("another day is another reading", () => {
    read(day("2027-06-19"));
    expectFresh(day("2027-06-19"));
    read(ON);
    expectFresh(ON);
  });

  test("each frame of a drag is judged with the record, and so is the drop", () => {
    read();
    for (const x of [1, 40, 3, 200]) {
      store().preview(moved(x));
      expectFresh(ON);
    }
    const drop = moved(200);
    store().preview(drop);
    store().commit(drop);
    expectFresh(ON);
    store().cancelPreview();
    expectFresh(ON);
  });

  test("a drag put back leaves nothing", () => {
    read();
    const before = store().result.findings;
    store().preview(moved(200));
    store().cancelPreview();
    expect(store().result.findings).toEqual(before);
    expectFresh(ON);
  });

  test("an entry written down, undone and done again is followed", () => {
    read();
    const written = [...plan.entries, entry("3", "q", "06-22", "last flower")];
    store().commit({ title: "Write down", apply: (old) => ({ ...old, entries: written }) });
    expectFresh(ON);
    store().undo();
    expectFresh(ON);
    store().redo();
    expectFresh(ON);
  });

  test("fetching a check checks both readings anew, also while something is tried", () => {
    read();
    store().preview(moved(40), "trial");
    store().checkAnew();
    expectFresh(ON);
    store().cancelPreview();
    expectFresh(ON);
  });

  test("another plan is read as planned", () => {
    read();
    store().openPlan(plan);
    expect(store().reading).toBeNull();
    expectFresh(null);
  });
});
