/** Hatches as SVG: the pattern definitions once per page, and fills and swatches that use them. */
import { memo } from "react";
import { type Hatch, type HatchLines, type HatchMarks, hatches } from "../../core/page/hatch.ts";
import { type Theme, usePreferences } from "./preferences.ts";

function patternId(hatch: Hatch, part: number): string {
  return `hatch-${hatch.id}-${part}`;
}

/** Every hatch in the colours of the theme. Each set of lines is a pattern of its own. */
export const HatchPatterns = memo(function HatchPatterns() {
  const theme = usePreferences((state) => state.theme);
  return (
    <svg className="hatch-patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="overlap-ticks" patternUnits="userSpaceOnUse" width={4} height={5}>
          <path className="overlap-tick" d="M1 0v5" />
        </pattern>
        {hatches.flatMap((hatch) => [
          ...hatch.lines.map((lines, part) => (
            <LinePattern
              key={patternId(hatch, part)}
              id={patternId(hatch, part)}
              lines={lines}
              ink={hatch.ink[theme]}
            />
          )),
          hatch.marks && (
            <MarkPattern
              key={patternId(hatch, hatch.lines.length)}
              id={patternId(hatch, hatch.lines.length)}
              marks={hatch.marks}
              ink={hatch.ink[theme]}
            />
          ),
        ])}
      </defs>
    </svg>
  );
});

function LinePattern(props: { id: string; lines: HatchLines; ink: string }) {
  const { id, lines, ink } = props;
  const { angleDeg, spacing, dash } = lines;
  const period = dash ? dash[0] + dash[1] : spacing;
  return (
    <pattern
      id={id}
      patternUnits="userSpaceOnUse"
      width={period}
      height={spacing}
      patternTransform={`rotate(${-angleDeg})`}
    >
      <line x1={0} y1={spacing / 2} x2={dash?.[0] ?? period} y2={spacing / 2} stroke={ink} />
    </pattern>
  );
}

/** Marks on a staggered lattice: every second row is shifted by half a spacing. */
function MarkPattern({ id, marks, ink }: { id: string; marks: HatchMarks; ink: string }) {
  const { spacing } = marks;
  const rowStep = spacing * Math.sqrt(0.75);
  const places = [
    { x: spacing / 2, y: rowStep / 2 },
    { x: 0, y: rowStep * 1.5 },
    { x: spacing, y: rowStep * 1.5 },
  ];
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={spacing} height={rowStep * 2}>
      {places.map(({ x, y }) => (
        <Mark key={x} marks={marks} x={x} y={y} ink={ink} />
      ))}
    </pattern>
  );
}

function Mark({ marks, x, y, ink }: { marks: HatchMarks; x: number; y: number; ink: string }) {
  const { mark, radius } = marks;
  if (mark === "plus") {
    const path = `M${x - radius} ${y}h${radius * 2}M${x} ${y - radius}v${radius * 2}`;
    return <path d={path} stroke={ink} fill="none" />;
  }
  return mark === "dot" ? (
    <circle cx={x} cy={y} r={radius} fill={ink} />
  ) : (
    <circle cx={x} cy={y} r={radius} fill="none" stroke={ink} />
  );
}

interface HatchRectProps {
  readonly hatch: Hatch | undefined;
  readonly theme: Theme;
  readonly x: string;
  readonly y: number;
  readonly width: string;
  readonly height: number;
}

/** A hatched rectangle with an ink outline. */
export function HatchRect({ hatch, theme, ...place }: HatchRectProps) {
  const parts = hatch ? hatch.lines.length + (hatch.marks ? 1 : 0) : 0;
  return (
    <>
      <rect {...place} fill={hatch?.tint[theme] ?? "none"} />
      {hatch &&
        Array.from({ length: parts }, (_, part) => (
          <rect key={part} {...place} fill={`url(#${patternId(hatch, part)})`} />
        ))}
      <rect {...place} fill="none" className="hatch-outline" />
    </>
  );
}

/** The hatch of a crossing group as a small square. */
export const HatchSwatch = memo(function HatchSwatch({ hatch }: { hatch: Hatch | undefined }) {
  const theme = usePreferences((state) => state.theme);
  return (
    <svg className="swatch" width="18" height="18" aria-hidden="true" focusable="false">
      <HatchRect hatch={hatch} theme={theme} x="0.5" y={0.5} width="17" height={17} />
    </svg>
  );
});
