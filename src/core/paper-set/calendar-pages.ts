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
import { type Page, type TextRuler, area, boxRing } from "../page/scene.ts";
import { type Job, jobsByWeek, seasonJobs } from "../fieldwork/season-calendar.ts";

const TICK_MM = 3;
const INDENT_MM = 6;

export function calendarPages(checked: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const width = noteWidth(setting.frame);
  const weeks = jobsByWeek(seasonJobs(checked));
  const items = weeks.flatMap(({ label, monday, jobs }) => [
    heading(`Week ${label}, from ${longDate(monday)}`, width, TYPE_PT.code, setting.ruler),
    ...jobs.map((job) => jobItem(job, width, setting.ruler)),
  ]);
  const empty = paragraph(
    "No dates are known: give the plantings a start date.",
    width,
    TYPE_PT.body,
    setting.ruler,
  );
  return flowPages("Season calendar", items.length > 0 ? items : [empty], setting);
}

function jobItem({ day, text, caution }: Job, width: number, ruler: TextRuler): FlowItem {
  const words = `${shortDate(day)}: ${text}${caution === null ? "" : `. Caution: ${caution}`}`;
  const lines = wrapText(words, width - INDENT_MM, TYPE_PT.body, ruler);
  return {
    height: lines.length * lineHeight(TYPE_PT.body) + 1,
    draw: (left, top) => [
      area(boxRing({ left, top: top + 0.6, width: TICK_MM, height: TICK_MM }), null, {
        widthMm: 0.25,
      }),
      ...textLines(lines, { x: left + INDENT_MM, y: top }, TYPE_PT.body),
    ],
  };
}
