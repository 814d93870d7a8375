import { expect, test } from "vitest";
import { clearEverything } from "../../../src/core/clearing/clear-everything.ts";
import { outcomeWords, proofWords } from "../../../src/core/clearing/clearing-words.ts";
import { crowdedGarden } from "../../support/crowded-garden.ts";
import { checkedLayout } from "../../support/arrange-garden.ts";

test("try", () => {
  for (let seed = 1; seed <= 5; seed += 1) {
    const checked = checkedLayout(crowdedGarden(seed));
    const t = performance.now();
    const run = clearEverything(
      checked,
      {
        mostCages: Infinity,
        mostDays: 42,
        staying: new Set(),
        mayWait: new Set(checked.plan.varieties.map((v) => v.id)),
      },
      null,
    );
    let next = run.next();
    while (next.done !== true) next = run.next();
    console.log(
      checked.layout.plantings.length,
      Math.round(performance.now() - t),
      outcomeWords(next.value),
      proofWords(next.value),
      next.value.steps.map((s) => s.changes.map((c) => c.title)),
    );
  }
  expect(1).toBe(1);
});
