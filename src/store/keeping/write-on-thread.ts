/**
 * The text of a plan for the storage, looked over by the reader that opens files. A plan of many
 * corners takes seconds for that, so it is done on a thread of its own. Only what changed since the
 * last time is sent there, in pieces with pauses between, so that the window is never held for long.
 */
import type { Plan } from "../../core/model/plan.ts";
import { checksum } from "./checksum.ts";
import { type ValidText, validText } from "./plan-text.ts";

/** A plan's text with its sum, or why it would not open again. */
export type WrittenPlan =
  | { readonly ok: true; readonly text: string; readonly sum: string }
  | { readonly ok: false; readonly fault: string };

/** What is sent to the thread: things first, then the plan with numbers in their places. */
export type WriteRequest =
  | { readonly kind: "things"; readonly things: readonly (readonly [number, object])[] }
  | { readonly kind: "write"; readonly plan: NumberedPlan };

/** A plan whose varieties, drawn things and picture are numbers of things sent before. */
export interface NumberedPlan {
  readonly rest: object;
  readonly varieties: readonly number[];
  readonly surroundings: readonly number[];
  readonly earlierCrops: readonly number[];
  readonly picture: number | null;
  readonly layouts: readonly {
    readonly rest: object;
    readonly beds: readonly number[];
    readonly plantings: readonly number[];
  }[];
}

/** Corners, or as much else, that are written at once without a thread. */
const FEW_CORNERS = 4000;
/** Corners sent in one piece. */
const PIECE_CORNERS = 6000;
/** Corners that a thing without any is taken for. */
const THING_CORNERS = 8;

interface Writer {
  readonly worker: Worker;
  /** Numbers of the things the thread holds. */
  held: Map<object, number>;
  next: number;
}

let writer: Writer | null = null;
let turn: Promise<unknown> = Promise.resolve();

/** The plan as it is stored. Never rejects for what is wrong with the plan. */
export async function writtenPlan(plan: Plan): Promise<WrittenPlan> {
  if (typeof Worker === "undefined" || cornersIn(plan) <= FEW_CORNERS) {
    return withSum(validText(plan));
  }
  const work = turn.then(() => writeApart(plan));
  turn = work.catch(() => undefined);
  try {
    return await work;
  } catch {
    // A thread that cannot be had or fell over: the window waits, and nothing is lost.
    writer?.worker.terminate();
    writer = null;
    return withSum(validText(plan));
  }
}

export async function withSum(written: ValidText): Promise<WrittenPlan> {
  return written.ok ? { ...written, sum: await checksum(written.text) } : written;
}

async function writeApart(plan: Plan): Promise<WrittenPlan> {
  writer ??= {
    worker: new Worker(new URL("./write-worker.ts", import.meta.url), { type: "module" }),
    held: new Map(),
    next: 1,
  };
  const { worker } = writer;
  const held = new Map<object, number>();
  let piece: (readonly [number, object])[] = [];
  let corners = 0;
  const send = async () => {
    worker.postMessage({ kind: "things", things: piece } satisfies WriteRequest);
    piece = [];
    corners = 0;
    await pause();
  };
  for (const thing of thingsOf(plan)) {
    const known = writer.held.get(thing);
    held.set(thing, known ?? writer.next);
    if (known !== undefined) continue;
    piece.push([writer.next, thing]);
    writer.next += 1;
    corners += cornersOf(thing);
    if (corners >= PIECE_CORNERS) await send();
  }
  if (piece.length > 0) await send();
  writer.held = held;
  const answer = answerOf(worker);
  worker.postMessage({ kind: "write", plan: numbered(plan, held) } satisfies WriteRequest);
  return answer;
}

function thingsOf(plan: Plan): readonly object[] {
  return [
    ...plan.varieties,
    ...plan.surroundings,
    ...plan.earlierCrops,
    ...plan.layouts.flatMap(({ beds, plantings }) => [...beds, ...plantings]),
    ...(plan.picture ? [plan.picture] : []),
  ];
}

function numbered(plan: Plan, held: ReadonlyMap<object, number>): NumberedPlan {
  const numbers = (things: readonly object[]) => things.map((thing) => held.get(thing) ?? 0);
  const { varieties, surroundings, earlierCrops, picture, layouts, ...rest } = plan;
  return {
    rest,
    varieties: numbers(varieties),
    surroundings: numbers(surroundings),
    earlierCrops: numbers(earlierCrops),
    picture: picture ? (held.get(picture) ?? 0) : null,
    layouts: layouts.map(({ beds, plantings, ...own }) => ({
      rest: own,
      beds: numbers(beds),
      plantings: numbers(plantings),
    })),
  };
}

function answerOf(worker: Worker): Promise<WrittenPlan> {
  return new Promise((resolve, reject) => {
    const ended = new AbortController();
    const { signal } = ended;
    const hear = ({ data }: MessageEvent<WrittenPlan | null>) => {
      if (data === null) {
        failed();
        return;
      }
      ended.abort();
      resolve(data);
    };
    const failed = () => {
      ended.abort();
      reject(new Error("The thread that writes plans fell over"));
    };
    worker.addEventListener("message", hear, { signal });
    worker.addEventListener("error", failed, { signal });
    worker.addEventListener("messageerror", failed, { signal });
  });
}

/** Lets the window do what waits; unlike a timer it is not slowed down where nobody looks. */
function pause(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener("message", () => {
      port1.close();
      resolve();
    });
    port1.start();
    port2.postMessage(null);
  });
}

function cornersIn(plan: Plan): number {
  return thingsOf(plan).reduce((sum: number, thing) => sum + cornersOf(thing), 0);
}

function cornersOf(thing: object): number {
  const outline: unknown = "outline" in thing ? thing.outline : null;
  const isPolygon = typeof outline === "object" && outline !== null && "corners" in outline;
  const { corners } = isPolygon ? outline : { corners: null };
  return THING_CORNERS + (Array.isArray(corners) ? corners.length : 0);
}
