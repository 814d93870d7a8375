/**
 * The season's jobs as an iCalendar file (RFC 5545): whole-day events, lines folded at 75 octets,
 * CRLF ends, text escaped. UIDs are made from plan, layout, planting and job, so that importing
 * the file again updates the events rather than doubling them.
 */
import { type DayNumber, isoFromDay } from "../model/day.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { jobLabels } from "../fieldwork/job-name-words.ts";
import type { Job } from "../fieldwork/season-calendar.ts";

/** @param stamp when the file is made, as `YYYYMMDDTHHMMSSZ` (UTC) */
export function icalendar(plan: Plan, layout: Layout, jobs: readonly Job[], stamp: string): string {
  const events = jobs.flatMap((job) => [
    "BEGIN:VEVENT",
    `UID:${plan.id}.${layout.id}.${job.planting}.${besideOf(job)}${job.job.replaceAll(" ", "-")}@wideberth.invalid`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${basicDate(job.day)}`,
    `DTEND;VALUE=DATE:${basicDate(job.day + 1)}`,
    `SUMMARY:${escapeText(job.text)}`,
    ...(job.caution === null ? [] : [`DESCRIPTION:${escapeText(`Caution: ${job.caution}.`)}`]),
    `CATEGORIES:${escapeText(jobLabels[job.job])}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ]);
  return [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Wideberth//Season calendar//EN",
    "CALSCALE:GREGORIAN",
    ...events,
    "END:VCALENDAR",
  ]
    .map((line) => `${folded(line)}\r\n`)
    .join("");
}

/** A job that two stands share is told apart by the other, one after a harvest by its batch. */
function besideOf({ beside, batch }: Job): string {
  const harvested = batch === undefined ? "" : `${basicDate(batch)}.`;
  return beside === undefined ? harvested : `${beside}.${harvested}`;
}

function basicDate(day: DayNumber): string {
  return isoFromDay(day).replaceAll("-", "");
}

/** RFC 5545 section 3.3.11: backslash, semicolon, comma and line breaks are escaped. */
function escapeText(text: string): string {
  return text
    .replace(/[\\;,]/g, (char) => `\\${char}`)
    .replace(/\r\n|\r|\n/g, "\\n")
    .replace(CONTROLS, "");
}

/** Control characters other than tab, which RFC 5545 forbids in text. */
const CONTROLS = /[\u0000-\u0008\u000B-\u001F\u007F]/g;

/** RFC 5545 section 3.1: at most 75 octets a line, never cutting a character in two. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = "";
  let octets = 0;
  for (const char of line) {
    const size = utf8Size(char.codePointAt(0) ?? 0);
    if (octets + size > 75) {
      parts.push(part);
      part = " ";
      octets = 1;
    }
    part += char;
    octets += size;
  }
  return [...parts, part].join("\r\n");
}

function utf8Size(codePoint: number): number {
  if (codePoint < 0x80) return 1;
  if (codePoint < 0x800) return 2;
  return codePoint < 0x10000 ? 3 : 4;
}
