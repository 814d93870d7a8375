/** On what a bloom window rests, and which of it may clear a pair by itself. */
import type { Sourced } from "../kinds/crop.ts";
import { OWN_SOURCE } from "../kinds/own-kinds.ts";
import { findSource } from "../kinds/sources.ts";

/**
 * Surest first. `seen`: observed this season. `own`: dates, days or heat the grower typed.
 * `published`: a source that covers the kind. `planned end`: the day it is to be cleared, of which
 * only the plan speaks. `rule of thumb`: recalled, common practice, or published for a few
 * varieties only.
 */
export const bases = ["seen", "own", "published", "planned end", "rule of thumb"] as const;
export type Basis = (typeof bases)[number];

/** Whether time may clear a pair on it in silence. */
export function isSureBasis(basis: Basis): boolean {
  return basis !== "planned end" && basis !== "rule of thumb";
}

/** The less sure of two. */
export function weaker(a: Basis, b: Basis): Basis {
  return bases.indexOf(a) >= bases.indexOf(b) ? a : b;
}

/** On what a figure of a kind rests. */
export function figureBasis(figure: Sourced<unknown>): Basis {
  if (figure.source === OWN_SOURCE) return "own";
  if (figure.fewVarieties === true) return "rule of thumb";
  return findSource(figure.source)?.trust === "seen" ? "published" : "rule of thumb";
}
