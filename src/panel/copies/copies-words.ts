/** Words for sending a plan to helpers and taking their copies back. */
import { longDate } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";
import { entryWords } from "../../core/record/entry-words.ts";
import type { PlanDifference } from "../../core/record/merge-plans.ts";
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const entryNoun: Noun = { one: "entry", other: "entries" };
const changeNoun: Noun = { one: "change", other: "changes" };

export const copiesWords = {
  title: "Helpers' copies",
  sendHeading: "Send the plan",
  sendHint:
    "As one file, with beds, varieties and the field record. It goes where you send it and nowhere else. The helper opens it on the phone, writes down what is seen and done, and sends the file back.",
  send: "Send to a phone ...",
  save: "Save as a file",
  sent: "The plan was handed over.",
  saved: "Download started.",
  cannotSend: "This browser hands no files to other programs; save the file and send that.",
  backHeading: "Take a copy back",
  backHint:
    "Everything written there comes in beside what is written here; nothing is replaced. Changes to the plan itself are shown side by side and come in only where you tick them.",
  file: "Returned file",
  notAPlan: "a map file, which has no field record",
  planSentBack: "a plan file sent back",
  notTaken: "The phone did not take the file. Save it and send that instead.",
  takenFrom: (taken: string, file: string) => `${taken} from ${file}`,
  addNew: (name: string) => `Add ${name}, which is new there`,
  deleteMissing: (name: string) => `Delete ${name}, which is not there`,
  takeChanged: (name: string) => `Take ${name} as it is there`,
  none: "No entry is new: all that is written there is here already.",
  changes: "Changes to the plan itself",
  noChanges: "The plan itself is the same in both.",
  field: "What",
  here: "Here",
  there: "There",
  nothing: "nothing",
  clashes: "Two different entries with one id: both are kept",
  leave: "Cancel",
  blocked: "What is ticked does not fit together",
} as const;

export function entriesText(count: number): string {
  return counted(count, entryNoun);
}

export function takeText(entries: number, changes: number): string {
  const changed = counted(changes, changeNoun);
  if (changes === 0) return `Add ${entriesText(entries)}`;
  return entries === 0 ? `Apply ${changed}` : `Add ${entriesText(entries)} and ${changed}`;
}

/** `14 entries come in: Mara 9, Joss 4, nobody named 1.` */
export function comingText(entries: readonly Entry[]): string {
  const byWho = new Map<string, number>();
  for (const { who } of entries) {
    const name = who ?? "nobody named";
    byWho.set(name, (byWho.get(name) ?? 0) + 1);
  }
  const names = [...byWho].map(([name, count]) => `${name} ${count}`).join(", ");
  const count = entries.length;
  return formOf(count, {
    one: `${count} entry comes in: ${names}.`,
    other: `${count} entries come in: ${names}.`,
  });
}

/** `2 Jun 2027, A03-1: rogued, 8 plants (Mara)`. */
export function entryLine(entry: Entry, name: string): string {
  const who = entry.who === undefined ? "" : ` (${entry.who})`;
  return `${longDate(entry.on)}, ${name}: ${entryWords(entry)}${who}`;
}

const THINGS: ReadonlyMap<string, string> = new Map([
  ["varieties", "variety"],
  ["lots", "lot"],
  ["storagePlaces", "storage place"],
  ["ownKinds", "own kind"],
  ["surroundings", "neighbour or feature"],
  ["earlierCrops", "earlier crop"],
  ["beds", "bed"],
  ["plantings", "planting"],
  ["layouts", "layout"],
]);

/** `planting A03-1`, `the plan's site`. */
export function differenceName({ id, name }: PlanDifference): string {
  const parts = id.split("/");
  const thing = THINGS.get(parts.at(-2) ?? "");
  return thing === undefined ? `the plan's ${fieldName(id)}` : `${thing} ${name}`;
}

const FIELDS: ReadonlyMap<string, string> = new Map([
  ["outline", "place and outline"],
  ["isolationM", "isolation distance"],
  ["start", "start"],
  ["chosenLayout", "chosen layout"],
  ["accepted", "accepted findings"],
  ["lotCodePattern", "pattern of lot codes"],
  ["sowing", "rules of sowing"],
  ["renewalYears", "which year for which"],
  ["sownToFlower", "days from sowing to flower"],
  ["transplantedToFlower", "days from setting out to flower"],
  ["keepApart", "kept apart"],
  ["storagePlaces", "storage places"],
  ["stored", "where it is kept"],
]);

export function fieldName(field: string): string {
  return FIELDS.get(field) ?? field;
}
