import { useLayoutEffect, useRef } from "react";
import { BOX, type DrawnBox, type LineDrawing as Drawing } from "./line-drawing.ts";
import { DRAWING, boxLines, plannedLines } from "./line-words.ts";
import * as texts from "./words.ts";

interface LineDrawingProps {
  readonly drawing: Drawing;
  readonly pickedId: string | null;
  readonly onPick: (lotId: string) => void;
}

/** Years from left to right. The table below says the same in words, and is what keys reach. */
export function LineDrawing({ drawing, pickedId, onPick }: LineDrawingProps) {
  const { width, height, columns, boxes, strokes } = drawing;
  const scroll = useRef<HTMLDivElement>(null);
  // The last years are asked for first.
  useLayoutEffect(() => {
    scroll.current?.scrollTo({ left: width });
  }, [width]);
  return (
    <div ref={scroll} className="line-scroll" role="img" aria-label={DRAWING} tabIndex={0}>
      <svg
        className="line-drawing"
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        aria-hidden="true"
      >
        <defs>
          <marker
            id="line-arrow"
            viewBox="0 0 8 8"
            refX="7"
            refY="4"
            markerWidth="10"
            markerUnits="userSpaceOnUse"
            markerHeight="10"
            orient="auto"
          >
            <path d="M0,0L8,4L0,8Z" />
          </marker>
        </defs>
        {columns.map(({ label, x }) => (
          <g key={x} className="line-year">
            <path d={`M${x},22V${height}`} />
            <text x={x} y={14} textAnchor="middle">
              {label}
            </text>
          </g>
        ))}
        {strokes.map(({ from, to, path, isPlanned, isAfterCrossing }) => (
          <g key={`${from} ${to}`}>
            <path
              className={`line-stroke${isPlanned ? " planned" : ""}${isAfterCrossing ? " crossed" : ""}`}
              d={path}
              markerEnd="url(#line-arrow)"
            />
          </g>
        ))}
        {boxes.map((box) => (
          <LotBox key={box.id} box={box} isPicked={box.id === pickedId} onPick={onPick} />
        ))}
      </svg>
    </div>
  );
}

interface LotBoxProps {
  readonly box: DrawnBox;
  readonly isPicked: boolean;
  readonly onPick: (lotId: string) => void;
}

function LotBox({ box, isPicked, onPick }: LotBoxProps) {
  const { x, y, line, planned } = box;
  const lines = line ? boxLines(line) : planned ? plannedLines(planned) : [];
  const title = line?.lot.code ?? texts.thisSeason;
  const isGone = line !== null && line.lot.state !== "in stock";
  const names = [
    "line-box",
    isPicked ? "picked" : "",
    planned ? "planned" : "",
    line?.past.hasCrossing === true ? "crossed" : "",
    isGone ? "gone" : "",
  ];
  return (
    <g
      className={names.filter((name) => name !== "").join(" ")}
      transform={`translate(${x},${y})`}
      onClick={() => line && onPick(line.lot.id)}
    >
      <rect width={BOX.width} height={BOX.height} rx="3" />
      <text className="line-code" x="10" y="20">
        {shortened(title, 16)}
      </text>
      {lines.map((words, at) => (
        <text key={at} x="10" y={40 + at * 17}>
          {shortened(words, 21)}
        </text>
      ))}
    </g>
  );
}

/** The whole of it stands in the table. */
function shortened(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}
