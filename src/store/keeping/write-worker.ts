/** Writes plans on its own thread; holds what was sent before, so that only changes are sent. */
import type { Plan } from "../../core/model/plan.ts";
import { validText } from "./plan-text.ts";
import { type NumberedPlan, type WriteRequest, withSum } from "./write-on-thread.ts";

let held = new Map<number, object>();

addEventListener("message", ({ data }: MessageEvent<WriteRequest>) => {
  // Whatever goes wrong is answered: the window waits for it.
  hear(data).catch(() => postMessage(null));
});

async function hear(request: WriteRequest): Promise<void> {
  if (request.kind === "things") {
    for (const [number, thing] of request.things) held.set(number, thing);
    return;
  }
  postMessage(await withSum(validText(planOf(request.plan))));
}

/** The plan with the things in their places; what it no longer has is let go. */
function planOf(numbered: NumberedPlan): Plan {
  const kept = new Map<number, object>();
  const thing = (number: number) => {
    const found = held.get(number);
    // A thing that never came must not be left out of the plan unnoticed.
    if (found === undefined) throw new Error(`Thing ${number} of a plan was not sent`);
    kept.set(number, found);
    return found;
  };
  const { rest, picture, layouts } = numbered;
  const plan = {
    ...rest,
    varieties: numbered.varieties.map(thing),
    surroundings: numbered.surroundings.map(thing),
    earlierCrops: numbered.earlierCrops.map(thing),
    ...(picture === null ? {} : { picture: thing(picture) }),
    layouts: layouts.map(({ rest: own, beds, plantings }) => ({
      ...own,
      beds: beds.map(thing),
      plantings: plantings.map(thing),
    })),
  };
  held = kept;
  return plan as unknown as Plan;
}
