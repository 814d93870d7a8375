/** The band of every lot on a large shelf, and what to renew of it, against one frame of a screen. */
import { expect, test } from "vitest";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { estimateOf } from "../../src/core/lots/estimate.ts";
import { renewals } from "../../src/core/lots/renewal.ts";
import { reportRow } from "./report.ts";
import { SHELF_LOTS, shelfPlan, today } from "./shelf.ts";
import { bestMs } from "./timing.ts";

const FRAME_MS = 1000 / 60;
const book = cropBook();

test("the bands of 5,000 lots within one frame", () => {
  const plan = shelfPlan();
  const kindOf = new Map(plan.varieties.map(({ id, kind }) => [id, book.kind(kind)]));
  // Each run gets lots of its own: what is known of a lot is kept with it.
  const { ms } = bestMs(9, () =>
    plan.lots.map((lot) => {
      const kind = kindOf.get(lot.variety);
      return kind ? estimateOf({ ...lot }, kind, plan.storagePlaces)?.at(today) : undefined;
    }),
  );
  const { ms: renewMs, made } = bestMs(9, () => renewals({ ...plan }, book, today));
  expect(made.length).toBeGreaterThan(0);
  const size = `${SHELF_LOTS.toLocaleString("en")} lots`;
  const section = "Seed lots";
  reportRow({
    section,
    size,
    what: "bands of all, as a part of one frame of a 60 Hz screen",
    value: ms / FRAME_MS,
    unit: "x",
    budget: "at most 1 x",
    isMet: ms <= FRAME_MS,
  });
  reportRow({
    section,
    size,
    what: "what to renew, as a part of one frame",
    value: renewMs / FRAME_MS,
    unit: "x",
    budget: "at most 1 x",
    isMet: renewMs <= FRAME_MS,
  });
});
