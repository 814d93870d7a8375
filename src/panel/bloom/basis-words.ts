/** On what a predicted bloom rests, in words. */
import type { FlowerFigure } from "../../core/calendar/first-flower.ts";
import { findSource } from "../../core/kinds/sources.ts";
import type { TemperatureUnit } from "../../core/calendar/temperature-text.ts";
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
      : method === "sown"
        ? `Counted in days: ${rangeText(figure.days)} from sowing.`
        : `Counted in days: ${rangeText(figure.days)} from setting out.`;
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
