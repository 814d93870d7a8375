/** Growing a variety out in another season, in words. */
import type { Kind } from "../kinds/crop.ts";
import type { Renewal } from "../lots/renewal.ts";
import { ruleCited } from "../practice/practice.ts";

export const yearWords = {
  title: (variety: string, codes: readonly string[]) =>
    `Grow ${variety} in another year (${codes.join(", ")} goes out of this layout)`,
  note: "It waits in the seed list, where it can be placed again at any time.",
  keeps: (kind: Kind, hasLots: boolean, due: Pick<Renewal, "cause" | "by"> | undefined): string => {
    if (due?.cause === "short") return "Its seed still holds, but there is little of it left.";
    if (due) return `By its lots it can wait until ${due.by}.`;
    if (hasLots) return "By its lots on the shelf it need not be grown out yet.";
    const life = kind.seedLifeYears;
    return life
      ? `Look how old its seed is: seed of ${kind.name} keeps ${life.value[0] === life.value[1] ? `about ${life.value[0]}` : `${life.value[0]} to ${life.value[1]}`} years in all (${ruleCited(life.source)}).`
      : `Look how old its seed is: how long seed of ${kind.name} keeps is not known here.`;
  },
} as const;
