/**
 * The changes to a distance that a planting can record: each printed by a regulation for its kind,
 * each resting on the grower's word that its condition holds. Nothing here is applied unasked.
 */
import { METRES_PER_FOOT } from "../model/length.ts";
import type { StatedAdjustment } from "../model/plan.ts";
import type { Adjustment, AdjustmentEffect } from "./adjustment.ts";
import { type AdjustmentStep, adjustedDistance, adjustmentsOf } from "./adjustments.ts";
import {
  type BorderRowTable,
  distanceWithBorderRows,
  sweetCornDistance,
  washingtonBorderRows,
} from "./border-rows.ts";

/** Hectares in an acre. */
export const HECTARES_PER_ACRE = 0.40468564224;

/** Largest field that counts as small in the border row tables, acres. */
const SMALL_FIELD_ACRES = 20;

/** A change a kind can have, as shown to growers. */
export interface OfferedAdjustment extends Omit<Adjustment, "effect" | "kinds"> {
  /** Numbers the regulation asks for. */
  readonly asks: readonly ("borderRows" | "fieldHa")[];
  /** What it makes of a distance; null while the numbers do not meet the condition. */
  readonly effectOf: (stated: StatedAdjustment) => AdjustmentEffect | null;
}

/** A step of an adjusted distance with what it rests on; distance-words.ts has the words. */
export interface StatedStep extends AdjustmentStep {
  readonly effect: AdjustmentEffect;
  /** As the regulation prints it. */
  readonly condition: string;
  /** Rows stated, where it asks for them. */
  readonly borderRows: number | null;
  /** Id of the source, and where in it. */
  readonly source: string;
  readonly place: string;
}

/** Every change regulations print for a kind: what shortens a distance before what lengthens it. */
export function offeredAdjustments(kindId: string): readonly OfferedAdjustment[] {
  const printed = adjustmentsOf(kindId).map(({ borderRows, note, ...entry }) =>
    borderRows
      ? { ...entry, ...byBorderRows(borderRows) }
      : {
          ...entry,
          ...(note === undefined ? {} : { note }),
          asks: [],
          effectOf: () => entry.effect,
        },
  );
  return [...printed, ...byRowsAlone.filter(({ kinds }) => kinds.includes(kindId))];
}

/**
 * Whether a change acts on a figure of a source. What shortens a distance holds only for the
 * figure of the regulation that prints it; what lengthens it holds for any.
 */
export function actsOn(
  offer: OfferedAdjustment,
  effect: AdjustmentEffect,
  figureSource: string | null,
): boolean {
  if (effect.kind === "at least" || (effect.kind === "times" && effect.factor > 1)) return true;
  return figureSource !== null && regulationOf(offer.source) === regulationOf(figureSource);
}

/**
 * Whether a change can act on a figure of a source at all, whatever numbers are stated; false where
 * there is no figure. What asks for border rows only ever shortens.
 */
export function canActOn(offer: OfferedAdjustment, figureSource: string | null): boolean {
  if (figureSource === null) return false;
  const effect = offer.asks.length > 0 ? atMost(0) : offer.effectOf({ id: offer.id });
  return effect !== null && actsOn(offer, effect, figureSource);
}

/** The border row table of Washington belongs to its own figure for corn seed, one section before. */
function regulationOf(source: string): string {
  return source === "wac-16-302-295" ? "wac-16-302-290" : source;
}

/**
 * A required distance (metres) after what the grower stated, in the order the changes are offered;
 * increases come last, so that they win. What is not offered to the kind, or is printed for another
 * figure than that of `figureSource`, is left alone.
 */
export function statedDistance(
  kindId: string,
  requiredM: number,
  stated: readonly StatedAdjustment[],
  figureSource: string | null,
): { readonly metres: number; readonly steps: readonly StatedStep[] } {
  const offers = offeredAdjustments(kindId).flatMap((offer) => {
    const entry = stated.find(({ id }) => id === offer.id);
    const effect = entry ? offer.effectOf(entry) : null;
    return entry && effect && actsOn(offer, effect, figureSource)
      ? [{ ...offer, kinds: [kindId], effect, entry }]
      : [];
  });
  const { metres, steps } = adjustedDistance(requiredM, offers);
  return {
    metres,
    steps: steps.flatMap((step, index) => {
      const offer = offers[index];
      return !offer || step.fromM === step.toM
        ? []
        : [{ ...step, ...groundOf(offer, offer.entry, offer.effect) }];
    }),
  };
}

function groundOf(
  { asks, condition, source, place }: OfferedAdjustment,
  { borderRows = 0 }: StatedAdjustment,
  effect: AdjustmentEffect,
): Omit<StatedStep, keyof AdjustmentStep> {
  const rows = asks.includes("borderRows") ? borderRows : null;
  return { effect, condition, borderRows: rows, source, place };
}

function byBorderRows(table: BorderRowTable): Pick<OfferedAdjustment, "asks" | "effectOf"> {
  return {
    asks: ["borderRows", "fieldHa"],
    effectOf: ({ borderRows = 0, fieldHa }) => {
      const size = acresOf(fieldHa) > SMALL_FIELD_ACRES ? "large" : "small";
      return atMost(distanceWithBorderRows(table, borderRows, size));
    },
  };
}

/** What is printed for border rows alone, with the kinds it is printed for. */
const byRowsAlone: readonly (OfferedAdjustment & Pick<Adjustment, "kinds">)[] = [
  {
    id: washingtonBorderRows.id,
    condition: washingtonBorderRows.condition,
    kinds: ["maize"],
    crops: "hybrid corn",
    source: washingtonBorderRows.source,
    place: "",
    ...byBorderRows(washingtonBorderRows),
  },
  {
    id: "sweet-corn-field",
    condition: "border rows of the same sweet corn stand around the seed block",
    kinds: ["sweet-corn"],
    crops: "sweet corn",
    source: "cfr-201-76",
    place: "footnote 14",
    note: "fields of 10 acres (4 ha) or less need at least 4 border rows",
    asks: ["borderRows", "fieldHa"],
    effectOf: ({ borderRows = 0, fieldHa }) => {
      const metres = sweetCornDistance(acresOf(fieldHa), borderRows);
      return metres === null ? null : atMost(metres);
    },
  },
];

function atMost(metres: number): AdjustmentEffect {
  return { kind: "at most", feet: Math.round(metres / METRES_PER_FOOT) };
}

/** Acres to the millionth, so that acres typed come back as the same acres. */
function acresOf(fieldHa = 0): number {
  return Math.round((fieldHa / HECTARES_PER_ACRE) * 1e6) / 1e6;
}
