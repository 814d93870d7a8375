/** On what a predicted bloom rests, in words. */
import type { ColdFelt } from "../../core/calendar/cold-felt.ts";
import type { FlowerFigure } from "../../core/calendar/first-flower.ts";
import { CARROT_COLD } from "../../core/calendar/vernalization.ts";
import { findSource } from "../../core/kinds/sources.ts";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
import { shortDate } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { heatWords } from "./heat-text.ts";
import { rangeText } from "../form/range-text.ts";

type StartMethod = NonNullable<Planting["start"]>["method"];

/** `Counted in days: 61-75 from sowing. Recalled, not checked: ...`. */
export function basisWords(
  figure: FlowerFigure,
  method: StartMethod,
  unit: TemperatureUnit,
): string {
  const counted =
    figure.by === "heat"
      ? `Counted in heat: ${heatWords(figure.heat, unit)}.`
      : `Counted in days: ${rangeText(figure.days)} from ${method === "sown" ? "sowing" : "setting out"}.`;
  return `${counted} ${trustWords(figure)}`;
}

function trustWords({ of, source, basis }: FlowerFigure): string {
  if (of === "variety") return "The variety's own figure.";
  if (basis === "own") return "The kind's figure in this plan.";
  const found = source === null ? undefined : findSource(source);
  if (found?.trust === "common practice") return "Common practice, not published.";
  if (found?.trust !== "seen") {
    return "A rule of thumb, not checked: your own days in the variety go before it.";
  }
  return basis === "published"
    ? `Source: ${found.title}.`
    : `Found on a few varieties only (${found.title}), so no more than a rule of thumb for another: your own days in the variety go before it.`;
}

/** What a biennial needs before it flowers, with numbers where a published function gives them. */
export function coldWords(felt: ColdFelt | null, kindName: string): string {
  if (felt === null) {
    return `${capital(kindName)} is a biennial: it flowers only after a winter's cold, as a root or plant of last year.`;
  }
  const until = `from ${shortDate(felt.winter.first)} to ${shortDate(felt.winter.last)}`;
  if (felt.kind === "carrot") {
    return (
      `Cold felt outdoors here ${until}: ${Math.round(felt.cDays)} C-days. The first carrots flower after ` +
      `${CARROT_COLD.first}, nine in ten after ${CARROT_COLD.most}, counted from 8 to 12 leaves on ` +
      "(Atherton and others 1990). Roots from a store feel the store instead: at 4 °C that takes 25 to 67 days."
    );
  }
  return (
    `Cold felt outdoors here ${until}: ${Math.round(felt.days)} fully effective days, which readies ` +
    `${percent(felt.share)} of the way; 30 days are half of it (Streck 2003). Bulbs from a store feel ` +
    "the store instead: 5 to 13 °C for 90 to 120 days."
  );
}

function percent(share: number): string {
  return share > 0.995 ? "nearly all" : `${Math.round(share * 100)} %`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
