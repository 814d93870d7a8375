/** The season's jobs by week, with a box to tick and room for who did it. */
import { weekInWords } from "../calendar/week.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { jobsDone } from "../fieldwork/job-ticks.ts";
import { type Job, jobsByWeek, seasonJobs } from "../fieldwork/season-calendar.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { shortDate } from "../model/day.ts";
import type { Entry } from "../model/plan.ts";
import { type FlowItem, heading, paragraph } from "../page/flow.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import { TICKED, type TableColumn, tableRows } from "../page/table-flow.ts";
import { calendarWords as words, continued } from "./page-words.ts";

const COLUMNS: readonly TableColumn[] = [
  { title: "", share: 6, isTick: true },
  { title: words.day, share: 14 },
  { title: words.what, share: 82 },
  { title: words.done, share: 24, isBlank: true },
];
/** Room for a date and a name. */
const LEAST_ROW_MM = 7;

export function calendarPages(checked: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const jobs = seasonJobs(checked);
  const done = jobsDone(jobs, checked.plan.entries);
  const weeks = jobsByWeek(jobs);
  return flowPages(
    words.title,
    (width) =>
      weeks.length === 0
        ? [paragraph(words.none, width, TYPE_PT.body, setting.ruler)]
        : weeks.flatMap((week) =>
            weekItems(
              weekInWords(week.monday),
              week.jobs.map((job) => jobCells(job, done.get(job) ?? null)),
              width,
              setting.ruler,
            ),
          ),
    setting,
  );
}

/** @param done the entry that says it is done */
function jobCells({ day, text, caution }: Job, done: Entry | null): readonly string[] {
  const on = done ? shortDate(done.on) : "";
  return [
    done ? TICKED : "",
    shortDate(day),
    caution === null ? text : words.withCaution(text, caution),
    done?.who === undefined ? on : words.doneBy(on, done.who),
  ];
}

function weekItems(
  label: string,
  rows: readonly (readonly string[])[],
  width: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const style = {
    sizePt: TYPE_PT.body,
    leastRowMm: LEAST_ROW_MM,
    continued: paragraph(continued(label), width, TYPE_PT.body, ruler, { isBold: true }),
  };
  return [
    heading(label, width, TYPE_PT.code, ruler),
    ...tableRows(COLUMNS, rows, width, style, ruler),
  ];
}
