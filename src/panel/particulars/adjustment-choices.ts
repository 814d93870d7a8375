/** Which changes a regulation gives are stated for a planting, and what each of them does. */
import { adjustmentWords } from "../../core/distances/adjustment-words.ts";
import {
  type OfferedAdjustment,
  canActOn,
  offeredAdjustments,
} from "../../core/distances/stated-adjustments.ts";
import { placeWords } from "../../core/distances/distance-words.ts";
import { citedAs } from "../../core/kinds/sources.ts";
import type { Planting, StatedAdjustment } from "../../core/model/plan.ts";
import * as words from "./dialog-words.ts";

type Stated = NonNullable<Planting["adjustments"]>;

export interface AdjustmentChoice {
  readonly id: string;
  /** The condition the grower states. */
  readonly condition: string;
  /** What it does and where it is printed. */
  readonly effect: string;
  readonly asks: OfferedAdjustment["asks"];
  /** What is recorded; null: not stated. */
  readonly stated: StatedAdjustment | null;
  /** Why it changes nothing here, whether stated or not; null: it acts on the figure in force. */
  readonly whyIdle: string | null;
}

/** The figure a planting's distance rests on, by its source; null: no figure is known. */
export type FigureInForce = { readonly source: string | null } | null;

/** The choices a planting of a kind has, with what is recorded and whether it acts. */
export function adjustmentChoices(
  kindId: string,
  stated: Stated,
  figure: FigureInForce,
): readonly AdjustmentChoice[] {
  return offeredAdjustments(kindId).map((offer) => {
    const entry = stated.find(({ id }) => id === offer.id) ?? null;
    return {
      id: offer.id,
      condition: offer.condition,
      effect: [effectText(offer, entry), offer.note, placeWords(offer)]
        .filter((part) => part !== undefined)
        .join("; "),
      asks: offer.asks,
      stated: entry,
      whyIdle: whyIdle(offer, figure),
    };
  });
}

function whyIdle(offer: OfferedAdjustment, figure: FigureInForce): string | null {
  if (figure === null) return words.idleNoDistance;
  if (canActOn(offer, figure.source)) return null;
  return figure.source === null || figure.source === "own"
    ? words.idleOwnDistance
    : words.idleOtherSource(citedAs(figure.source));
}

function effectText(offer: OfferedAdjustment, stated: StatedAdjustment | null): string {
  if (offer.asks.length > 0 && stated === null) return words.lessByRows;
  const effect = offer.effectOf(stated ?? { id: offer.id });
  return effect === null ? words.conditionNotMet : adjustmentWords(effect);
}

/** Recorded choices that are not offered to the kind, such as those of the variety before. */
export function strayAdjustments(kindId: string, stated: Stated): Stated {
  const offered = new Set(offeredAdjustments(kindId).map(({ id }) => id));
  return stated.filter(({ id }) => !offered.has(id));
}

/** The record with one choice put in or taken out; undefined when none is left. */
export function withAdjustment(
  stated: Stated,
  id: string,
  entry: StatedAdjustment | null,
): Stated | undefined {
  const isThere = stated.some((before) => before.id === id);
  const next =
    entry === null
      ? stated.filter((before) => before.id !== id)
      : isThere
        ? stated.map((before) => (before.id === id ? entry : before))
        : [...stated, entry];
  return next.length === 0 ? undefined : next;
}
