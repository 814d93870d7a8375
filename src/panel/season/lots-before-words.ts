/** Lots of the season before that this plan has not, in words. */
import type { Plan } from "../../core/model/plan.ts";
import type { LotsBrought } from "../../core/seasons/lots-from-before.ts";
import { counted } from "../state/selected-objects.ts";

/** What would be taken over, and what not. */
export function lotsBeforeWords(brought: LotsBrought, plan: Plan, before: Plan): readonly string[] {
  const { lots, places, varieties, recoded } = brought;
  const named = [...plan.varieties, ...varieties];
  const list = lots.map(({ code, variety }) => {
    const name = named.find(({ id }) => id === variety)?.name ?? "";
    return name === "" ? code : `${code} ${name}`;
  });
  const along = [
    counted(places.length, "storage place", "storage places"),
    counted(varieties.length, "variety", "varieties"),
  ].filter((part) => part !== "");
  return [
    lots.length === 0
      ? `"${before.title}", season ${before.season.name}. Every lot of it is on this shelf already.`
      : `"${before.title}", season ${before.season.name}, has ${counted(lots.length, "lot", "lots")} that this shelf has not: ${list.join(", ")}.`,
    ...(along.length === 0 ? [] : [`With them come ${along.join(" and ")}.`]),
    ...recoded.map(
      ({ from, to }) =>
        `${from} stands for other seed here: that lot comes as ${to}. Mend its packet.`,
    ),
    "What was weighed or tested since of lots that both have stays as each plan has it.",
  ];
}
