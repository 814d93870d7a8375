/** What the shade of a seed parent is made from, taken out of the stands of a checked layout. */
import { type Stand, isSameLot } from "../checks/stand.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { maizeTogether } from "./bloom-together.ts";
import { crossingSources } from "./estimate.ts";
import { sheddingGround } from "./maize-share.ts";
import type { ShadeProblem } from "./shade.ts";

/** Plain data for `shadeOver`; null where the shares of the kind are not estimated. */
export function shadeProblem(
  parent: Stand,
  stands: readonly Stand[],
  book: CropBook,
): ShadeProblem | null {
  const { by, sources } = crossingSources(parent, stands, book);
  if (by === null || sources.length === 0) return null;
  const strength = (stand: Stand, end: 0 | 1) =>
    by === "maize" ? (maizeTogether(parent.receives, stand.sheds)?.[end] ?? 0) : 1;
  const shade = (end: 0 | 1) => (stand: Stand) => ({
    outline: by === "maize" ? sheddingGround(stand) : stand.outline,
    strength: strength(stand, end),
  });
  const kin = stands.filter(
    (stand) => stand !== parent && stand.shedsPollen && isSameLot(parent, stand),
  );
  return {
    by,
    own: by === "maize" ? sheddingGround(parent) : parent.outline,
    sources: sources.map(shade(1)),
    kin: kin.map(shade(0)),
  };
}
