/** Names are text everywhere: whatever a name holds, no export takes it for anything else. */
import { exportById, formatFileName } from "../../../src/core/files/export-list.ts";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { checkReport, checkReportText } from "../../../src/core/files/check-report.ts";
import { icalendar } from "../../../src/core/files/icalendar.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { plotMapFileName } from "../../../src/core/page/file-name.ts";
import { jobsByWeek, seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { LIMITS } from "../../../src/core/model/limits.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { book, gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { a4, print } from "../../support/printed.ts";

const HOSTILE: readonly (readonly [string, string])[] = [
  ["markup", `<img src=x onerror="alert(1)"><script>alert(1)</script>`],
  ["the end of other markup", `"></svg>]]></style><script>alert(1)</script>`],
  ["a script's address", "javascript:alert(1)"],
  ["text turned round", "seed\u202Etxt.exe"],
  ["controls", "a\u0000b\u0007c\u001B[31md\u007F"],
  ["line breaks", "a\r\nEND:VEVENT\r\nBEGIN:VEVENT\nb"],
  ["a formula", "=1+1"],
  ["another formula", "+cmd|' /C calc'!A0"],
  ["the end of a PDF text", ") Tj ET (\\"],
  ["a path", "../../etc/passwd"],
  ["a device", "CON"],
  ["half a character", "a\uD800b"],
  ["a letter under a heap of marks", `a${"\u0301".repeat(150)}`],
  ["nothing but spaces", "   "],
  ["as much as is allowed", "W".repeat(LIMITS.name)],
];

/** The garden with one name in every place a person can write in. */
function named(name: string): Plan {
  const plan = gardenPlan();
  return {
    ...plan,
    title: name,
    site: { ...plan.site, name },
    season: { ...plan.season, name },
    varieties: plan.varieties.map((variety) => ({ ...variety, name, note: name })),
    surroundings: plan.surroundings.map((place) => ({ ...place, label: name })),
    layouts: plan.layouts.map((layout) => ({ ...layout, name })),
  };
}

describe.each(HOSTILE)("a name that is %s", (_, name) => {
  const plan = named(name);
  const input = mapInput(plan);
  const jobs = seasonJobs(input);

  test("is saved and opened again as it is", () => {
    const text = writePlan(plan);
    // A file is UTF-8, which has no halves of characters.
    const inFile = new TextDecoder().decode(new TextEncoder().encode(text));
    const read = openPlanText(inFile, "plan.json", book);
    expect(read.ok && read.value.plan.title).toBe(name);
  });

  test("stays within its line of the calendar", () => {
    const text = icalendar(plan, input.layout, jobs, "20270201T090000Z");
    const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
    expect(calendar.getAllSubcomponents("vevent")).toHaveLength(jobs.length);
    expect(text).not.toMatch(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/);
    expect(jobsByWeek(jobs).flatMap((week) => week.jobs)).toHaveLength(jobs.length);
  });

  test("makes file names of letters, digits and dashes", () => {
    for (const file of [
      plotMapFileName(plan, input.layout, "Tabloid"),
      formatFileName(exportById("calendar"), plan, input.layout),
    ]) {
      expect(file).toMatch(/^[\p{L}\p{M}\p{N}-]+\.(?:pdf|ics)$/u);
      expect(Array.from(file).length).toBeLessThanOrEqual(104);
    }
  });

  test("is told in reports", () => {
    const report = checkReport({ ...input, file: "plan.json", isAll: false });
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
    expect(checkReportText({ ...input, file: "plan.json", isAll: false })).toContain("conflict");
  });

  test("is printed", async () => {
    const { bytes } = await print(input, a4);
    const pdf = Buffer.from(bytes).toString("latin1");
    expect(pdf.startsWith("%PDF-")).toBe(true);
    expect(pdf.trimEnd().endsWith("%%EOF")).toBe(true);
    // What acts stands in objects; a compressed stream may spell anything.
    const objects = pdf.replaceAll(/stream\r?\n[^]*?endstream/g, "");
    expect(/\/(?:JavaScript|JS|Launch|URI|OpenAction|AA)\b/.exec(objects)).toBeNull();
  });
});
