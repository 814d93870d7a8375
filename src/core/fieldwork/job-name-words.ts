/** Jobs in as few words as a list to tick has room for. */
import type { JobName } from "./season-calendar.ts";

export const jobLabels: Readonly<Record<JobName, string>> = {
  sow: "sow",
  "sow under glass": "sow under glass",
  "set out": "set out",
  rogue: "rogue",
  "cover on": "cover on",
  "cut before bloom": "cut before bloom",
  "tape buds": "tape buds",
  "hand pollinate": "hand pollinate",
  "first flower": "first flower",
  "last flower": "last flower",
  "cover off": "cover off",
  "seed ripe": "seed ripe",
  clear: "clear",
  "lift roots": "lift roots",
  "store roots": "store roots",
  "look over roots": "look over roots",
  "set out roots": "set out roots",
  "watch blooms": "watch blooms",
  ferment: "ferment",
  "stir ferment": "stir ferment",
  "rinse seed": "rinse seed",
  "clean seed": "clean seed",
  "dry seed": "dry seed",
  "store seed": "store seed",
  "test seed": "test seed",
};

/** What a tick of a job writes down, where that is not the job's own name. */
export const doneWords: ReadonlyMap<JobName, string> = new Map([
  ["lift roots", "roots lifted or protected"],
  ["watch blooms", "blooms watched"],
]);
