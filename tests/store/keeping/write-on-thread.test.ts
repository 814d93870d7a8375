/** Plans of many corners are written on a thread: the same text, sent in pieces, only what changed. */
import { afterEach, expect, test, vi } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { checksum } from "../../../src/store/keeping/checksum.ts";
import { validText } from "../../../src/store/keeping/plan-text.ts";
import type { WriteRequest } from "../../../src/store/keeping/write-on-thread.ts";
import { littlePlan } from "../../support/little-plan.ts";

/** Twenty outlines of 2,000 corners, none of which crosses itself. */
function heavyPlan(): Plan {
  const [layout] = littlePlan.layouts;
  if (!layout) throw new Error("no layout");
  const beds = Array.from({ length: 20 }, (_, bed) => ({
    id: `round-${bed}`,
    code: `R${bed}`,
    outline: {
      shape: "polygon" as const,
      corners: Array.from({ length: 2000 }, (_corner, index): [number, number] => {
        const angle = (index / 2000) * 2 * Math.PI;
        return [bed * 20 + 5 * Math.cos(angle), 5 * Math.sin(angle)];
      }),
    },
  }));
  return { ...littlePlan, layouts: [{ ...layout, beds: [...layout.beds, ...beds] }] };
}

/** The thread's own code, with what is sent copied as a browser copies it. */
async function layThread(isBroken = false) {
  const sent: WriteRequest[] = [];
  const threadScope = new EventTarget();
  class Thread extends EventTarget {
    constructor() {
      super();
      vi.stubGlobal("postMessage", (data: unknown) => {
        this.dispatchEvent(new MessageEvent("message", { data: structuredClone(data) }));
      });
    }
    postMessage(request: WriteRequest): void {
      sent.push(request);
      if (isBroken) this.dispatchEvent(new Event("error"));
      else {
        threadScope.dispatchEvent(new MessageEvent("message", { data: structuredClone(request) }));
      }
    }
    terminate(): void {
      sent.length = 0;
    }
  }
  vi.resetModules();
  vi.stubGlobal("Worker", Thread);
  vi.stubGlobal("addEventListener", threadScope.addEventListener.bind(threadScope));
  await import("../../../src/store/keeping/write-worker.ts");
  const { writtenPlan } = await import("../../../src/store/keeping/write-on-thread.ts");
  return { sent, writtenPlan };
}

const things = (sent: readonly WriteRequest[]) =>
  sent.map((request) => (request.kind === "things" ? request.things.length : -1));

async function expected(plan: Plan) {
  const written = validText(plan);
  if (!written.ok) throw new Error(written.fault);
  return { ...written, sum: await checksum(written.text) };
}

afterEach(() => vi.unstubAllGlobals());

test("the text is the same, sent in pieces the first time and by changes from then on", async () => {
  const { sent, writtenPlan } = await layThread();
  const plan = heavyPlan();
  expect(await writtenPlan(plan)).toEqual(await expected(plan));
  // No piece holds more than three outlines: each holds the window for some milliseconds.
  const outlines = sent.map((request) => JSON.stringify(request).split('"polygon"').length - 1);
  expect(outlines.reduce((sum, count) => sum + count, 0)).toBe(20);
  expect(Math.max(...outlines)).toBeLessThanOrEqual(3);
  sent.length = 0;
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");
  const beds = layout.beds.with(5, { ...layout.beds[5], code: "New" } as (typeof layout.beds)[0]);
  const next = { ...plan, title: "Next", layouts: [{ ...layout, beds: beds.slice(0, 12) }] };
  expect(await writtenPlan(next)).toEqual(await expected(next));
  expect(things(sent)).toEqual([1, -1]);
  // What was let go is sent anew, and two at once take turns.
  const both = await Promise.all([writtenPlan(plan), writtenPlan(next)]);
  expect(both).toEqual([await expected(plan), await expected(next)]);
});

test("a small plan needs no thread, a fault is told, and a thread that falls over is done without", async () => {
  const { sent, writtenPlan } = await layThread();
  expect(await writtenPlan(littlePlan)).toEqual(await expected(littlePlan));
  expect(sent).toEqual([]);
  const faulty = { ...heavyPlan(), chosenLayout: "nowhere" };
  expect(await writtenPlan(faulty)).toMatchObject({ ok: false, fault: /nowhere/ });
  const broken = await layThread(true);
  const plan = heavyPlan();
  expect(await broken.writtenPlan(plan)).toEqual(await expected(plan));
});
