/**
 * Lays out the seed list on a thread of its own, so that the window stays live. Gets one request,
 * sends progress and one answer; whoever cancels ends the thread.
 */
import { layOut } from "../../core/arrange/lay-out.ts";
import { type LayOutFault, layOutFault } from "../../core/arrange/lay-out-faults.ts";
import type { LaidOutList } from "../../core/arrange/lay-out.ts";
import { seedParts } from "../../core/arrange/seed-parts.ts";
import { checkLayout } from "../../core/checks/checked-layout.ts";
import { joinGroundReckoning } from "../../core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import { groundReckoning } from "../../core/ground/ground-reckoning.ts";
import type { Plan } from "../../core/model/plan.ts";
import { seedReckoning } from "../../core/shelf/seed-reckoning.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

export interface LayOutRequest {
  readonly plan: Plan;
  readonly layoutId: string;
}

export interface LayOutProgress {
  readonly kind: "progress";
  /** 0 to 1. */
  readonly share: number;
}

export type LayOutAnswer =
  | ({ readonly kind: "answer" } & LaidOutList)
  /** Nothing could be laid out, and why. */
  | { readonly kind: "fault"; readonly fault: LayOutFault };

/** Between messages, milliseconds. */
const TURN_MS = 80;

function answerTo({ plan, layoutId }: LayOutRequest): LayOutAnswer {
  const checked = checkLayout(plan, layoutId);
  const fault = layOutFault(checked.layout, seedParts(checked));
  if (fault) return { kind: "fault", fault };
  const run = layOut(checked);
  let told = performance.now();
  let next = run.next();
  while (next.done !== true) {
    const now = performance.now();
    if (now - told > TURN_MS) {
      told = now;
      send({ kind: "progress", share: next.value });
    }
    next = run.next();
  }
  return { kind: "answer", ...next.value };
}

function send(message: LayOutProgress | LayOutAnswer): void {
  postMessage(message);
}

// A fault reaches the window as the worker's own error event.
addEventListener("message", ({ data }: MessageEvent<LayOutRequest>) => send(answerTo(data)));
