/** A bed shared out among several varieties, and a bed cut in two. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Bed, Layout, Plan, Planting, RectangleShape } from "../model/plan.ts";
import { codeAfter } from "../beds/code-series.ts";
import { isCodeOfBed } from "../beds/codes.ts";
import { type Edit, drawnIds, inLayout, nextId } from "./edit.ts";
import { heldBack, heldBackWords } from "../beds/held-back.ts";
import { newPlanting, plantsWanted } from "./new-planting.ts";
import { freeStretches, lengthFor, outlineOnBed, stretchOf } from "../beds/place-planting.ts";
import type { Stretch } from "../beds/stretch.ts";
import { plantRoom } from "../beds/plant-room.ts";

/** Lengths closer than this are the same, metres. */
const SAME_LENGTH_M = 1e-6;

export interface BedShares {
  readonly bed: string;
  /** Varieties in order from the near end. */
  readonly varieties: readonly string[];
  /** `wanted`: as long as the plants still wanted need; `equal`: the same length for each. */
  readonly by: "wanted" | "equal";
  /** Left bare between two of them, metres. */
  readonly gapM: number;
}

export interface Share {
  readonly planting: Planting;
  readonly stretch: Stretch;
  /** Plants still wanted of the variety; fewer stand here where the ground does not take them. */
  readonly wanted: number;
}

export type SharedOut =
  | { readonly ok: true; readonly shares: readonly Share[]; readonly ground: Stretch }
  | { readonly ok: false; readonly reason: "no ground" | "no varieties" | "gaps leave nothing" };

/**
 * Plantings of several varieties one behind the other on the longest free stretch of a rectangular
 * bed. Where the plants wanted need more than there is, every share is shortened alike.
 */
export function shareBed(plan: Plan, layout: Layout, book: CropBook, asked: BedShares): SharedOut {
  const bed = layout.beds.find(({ id }) => id === asked.bed);
  const shape = bed?.outline;
  const parts = asked.varieties.flatMap((id) => {
    const variety = plan.varieties.find((entry) => entry.id === id);
    const kind = variety && book.kind(variety.kind);
    return variety && kind ? [{ variety, kind, wanted: plantsWanted(layout, variety, kind) }] : [];
  });
  if (parts.length === 0) return { ok: false, reason: "no varieties" };
  if (!bed || shape?.shape !== "rectangle") return { ok: false, reason: "no ground" };
  const [ground] = [...freeStretches(layout, bed)].sort(
    (a, b) => b.toM - b.fromM - (a.toM - a.fromM),
  );
  if (!ground) return { ok: false, reason: "no ground" };
  const roomM = ground.toM - ground.fromM - asked.gapM * (parts.length - 1);
  if (roomM <= 0.01 * parts.length) return { ok: false, reason: "gaps leave nothing" };
  const needs = parts.map(({ kind, wanted }) => lengthFor(kind, shape.widthM, wanted));
  const total = needs.reduce((sum, metres) => sum + metres, 0);
  const lengths =
    asked.by === "equal"
      ? parts.map(() => roomM / parts.length)
      : needs.map((metres) => metres * Math.min(1, roomM / total));
  const shares: Share[] = [];
  let grown = layout;
  let from = ground.fromM;
  parts.forEach(({ variety, kind, wanted }, index) => {
    const stretch = { fromM: from, toM: from + (lengths[index] ?? 0) };
    from = stretch.toM + asked.gapM;
    const outline = outlineOnBed(shape, stretch);
    const room = plantRoom(kind, outline);
    const plants = variety.wantedPlants === undefined ? room.plants : Math.min(wanted, room.plants);
    const rows = room.grid?.rows ?? 1;
    const planting = newPlanting(plan, grown, bed, variety, { outline, plants, rows });
    grown = { ...grown, plantings: [...grown.plantings, planting] };
    shares.push({ planting, stretch, wanted });
  });
  return { ok: true, shares, ground };
}

export interface BedCut {
  readonly bed: string;
  /** Length of the near part, metres. */
  readonly atM: number;
  /** Path left between the parts, metres; it is taken from the far part. */
  readonly pathM: number;
}

export type CutBed =
  | {
      readonly ok: true;
      readonly near: Bed;
      readonly far: Bed;
      /** Plantings of the far part; their codes follow where they were made from the bed's. */
      readonly moved: readonly Planting[];
    }
  | { readonly ok: false; readonly reason: "outside"; readonly lengthM: number }
  /** Plantings that lie across the cut or the path. */
  | { readonly ok: false; readonly reason: "across"; readonly codes: readonly string[] };

/** A rectangular bed as two, one behind the other; the near one keeps its code. */
export function cutParts(plan: Plan, layout: Layout, cut: BedCut): CutBed {
  const bed = layout.beds.find(({ id }) => id === cut.bed);
  const shape = bed?.outline;
  if (!bed || shape?.shape !== "rectangle") return { ok: false, reason: "outside", lengthM: 0 };
  const farFromM = cut.atM + cut.pathM;
  if (cut.atM < 0.01 || farFromM > shape.lengthM - 0.01)
    return { ok: false, reason: "outside", lengthM: shape.lengthM };
  const inside = layout.plantings.filter((planting) => planting.bed === bed.id);
  const lies = (planting: Planting) => stretchOf(shape, planting.outline);
  const across = inside.filter((planting) => {
    const { fromM, toM } = lies(planting);
    return fromM < farFromM - SAME_LENGTH_M && toM > cut.atM + SAME_LENGTH_M;
  });
  if (across.length > 0)
    return { ok: false, reason: "across", codes: across.map(({ code }) => code) };
  const taken = new Set([...layout.beds, ...layout.plantings].map(({ code }) => code));
  const part = (stretch: Stretch): RectangleShape => outlineOnBed(shape, stretch);
  const far: Bed = {
    ...bed,
    id: nextId("bed-", drawnIds(plan, layout)),
    code: codeAfter(bed.code, taken),
    outline: part({ fromM: farFromM, toM: shape.lengthM }),
  };
  const near: Bed = { ...bed, outline: part({ fromM: 0, toM: cut.atM }) };
  let number = 0;
  const moved = inside
    .filter((planting) => lies(planting).fromM >= farFromM - SAME_LENGTH_M)
    .map((planting): Planting => {
      if (!isCodeOfBed(planting.code, bed)) return { ...planting, bed: far.id };
      do number += 1;
      while (taken.has(`${far.code}-${number}`));
      return { ...planting, bed: far.id, code: `${far.code}-${number}` };
    });
  return { ok: true, near, far, moved };
}

/** Cuts a bed in two; a locked bed, or one with a locked planting, stays whole. */
export function cutBed(layoutId: string, cut: BedCut, title: string): Edit {
  return {
    title,
    note: (plan) => heldBackWords(plan, layoutId, [cut.bed], true),
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      if (!layout || heldBack(plan, layoutId, [cut.bed], true).ids.size > 0) return plan;
      const parts = cutParts(plan, layout, cut);
      if (!parts.ok) return plan;
      const moved = new Map(parts.moved.map((planting) => [planting.id, planting]));
      return inLayout(plan, layoutId, () => ({
        ...layout,
        beds: layout.beds.flatMap((bed) => (bed.id === cut.bed ? [parts.near, parts.far] : [bed])),
        plantings: layout.plantings.map((planting) => moved.get(planting.id) ?? planting),
      }));
    },
  };
}
