import { useId, useState } from "react";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { formatArea, formatLength } from "../../core/model/length.ts";
import type { Plan } from "../../core/model/plan.ts";
import { ringProblem } from "../../core/model/ring.ts";
import { type CornersRead, readCornerList } from "../../core/outlines/corner-list.ts";
import {
  type OutlineTarget,
  keepOutline,
  leastCorners,
  outlineShape,
  outlineTargets,
} from "../../core/outlines/drawn-outline.ts";
import { askSource } from "../../store/window/source-ask.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { counted } from "../state/selected-objects.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import { cornerWords as words } from "./corner-words.ts";
import "./corners.css";

interface CornerListDialogProps {
  readonly target: OutlineTarget;
  readonly onClose: () => void;
}

type Zero = "top" | "north";

/** An outline from a typed or pasted list: shown as it is read, kept as one step to undo. */
export function CornerListDialog({ target: first, onClose }: CornerListDialogProps) {
  const plan = useShownPlan();
  const [text, setText] = useState("");
  const [target, setTarget] = useState(first);
  const [zero, setZero] = useState<Zero>("top");
  const listId = useId();
  const { upBearingDeg } = plan.site;
  const read = readCornerList(text, {
    unit: plan.units,
    decimalMark: decimalMark(),
    zeroDeg: zero === "north" ? -upBearingDeg : 0,
  });
  const problem = problemOf(read, target);
  const corners = read.ok ? read.list.corners : [];
  const send = onFormSubmit(() => {
    if (problem !== null) {
      document.getElementById(listId)?.focus();
      return;
    }
    onClose();
    keep(target, corners);
  });
  return (
    <Dialog title={words.title} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={send}>
        <ListField id={listId} text={text} onType={setText} />
        <ChoiceField
          label={words.draws}
          value={target}
          choices={outlineTargets}
          onPick={setTarget}
          hint={target === "site" && plan.site.outline ? words.replaces : undefined}
        />
        {upBearingDeg !== 0 && (
          <ChoiceField label={words.zero} value={zero} choices={zeroChoices} onPick={setZero} />
        )}
        <OutlinePicture corners={corners} />
        <p
          id={`${listId}-told`}
          role="status"
          className={problem === null || text === "" ? "soft" : "field-reason"}
        >
          {problem ?? told(read, plan)}
        </p>
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {target === "site" ? words.apply : words.add}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface ListFieldProps {
  readonly id: string;
  readonly text: string;
  readonly onType: (text: string) => void;
}

function ListField({ id, text, onType }: ListFieldProps) {
  return (
    <>
      <label htmlFor={id}>{words.list}</label>
      <textarea
        id={id}
        className="corner-list"
        rows={8}
        spellCheck={false}
        placeholder={words.example}
        aria-describedby={`${id}-about ${id}-told`}
        value={text}
        onChange={(event) => onType(event.target.value)}
      />
      <p className="field-hint" id={`${id}-about`}>
        {words.about}
      </p>
    </>
  );
}

const zeroChoices = [
  { value: "top", label: words.fromTop },
  { value: "north", label: words.fromNorth },
] as const;

const asRing = (corners: readonly Point[]) => corners.map(({ x, y }): [number, number] => [x, y]);

/** Why nothing can be drawn from the list, or null. */
function problemOf(read: CornersRead, target: OutlineTarget): string | null {
  if (!read.ok) return read.reason;
  const { corners } = read.list;
  const least = leastCorners(target);
  if (corners.length < least) {
    return corners.length === 0 ? words.none : words.needs(counted(least, ...words.corner));
  }
  const problem = corners.length < 3 ? null : ringProblem(asRing(corners));
  return problem === null ? null : words.wouldGive(problem);
}

function told(read: CornersRead, { units }: Plan): string {
  if (!read.ok) return "";
  const { corners, curves, curveErrorM, closingM } = read.list;
  const count = counted(corners.length, ...words.corner);
  if (corners.length < 3) return count;
  const area = outlineArea(outlineOf({ shape: "polygon", corners: asRing(corners) }));
  const parts = [words.read(count, formatArea(area, units))];
  parts.push(words.closes(formatLength(closingM, units)));
  if (curves > 0) {
    // Never said to be nearer than it is.
    const error = formatLength(Math.max(0.01, Math.ceil(curveErrorM * 100 - 1e-6) / 100), units);
    parts.push(words.curves(counted(curves, ...words.curve), error));
  }
  return parts.join(" ");
}

function keep(target: OutlineTarget, corners: readonly Point[]): void {
  const { plan, layoutId } = planNow();
  if (target === "pollen") {
    askSource(outlineShape(target, corners));
    return;
  }
  const { edit, id } = keepOutline(plan, layoutId, target, corners);
  commit(edit);
  viewNow().showSheet();
  if (id === null) windowNow().bringIntoView("all");
  else {
    windowNow().select([id]);
    windowNow().bringIntoView([id]);
  }
}

const PICTURE = { width: 320, height: 180, inset: 14 } as const;

/** The corners in their shape, the first one ringed. */
function OutlinePicture({ corners }: { readonly corners: readonly Point[] }) {
  const [first] = corners;
  if (!first || corners.length < 2) return null;
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [minX, maxX, minY, maxY] = [
    Math.min(...xs),
    Math.max(...xs),
    Math.min(...ys),
    Math.max(...ys),
  ];
  const { width, height, inset } = PICTURE;
  const scale = Math.min(
    (width - 2 * inset) / Math.max(maxX - minX, 0.1),
    (height - 2 * inset) / Math.max(maxY - minY, 0.1),
  );
  const placed = corners.map(({ x, y }) => ({
    x: inset + (x - minX) * scale,
    y: height - inset - (y - minY) * scale,
  }));
  return (
    <svg
      className="corner-picture"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words.preview}
    >
      <polygon points={placed.map(({ x, y }) => `${x},${y}`).join(" ")} />
      {placed.slice(0, 1).map(({ x, y }) => (
        <circle key="first" cx={x} cy={y} r={5} />
      ))}
    </svg>
  );
}
