import { useCallback, useMemo } from "react";
import type { Point } from "../../core/geometry/point.ts";
import type { LabelBox } from "../../core/page/label-box.ts";
import { severitySign } from "../../core/checks/wording.ts";
import { type Finding, checkOf } from "../../core/checks/all-checks.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useSheetPlace } from "../../store/window/sheet-place.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type Brush, around } from "../draw/brush.ts";
import { drawClearGround } from "../draw/draw-clear-ground.ts";
import { drawHere } from "../draw/draw-here.ts";
import { drawHeldPairs, toneColour } from "../draw/draw-pairs.ts";
import { type Ring, drawRing, drawRingWords } from "../draw/draw-rings.ts";
import type { Box } from "../draw/draw-text.ts";
import { drawHandles, drawNamed } from "../draw/draw-selection.ts";
import { boxAround, offGround } from "../draw/ground-boxes.ts";
import { handleSizes, isCoarsePointer } from "../scene/handles.ts";
import { itemHandles } from "../scene/item-handles.ts";
import { useLiveIds } from "./live-ids.ts";
import type { GroundPainter } from "../ground/ground-painter.ts";
import { useView } from "../scene/view-store.ts";
import {
  boxesOf,
  isLarge,
  liveLabels,
  markBox,
  restingLabels,
  restingMarks,
} from "./sheet-labels.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { isHidden } from "../scene/locks.ts";
import { type PairLine, heldPairs, pairLine } from "../draw/pair-lines.ts";
import type { Drawing } from "./SheetShape.tsx";
import { itemsOf, sheetItems } from "../scene/sheet-items.ts";
import { shownRings } from "../draw/shown-rings.ts";
import { type Sketch, isAtRest, useSketch } from "../tools/sketch-store.ts";
import { useClearGround } from "./use-clear-ground.ts";
import { useCrossingShade } from "./use-crossing-shade.ts";
import { useSketchPainter } from "./use-sketch-painter.ts";

/** Draws distances, rings, handles and what a tool draws, over everything else; null while there is nothing. */
export function useOverlayDrawing(): Drawing | null {
  const plan = usePlanStore((state) => state.shown);
  const layoutId = usePlanStore((state) => state.layoutId);
  const result = usePlanStore((state) => state.result);
  const selection = useWindowStore((state) => state.selection);
  const openFinding = useWindowStore((state) => state.openFinding);
  const tool = useWindowStore((state) => state.tool);
  const hidden = useWindowStore((state) => state.hidden);
  const sketch = useSketch();
  const live = useLiveIds();
  const clear = useClearGround();
  const drawShade = useCrossingShade();
  const sketcher = useSketchPainter();
  const here = useSheetPlace((state) => state.place);
  const isMoving = useView((state) => state.isMoving);
  const painter = useGroundPainter();
  const isHeld = selection.length > 0 || live.size > 0;
  // Among thousands it is not looked for on every frame that the view moves.
  const finding = useMemo(() => findingOf(result, openFinding), [result, openFinding]);
  const draw = useCallback(
    (brush: Brush) => {
      drawShade?.(brush);
      if (clear) drawClearGround(brush, clear.rings);
      drawOverlay(brush, {
        words: wordsNow(brush, painter, live, isMoving),
        plan,
        layout: layoutOf(plan, layoutId),
        result,
        selection,
        live,
        finding,
        hasHandles: tool === "select" && sketch.region === null,
        sketch,
        drawSketch: sketcher?.drawSketch,
        hidden,
      });
      if (here) drawHere(brush, here);
    },
    [
      plan,
      layoutId,
      result,
      selection,
      live,
      finding,
      tool,
      sketch,
      clear,
      drawShade,
      sketcher,
      here,
      hidden,
      isMoving,
      painter,
    ],
  );
  const isAsked = Boolean(finding ?? drawShade ?? clear ?? here);
  return isHeld || isAsked || !isAtRest(sketch) ? draw : null;
}

function findingOf(result: CheckResult, id: string | null): Finding | undefined {
  // Findings are made when they are read: no frame pays for them while none is open.
  if (id === null) return undefined;
  const isIt = (finding: Finding) => finding.id === id;
  return result.findings.find(isIt) ?? result.accepted.find(isIt);
}

/** Boxes of all words that are drawn now. */
function wordsNow(
  brush: Brush,
  painter: GroundPainter | null,
  live: ReadonlySet<string>,
  isMoving: boolean,
): readonly LabelBox[] {
  const { plan, shown, layoutId, book, result, reading } = usePlanStore.getState();
  const { day, hidden } = useWindowStore.getState();
  const layout = layoutOf(plan, layoutId);
  // Among thousands they are not drawn while the view moves.
  if (isMoving && isLarge(layout)) return [];
  const resting = { plan, layout, book, result, day, hidden, painter, reading, isMoving };
  const atRest = restingLabels(brush, resting);
  const marks = restingMarks(brush, resting, boxesOf(atRest)).map(markBox);
  if (shown === plan) return [...boxesOf(atRest), ...marks];
  const moving = itemsOf(shown, layoutOf(shown, layoutId), book, live);
  const moved = boxesOf(liveLabels(brush, resting, shown, moving));
  return [...boxesOf(atRest, live), ...moved, ...marks];
}

interface DrawnRing {
  readonly ring: Ring;
  /** Where its words may stand. */
  readonly places: readonly Point[];
}

function drawWordsOfRings(
  brush: Brush,
  rings: readonly DrawnRing[],
  pills: readonly Box[],
  layoutId: string,
): void {
  if (rings.length === 0) return;
  // What is at rest will do: it is indexed already.
  const { plan, book } = usePlanStore.getState();
  const isOffGround = offGround(brush, sheetItems(plan, layoutOf(plan, layoutId), book));
  const taken = [...pills];
  for (const { ring, places } of rings) {
    const box = drawRingWords(brush, ring, places, taken, isOffGround);
    if (box) taken.push(box);
  }
}

interface Overlay {
  /** Boxes of codes and names, which lines run under. */
  readonly words: readonly LabelBox[];
  readonly plan: Plan;
  readonly layout: Layout;
  readonly result: CheckResult;
  readonly selection: readonly string[];
  readonly live: ReadonlySet<string>;
  readonly finding: Finding | undefined;
  readonly hasHandles: boolean;
  readonly sketch: Sketch;
  readonly drawSketch: NonNullable<ReturnType<typeof useSketchPainter>>["drawSketch"] | undefined;
  readonly hidden: ReadonlySet<HideableKind>;
}

function drawOverlay(brush: Brush, overlay: Overlay): void {
  const { plan, layout, result, selection, finding, sketch, hidden } = overlay;
  const { book } = usePlanStore.getState();
  const { colours } = brush;
  const selected = new Set(selection);
  const items = itemsOf(plan, layout, book, selected).filter((item) => !isHidden(item, hidden));
  const shown = hidden.has("rings") ? [] : shownRings(result, selection, plan.units, colours);
  const { words } = overlay;
  const rings: DrawnRing[] = [];
  around(brush, words, () => {
    for (const ring of shown) rings.push({ ring, places: drawRing(brush, ring) });
    if (!finding) return;
    const named = itemsOf(plan, layout, book, new Set(finding.subjects));
    drawNamed(
      brush,
      named.filter((item) => !selected.has(item.id)),
      toneColour(colours, finding.severity),
    );
  });
  const pairs = hidden.has("conflict lines")
    ? []
    : heldPairs(result, plan.units, overlay.live, sketch.isMoving);
  const [only] = items;
  if (only && items.length === 1 && overlay.hasHandles && !sketch.isMoving) {
    const sizes = handleSizes(isCoarsePointer());
    const all = sheetItems(plan, layout, book);
    drawHandles(brush, itemHandles(only, all, brush.view, sizes), sizes);
  }
  const lines = [...openFindingLine(finding, pairs, plan.units), ...pairs];
  const pills = drawHeldPairs(
    brush,
    lines,
    items.slice(0, 2).map((item) => boxAround(brush, item)),
    words,
  );
  drawWordsOfRings(brush, rings, pills, layout.id);
  const dropBed = sketch.dropBed
    ? itemsOf(plan, layout, book, new Set([sketch.dropBed]))[0]
    : undefined;
  overlay.drawSketch?.(brush, sketch, plan.units, dropBed, pills);
}

/** Where the opened finding is measured, unless a pair of the selection shows it already. */
function openFindingLine(
  finding: Finding | undefined,
  shown: readonly PairLine[],
  unit: LengthUnit,
): readonly PairLine[] {
  if (!finding?.where) return [];
  const [first = "", second = ""] = finding.subjects;
  const isShown = shown.some(({ ids }) => ids.includes(first) && ids.includes(second));
  if (isShown) return [];
  const [atRisk] = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  if (atRisk) return [pairLine(atRisk, unit)];
  const measured =
    finding.measuredM === undefined ? "" : ` ${formatLength(finding.measuredM, unit)}`;
  return [
    {
      ids: [first, second],
      ends: finding.where,
      tone: finding.severity,
      text: `${severitySign[finding.severity]}${measured}`,
      isLight: false,
    },
  ];
}
