/** The season's jobs by week, with a box to tick. */
import { longDate, shortDate } from "../model/day.ts";
import {
  type FlowItem,
  heading,
  lineHeight,
  paragraph,
  textLines,
  wrapText,
} from "../page/flow.ts";
import { type ListPageSetting, flowPages, noteWidth } from "../map/list-pages.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { type Mark, type Page, type TextRuler, area, boxRing, line } from "../page/scene.ts";
import { jobsDone } from "../fieldwork/job-ticks.ts";
import type { Entry } from "../model/plan.ts";
import { type Job, jobsByWeek, seasonJobs } from "../fieldwork/season-calendar.ts";

const TICK_MM = 3;
const INDENT_MM = 6;

export function calendarPages(checked: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const width = noteWidth(setting.frame);
  const jobs = seasonJobs(checked);
  const done = jobsDone(jobs, checked.plan.entries);
  const weeks = jobsByWeek(jobs);
  const items = weeks.flatMap(({ label, monday, jobs: ofWeek }) => [
    heading(`Week ${label}, from ${longDate(monday)}`, width, TYPE_PT.code, setting.ruler),
    ...ofWeek.map((job) => jobItem(job, done.get(job) ?? null, width, setting.ruler)),
  ]);
  const empty = paragraph(
    "No dates are known: give the plantings a start date.",
    width,
    TYPE_PT.body,
    setting.ruler,
  );
  return flowPages("Season calendar", items.length > 0 ? items : [empty], setting);
}

/** @param done the entry that says it is done */
function jobItem(job: Job, done: Entry | null, width: number, ruler: TextRuler): FlowItem {
  const { day, text, caution } = job;
  const by = done?.who === undefined ? "" : ` by ${done.who}`;
  const said = done ? `. Done ${shortDate(done.on)}${by}` : "";
  const words = `${shortDate(day)}: ${text}${said}${caution === null ? "" : `. Caution: ${caution}`}`;
  const lines = wrapText(words, width - INDENT_MM, TYPE_PT.body, ruler);
  return {
    height: lines.length * lineHeight(TYPE_PT.body) + 1,
    draw: (left, top) => [
      area(boxRing({ left, top: top + 0.6, width: TICK_MM, height: TICK_MM }), null, {
        widthMm: 0.25,
      }),
      ...(done ? tickLines(left, top + 0.6) : []),
      ...textLines(lines, { x: left + INDENT_MM, y: top }, TYPE_PT.body),
    ],
  };
}

/** A tick in the box. */
function tickLines(left: number, top: number): readonly Mark[] {
  const at = (x: number, y: number) => ({ x: left + x * TICK_MM, y: top + y * TICK_MM });
  return [line([at(0.15, 0.5), at(0.4, 0.8), at(0.9, 0.1)], { widthMm: 0.45 })];
}
