import { type ReactNode, type RefObject, memo, useEffect } from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import type { Plan } from "../../core/model/plan.ts";
import { BloomRowLine } from "./BloomRowLine.tsx";
import { startLimits } from "./bar-shift.ts";
import { LINE_PX } from "./bloom-height.ts";
import type { BloomLine } from "./bloom-order.ts";
import { bloomRowWords, startWords, undatedWords } from "./bloom-words.ts";
import { type BloomRow, type UndatedRow } from "./bloom-rows.ts";
import { windowNow } from "../state/plan-actions.ts";
import { type TimeAxis, axisDays, startPercent, widthPercent } from "./time-axis.ts";

/** Height of what stays above the lines: slider and months. */
const LIST_TOP_PX = 60;

interface BloomLineListProps {
  readonly lines: readonly BloomLine[];
  readonly axis: TimeAxis;
  readonly season: Plan["season"];
  readonly hatchOf: ReadonlyMap<string, Hatch>;
  /** Index of the first line to draw, and of the first one not to draw. */
  readonly from: number;
  readonly to: number;
  /** Line the focus is in: drawn wherever it lies, so that the focus is not lost. */
  readonly focused: string | null;
  readonly scroller: RefObject<HTMLDivElement | null>;
}

/** The lines in view, and the one that has the focus. */
export const BloomLineList = memo(function BloomLineList(props: BloomLineListProps) {
  const { lines, axis, season, hatchOf, from, to, focused, scroller } = props;
  const selectedAt = lines.findIndex((line) => line.kind === "row" && line.row.isSelected);
  const selectedId = lines[selectedAt]?.id;
  useEffect(() => {
    const element = scroller.current;
    if (selectedId === undefined || !element || selectedAt < 0) return;
    const room = element.clientHeight - LIST_TOP_PX - LINE_PX * 2;
    const top = selectedAt * LINE_PX;
    if (top < element.scrollTop) element.scrollTo({ top });
    else if (top > element.scrollTop + room) element.scrollTo({ top: top - room });
  }, [selectedId, selectedAt, scroller]);
  return (
    <ul className="bloom-rows" style={{ height: `${lines.length * LINE_PX}px` }}>
      {lines.map((line, index) =>
        (index >= from && index < to) || line.id === focused ? (
          <li
            key={line.id}
            className={line.kind === "heading" ? "bloom-row bloom-heading" : "bloom-row"}
            style={{ top: `${index * LINE_PX}px` }}
            aria-setsize={lines.length}
            aria-posinset={index + 1}
            data-line={line.id}
          >
            <Line line={line} axis={axis} season={season} hatchOf={hatchOf} />
          </li>
        ) : null,
      )}
    </ul>
  );
});

type LineProps = Pick<BloomLineListProps, "axis" | "season" | "hatchOf"> & {
  readonly line: BloomLine;
};

function Line({ line, ...rest }: LineProps): ReactNode {
  switch (line.kind) {
    case "heading":
      return line.text;
    case "undated":
      return <UndatedLine row={line.row} />;
    case "row":
      return <DatedLine row={line.row} {...rest} />;
  }
}

function UndatedLine({ row }: { readonly row: UndatedRow }) {
  const { id, code, name } = row;
  const words = undatedWords(row);
  return (
    <>
      <button
        type="button"
        className="bloom-code"
        title={`${code} ${name}`}
        onClick={() => windowNow().select([id])}
      >
        {code} <span className="bloom-name">{name}</span>
      </button>
      <span className="soft bloom-undated" title={words}>
        {words}
      </span>
    </>
  );
}

type DatedLineProps = Omit<LineProps, "line"> & { readonly row: BloomRow };

function DatedLine({ row, axis, season, hatchOf }: DatedLineProps) {
  const start = row.start?.date ?? 0;
  const limits = startLimits(season, start);
  return (
    <BloomRowLine
      id={row.id}
      code={row.code}
      name={row.name}
      words={bloomRowWords(row)}
      hatch={hatchOf.get(row.group)}
      isSelected={row.isSelected}
      basis={row.basis}
      likely={span(axis, row.likely)}
      outer={span(axis, row.outer)}
      overlaps={row.overlaps.map((window) => span(axis, window)).join(" ")}
      otherOverlaps={row.otherOverlaps.map((window) => span(axis, window)).join(" ")}
      startText={startWords(row)}
      start={start}
      earliest={limits.first}
      latest={limits.last}
      flower={row.likely.first}
      axisDays={axisDays(axis)}
    />
  );
}

/** A window as `start,width` in percent of the axis: text, so that a row knows when it is unchanged. */
function span(axis: TimeAxis, { first, last }: { first: number; last: number }): string {
  return `${startPercent(axis, first)},${widthPercent(axis, first, last)}`;
}
