/** Ways out of a frost, in sentences. */
import type { Stand } from "../checks/stand.ts";
import { finishOf, frostLimit } from "../kinds/finish-ripening.ts";

/** Two ways that are not alike: a fruit can be cut and rested, dry seed cannot. */
export function finishWords({ kind, planting }: Stand): readonly string[] {
  const isSetOut = planting?.start?.method === "transplanted";
  const earlier = isSetOut ? "set it out earlier" : "start it earlier, in trays if it can be";
  const finish = finishOf(kind);
  const frost = frostLimit(kind);
  return [
    finish.by === "fruit"
      ? `Cut the fruit before frost, with its stalk, and rest it indoors: ${finish.rest} (${finish.source}). Or ${earlier}.`
      : `Dry seed does not ripen once it is cut green: ${earlier}, or keep a cover ready for the first frosts.`,
    ...(frost === undefined ? [] : [frost]),
  ];
}
