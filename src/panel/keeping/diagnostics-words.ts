/** The log of what went wrong in words a grower reads; what the machine said stands behind them. */
import type { DiagnosticEntry, Topic } from "../../store/keeping/diagnostics.ts";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** What happened, where the entry itself is a machine's; null: the entry is in words already. */
const MEANINGS: ReadonlyMap<Topic, string> = new Map([
  ["program", "A part of the program failed. The plan is kept; reload the page if it goes on."],
  ["security", "The page was kept from fetching something from elsewhere."],
]);

/** `26 Nov 2026, 11:58`, on the clock of this device; the stamp itself where it is none. */
export function entryTime(at: string): string {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return at;
  const two = (part: number) => String(part).padStart(2, "0");
  const day = `${time.getDate()} ${MONTHS[time.getMonth()] ?? ""} ${time.getFullYear()}`;
  return `${day}, ${two(time.getHours())}:${two(time.getMinutes())}`;
}

/** `details: TypeError ...` only where there are any; no address of this page. */
export function entryText({ topic, text }: DiagnosticEntry): string {
  const meaning = MEANINGS.get(topic);
  return meaning === undefined ? text : `${meaning} Details: ${text}`;
}

/** Every entry as lines of text, the oldest first. */
export function diagnosticsText(entries: readonly DiagnosticEntry[]): string {
  return entries.map((entry) => `${entryTime(entry.at)}. ${entryText(entry)}\n`).join("");
}
