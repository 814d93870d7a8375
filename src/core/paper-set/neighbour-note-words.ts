/** A note to hand over to a neighbour, in words. */
import { type DayNumber, shortDate } from "../model/day.ts";
import type { PollenCarrier } from "../kinds/crop.ts";

const CARRIED: Readonly<Record<PollenCarrier, string>> = {
  insects: "Bees and flies carry pollen",
  wind: "The wind carries pollen",
  "insects and wind": "Insects and the wind carry pollen",
};

export const neighbourNoteWords = {
  title: "Notes to neighbours",
  none: "Nobody around need be asked: no pollen source that somebody grows lies near enough to what is kept for seed.",
  to: (label: string) => `To: ${label}`,
  grown: (names: string, season: string) => `In ${season} we grow for seed: ${names}.`,
  carried: (carrier: PollenCarrier, kind: string, distance: string) =>
    `${CARRIED[carrier]} from your ${kind} to it over ${distance}. You would notice nothing; the seed we keep would no longer come true. May we ask you:`,
  which: (kind: string) =>
    `Which sort of ${kind} is it, and when was it sown or planted, or when will it be?`,
  flowers: "When does it flower, or when did it flower last year?",
  cut: (last: DayNumber | null) =>
    `Could it be used up or cut before it flowers${last === null ? "" : `, by ${shortDate(last)}`}? We gladly come to look every week, and help.`,
  same: (names: string) =>
    `Could you grow ours in its place: ${names}? We give you seed or plants, and it is then one sort that cannot spoil itself.`,
  keeps: (kind: string) =>
    `Do you keep seed of your ${kind} yourself? Then ours may cross into yours as well, and we should talk.`,
  answers: "Answers",
  columns: ["Asked on", "By whom", "Answer"],
  thanks:
    "Thank you. If none of it suits you, tell us just the same: we then look for another way.",
} as const;
