/**
 * Work on a register, dealt to threads: each runs this same program, told by `isMainThread`. Few
 * pieces of work are done here, without any thread. What comes of a piece is the same wherever it
 * is done.
 */
import { availableParallelism } from "node:os";
import { Worker, parentPort } from "node:worker_threads";
import { cropBook } from "../../core/kinds/crop-book.ts";
import { Refusal } from "../refusal.ts";
import { type AreaPlaces, type AreaTask, type AreaTold, checkArea } from "./check-area.ts";
import type { TextBatch } from "./json-texts.ts";
import { type BatchRead, buffersOf, readBatch } from "./read-batch.ts";

/** So many pieces are done sooner than a thread is there. */
const DONE_HERE = 3;
/** Each takes some 80 MB; with more the one that reads and writes would not keep up. */
const MOST_THREADS = 8;
/** Room for what is made and thrown away at once: 48 MB, Node's own choice, is no faster here. */
const YOUNG_MB = 16;

type Work =
  | { readonly do: "read"; readonly batch: TextBatch; readonly file: string }
  | { readonly do: "prepare"; readonly task: AreaTask }
  | { readonly do: "check"; readonly area: AreaPlaces };

type Answer = { readonly done: unknown } | { readonly refused: string };

export interface RegisterThreads {
  /** How many pieces of work may be asked for at a time. */
  readonly ahead: number;
  readonly read: (batch: TextBatch, file: string) => Promise<BatchRead>;
  /** To be called before the first area is checked. */
  readonly prepare: (task: AreaTask) => void;
  readonly check: (area: AreaPlaces) => Promise<AreaTold>;
  readonly end: () => void;
}

/** @param count how many threads; as many as the machine has when not given */
export function registerThreads(
  count = Math.min(availableParallelism(), MOST_THREADS),
): RegisterThreads {
  const here = worker();
  const started: Thread[] = [];
  let task: AreaTask | null = null;
  let asked = 0;
  const start = () => {
    for (let number = 0; number < count; number += 1) {
      const thread = startThread();
      if (task) thread.ask({ do: "prepare", task }).catch(() => {});
      started.push(thread);
    }
  };
  const run = async (work: Work): Promise<unknown> => {
    asked += 1;
    if (count === 1 || asked <= DONE_HERE) return here(work);
    if (started.length === 0) start();
    return started.reduce((a, b) => (b.waiting() < a.waiting() ? b : a)).ask(work);
  };
  return {
    ahead: count * 2,
    read: async (batch, file) => (await run({ do: "read", batch, file })) as BatchRead,
    prepare: (given) => {
      task = given;
      here({ do: "prepare", task });
      for (const thread of started) thread.ask({ do: "prepare", task }).catch(() => {});
    },
    check: async (area) => (await run({ do: "check", area })) as AreaTold,
    end: () => {
      for (const thread of started) thread.end();
    },
  };
}

/** Does pieces of work one after the other. */
function worker(): (work: Work) => unknown {
  const book = cropBook();
  let task: AreaTask | null = null;
  return (work) => {
    switch (work.do) {
      case "read":
        return readBatch(work.batch, work.file, book);
      case "prepare":
        ({ task } = work);
        return null;
      case "check":
        if (!task) throw new Error("an area was to be checked before the register was there");
        return checkArea(work.area, task, book);
    }
  };
}

interface Thread {
  readonly ask: (work: Work) => Promise<unknown>;
  /** How many answers are still to come. */
  readonly waiting: () => number;
  readonly end: () => void;
}

interface Waiting {
  readonly resolve: (done: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** Answers come in the order of the questions. */
function startThread(): Thread {
  const thread = new Worker(new URL(import.meta.url), {
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
  });
  const waiting: Waiting[] = [];
  const fail = (error: unknown) => {
    for (const { reject } of waiting.splice(0)) reject(error);
  };
  thread.on("message", (answer: Answer) => {
    const asked = waiting.shift();
    if ("done" in answer) asked?.resolve(answer.done);
    else asked?.reject(new Refusal([answer.refused]));
  });
  thread.on("error", fail);
  thread.on("exit", () => fail(new Error("a thread ended before its work was done")));
  return {
    ask: (work) =>
      new Promise((resolve, reject) => {
        waiting.push({ resolve, reject });
        thread.postMessage(work, buffersAsked(work));
      }),
    waiting: () => waiting.length,
    end: () => {
      thread.removeAllListeners("exit");
      void thread.terminate();
    },
  };
}

/** What a thread started here does instead of reading a command line. */
export function answerWork(): void {
  const work = worker();
  parentPort?.on("message", (asked: Work) => {
    const answer = answerTo(asked, work);
    parentPort?.postMessage(answer, "done" in answer ? buffersTold(asked, answer.done) : []);
  });
}

/** What is handed over with a question, not copied: the one who asks has no more use for it. */
function buffersAsked(work: Work): readonly ArrayBuffer[] {
  if (work.do === "read") return [work.batch.bytes.buffer];
  return work.do === "check" ? [work.area.all.buffer, work.area.own.buffer] : [];
}

/** The same of an answer. */
function buffersTold(asked: Work, done: unknown): readonly ArrayBuffer[] {
  if (asked.do === "read") return buffersOf(done as BatchRead);
  if (asked.do !== "check") return [];
  const { pairs, findings } = done as AreaTold;
  return [pairs, ...findings].map(({ text }) => text.buffer);
}

function answerTo(asked: Work, work: (asked: Work) => unknown): Answer {
  try {
    return { done: work(asked) };
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.message };
    throw error;
  }
}
