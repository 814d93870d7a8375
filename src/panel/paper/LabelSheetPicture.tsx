import { measureFaults, measuresOf } from "../../core/labels/label-measures.ts";
import {
  type LabelSize,
  labelBoxOf,
  labelFaces,
  labelsOnSheet,
} from "../../core/labels/label-sizes.ts";
import { labelWords } from "./label-words.ts";

interface LabelSheetPictureProps {
  readonly size: LabelSize;
  readonly startAt: number;
}

/** The sheet drawn with its labels, those already used crossed out: to be held against the real one. */
export function LabelSheetPicture({ size, startAt }: LabelSheetPictureProps) {
  const { page, columns, rows } = size;
  const isDrawn = measureFaults(measuresOf(size)).every(
    ({ field }) => !["columns", "rows", "pageWidth", "pageHeight"].includes(field),
  );
  if (!isDrawn || page.heightMm <= 0) return null;
  const places = Array.from({ length: labelsOnSheet(size) }, (_, place) => place);
  return (
    <svg
      className="label-sheet"
      role="img"
      aria-label={labelWords.picture(columns, rows, startAt)}
      viewBox={`-1 -1 ${page.widthMm + 2} ${page.heightMm + 2}`}
    >
      <rect className="label-page" width={page.widthMm} height={page.heightMm} />
      {places.map((place) => {
        const box = labelBoxOf(size, place);
        const [first, second] = labelFaces(box, size.fold);
        const isUsed = place < startAt - 1;
        return (
          <g key={place} className={isUsed ? "label-used" : "label-free"}>
            <rect x={box.left} y={box.top} width={box.width} height={box.height} />
            {isUsed && <path d={`M${box.left} ${box.top}l${box.width} ${box.height}`} />}
            {first && second && (
              <path
                className="label-fold"
                d={
                  size.fold === "over"
                    ? `M${box.left} ${second.box.top}h${box.width}`
                    : `M${first.box.left + first.box.width} ${box.top}v${box.height}M${second.box.left} ${box.top}v${box.height}`
                }
              />
            )}
          </g>
        );
      })}
    </svg>
  );
}
