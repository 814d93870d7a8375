/** Words of predicted against seen, and of taking the days seen. */
import { shortDate, type DayNumber } from "../../core/model/day.ts";
import type { Range } from "../../core/kinds/crop.ts";
import {
  type Learned,
  MARGIN_DAYS,
  SEASONS_TO_NARROW,
  type SeenBeside,
} from "../../core/record/learning.ts";
import { formOf } from "../../core/words/plurals.ts";

export const learnWords = {
  title: "Predicted and seen",
  lead: `Days to flower seen on this ground, beside what was forecast. The seasons kept with a variety widen its forecast from then on: a season as early or late as one you saw is possible again. One or two seasons never narrow it, whatever they showed. From ${SEASONS_TO_NARROW} seasons on the days seen, with ${MARGIN_DAYS} days either way, can become the variety's own range, on which time may clear a pair by itself.`,
  heat: "Only days from sowing or setting out are learned, not heat. A range taken in days goes before the kind's heat.",
  none: "No first or last flower is written down in this plan yet. Add them to the field record, in the particulars or on the walk.",
  plot: "Plot",
  forecast: "Forecast",
  seen: "Seen",
  off: "Off by",
  seasons: "Seasons held",
  looking: "Looking through the plans kept in this browser ...",
  keep: "Add the days seen",
  take: "Apply as its own range",
  done: "Kept with the variety.",
  nothing: "No start is known, so no days can be counted.",
} as const;

function range([least, most]: Range): string {
  return least === most ? `${least}` : `${least} to ${most}`;
}

/** `2027: 42 to 46 days from sowing, flowering 25 days`. */
export function seasonLine(season: Learned["seasons"][number]): string {
  const { season: name, sownToFlower, transplantedToFlower, bloomDays } = season;
  const parts = [
    sownToFlower ? `${range(sownToFlower)} days from sowing` : "",
    transplantedToFlower ? `${range(transplantedToFlower)} days from setting out` : "",
    bloomDays ? `flowering ${range(bloomDays)} days` : "",
  ];
  return `${name}: ${parts.filter((part) => part !== "").join(", ")}`;
}

/** What pressing does: which range it becomes, or that it only widens. */
export function effectLine({ isOwnRange, variety, seasons }: Learned): string {
  if (!isOwnRange) {
    const more = SEASONS_TO_NARROW - seasons.length;
    return `Kept, and its forecast holds at least these days from now on. ${more <= 0 ? "Counted the same way in too few of the seasons to be its own range." : `${more} more ${formOf(more, { one: "season", other: "seasons" })} before they can be its own range.`}`;
  }
  const parts = [
    variety.sownToFlower ? `${range(variety.sownToFlower)} days from sowing` : "",
    variety.transplantedToFlower
      ? `${range(variety.transplantedToFlower)} days from setting out`
      : "",
    variety.bloomDays ? `flowering ${range(variety.bloomDays)} days` : "",
  ];
  return `Its own range becomes ${parts.filter((part) => part !== "").join(", ")}.`;
}

/** Forecast, seen and difference of one planting. */
export function besideCells(row: SeenBeside): readonly [string, string, string] {
  const { forecast, firstFlower, lastFlower, shutOn } = row;
  const day = (value: DayNumber | null) => (value === null ? "not seen" : shortDate(value));
  const shut = shutOn === null ? "" : ` (shut on ${shortDate(shutOn)})`;
  return [
    forecast ? `${shortDate(forecast.first)} to ${shortDate(forecast.last)}` : "none",
    `${day(firstFlower)}${shut} to ${day(lastFlower)}`,
    offText(row),
  ];
}

function offText({ forecast, firstFlower }: SeenBeside): string {
  if (!forecast || firstFlower === null) return "";
  if (firstFlower < forecast.first) return daysText(forecast.first - firstFlower, "earlier");
  if (firstFlower > forecast.last) return daysText(firstFlower - forecast.last, "later");
  return "within it";
}

function daysText(count: number, word: string): string {
  return `${formOf(count, { one: "1 day", other: `${count} days` })} ${word}`;
}
