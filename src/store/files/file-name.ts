/** File names that every system takes: letters and digits of any script, dashes between words. */
import { isoFromDay } from "../../core/model/day.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";

const MAX_PART = 40;
/** Names some systems keep for devices; with anything before them they are harmless. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:-|$)/;

/** e.g. `fallow-end-2027-layout-1-2026-11-03.json`: site, season, layout and the day it is saved. */
export function planFileName(plan: Plan, layout: Layout, now: Date): string {
  const parts = [plan.site.name, plan.season.name, layout.name].map(fileNamePart);
  const day = isoFromDay(Math.floor(now.getTime() / 86_400_000 - now.getTimezoneOffset() / 1440));
  const name = [...parts, day].filter((part) => part !== "").join("-");
  return `${DEVICE.test(name) ? "plan-" : ""}${name}.json`;
}

/** A text as part of a file name; empty when nothing of it can stand in one. */
function fileNamePart(text: string): string {
  const words = text
    .normalize("NFC")
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  return Array.from(words).slice(0, MAX_PART).join("").replaceAll(/^-|-$/g, "");
}
