/** Words of the walk. */
import type { Bloom } from "../../core/calendar/bloom-window.ts";
import { weekday } from "../../core/calendar/week.ts";
import { type DayNumber, civilFromDay, longDate, shortDate } from "../../core/model/day.ts";
import type { PlotFacts } from "../../core/record/plot-facts.ts";
import { counted, formOf } from "../../core/words/plurals.ts";

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** `Thu 20 May`. */
export function dayWords(day: DayNumber): string {
  return `${WEEKDAYS[weekday(day) - 1] ?? ""} ${shortDate(day)}`;
}

/** The same for a narrow button: its weekday over its number in the month. */
export function dayParts(day: DayNumber) {
  return {
    name: WEEKDAYS[weekday(day) - 1] ?? "",
    number: String(civilFromDay(day).day),
  };
}

export const walkWords = {
  moreConflicts: (count: number) =>
    formOf(count, { one: "1 more conflict.", other: `${count} more conflicts.` }),
  heading: "Walk",
  leave: "Leave the walk",
  notAdded: (what: string, code: string) => `${what}, ${code} is not added yet: Add or Cancel it.`,
  none: "There is nothing to walk to yet: place plantings or pollen sources first.",
  place: (number: number, of: number) => `${number} of ${of}`,
  today: (day: DayNumber) => `Today, ${dayWords(day)}`,
  otherDay: (day: DayNumber) => `Writing for ${dayWords(day)}`,
  whichDay: "Which day is written down",
  anotherDay: "Another day",
  outsideSeason: (season: string) => `This day lies outside the season ${season}.`,
  previous: "Back",
  next: "Next",
  undo: "Undo",
  scan: "Scan",
  more: "More",
  less: "Less",
  write: "Add",
  cancel: "Cancel",
  close: "Close",
  due: "Due",
  older: (count: number) =>
    formOf(count, {
      one: "1 older job is not ticked: see the season calendar.",
      other: `${count} older jobs are not ticked: see the season calendar.`,
    }),
  dueCount: (count: number) => `${count} due`,
  nothingDue: "Nothing is due here this week.",
  nextJob: (day: DayNumber, text: string) => `Next, ${dayWords(day)}: ${text}`,
  since: (day: DayNumber) => `since ${dayWords(day)}`,
  record: "Written down",
  noRecord: "Nothing is written down here yet.",
  moreEntries: (count: number) =>
    formOf(count, {
      one: "One more is in its particulars.",
      other: `${count} more are in its particulars.`,
    }),
  forSeed: "For seed: do not pick.",
  alreadyToday: (label: string) => `${label} is written down for that day already.`,
  plots: "All plots",
  weekJobs: "Jobs of the week",
  nothingDueAnywhere: "Nothing is due anywhere this week.",
  tools: "Elsewhere",
  position: "Where I stand",
  flowersHere: "A plant flowers here",
  whoAsk: "Whose notes are these? Type your name once",
  news: "New since this walk began",
  newsElsewhere: (count: number) =>
    formOf(count, {
      one: "1 finding elsewhere is new since this walk began.",
      other: `${count} findings elsewhere are new since this walk began.`,
    }),
  /** What stays in the ground is carried on boots and tools (common practice). */
  marked: (disease: string, seenOn: DayNumber) =>
    `Caution: ${disease} in the ground, seen ${longDate(seenOn)}. Come here last, clean boots and tools after it.`,
  lookOnly: "This plan can only be looked at here: nothing is written down.",
  fewer: "One fewer",
  further: "One more",
  tenMore: "Ten more",
} as const;

/** Reasons a finger can pick. */
export const whyChoices: Readonly<Record<"rogued" | "lost", readonly string[]>> = {
  rogued: ["off-type", "looks crossed", "weak", "sick", "in flower too early"],
  lost: ["slugs or insects", "sick", "frost", "drought", "wind or hail", "animals"],
};

/** `40 plants in 2 rows`. */
export function plantsWords({ plants, rows }: PlotFacts): string | null {
  if (plants === null) return null;
  if (plants === 0) return "No plants left";
  const inRows = rows === null ? "" : ` in ${counted(rows, { one: "row", other: "rows" })}`;
  return `${counted(plants, { one: "plant", other: "plants" })}${inRows}`;
}

/** `Sown 20 May` where it is written down, `Planned: sown 20 May`; what stood over winter says so. */
export function startWords({ start, isStanding }: PlotFacts): string | null {
  if (!start) return isStanding ? "Stands over winter" : null;
  const { method, on, isSeen } = start;
  const verb = method === "sown" ? "sown" : "set out";
  if (isStanding) return `Stands over winter, ${verb} ${longDate(on)}`;
  return isSeen
    ? `${verb === "sown" ? "Sown" : "Set out"} ${shortDate(on)}`
    : `Planned: ${verb} ${shortDate(on)}`;
}

/** What is known of its bloom, seen apart from predicted. */
export function bloomWords({
  flowers,
  bloom,
  isAllSeason,
  record,
  kind,
}: PlotFacts): string | null {
  if (record.cutOn !== null && record.firstFlower === null) {
    return `Cut before bloom ${shortDate(record.cutOn)}`;
  }
  if (!kind) return null;
  if (!flowers) return "Is not to flower";
  if (!bloom) return "When it flowers is not known";
  if (isAllSeason) return "May flower all season, as far as is known";
  return `${opensWords(bloom)}; ${closesWords(bloom)}`;
}

function opensWords({ opens, outer, likely }: Bloom): string {
  if (opens === "seen") return `First flower seen ${shortDate(outer.first)}`;
  return `First flower likely ${shortDate(likely.first)}, from ${shortDate(outer.first)}`;
}

function closesWords({ closes, outer, likely, isOpenEnded }: Bloom): string {
  if (closes === "seen") return `last seen ${shortDate(outer.last)}`;
  if (isOpenEnded) return "its end is not known";
  return `last likely ${shortDate(likely.last)}, until ${shortDate(outer.last)}`;
}

/** Words of the card that answers a tap on the sheet. */
export const cardWords = {
  heading: "What is here",
  close: "Close",
  walk: "Walk here",
  edit: "Edit",
  bed: "Bed",
  emptyBed: "Nothing is planted here.",
} as const;
