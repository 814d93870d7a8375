import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { focusSheet } from "../scene/focus-sheet.ts";
import { isCoarsePointer } from "../scene/handles.ts";
import { useSheetModes } from "../scene/sheet-modes.ts";
import { useSketch } from "../tools/sketch-store.ts";
import { carrySelection } from "../tools/move-without-dragging.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";

/** How the pointer works on the sheet: snapping, selecting several without a key, the pen. */
export function SheetSwitches() {
  const isSnapping = useSheetPreferences((state) => state.isSnapping);
  const setSnapping = useSheetPreferences((state) => state.setSnapping);
  const { isSelectingSeveral, isPenInUse } = useSheetModes();
  const isSelect = useWindowStore((state) => state.tool === "select");
  const hasSelection = useWindowStore((state) => state.selection.length > 0);
  // On a phone the bar of what is being drawn needs their room.
  const hasRoom = useView((state) => state.widthPx >= NARROW_PX);
  const isDrawing = useSketch((state) => state.bar !== null);
  const isCoarse = isCoarsePointer();
  if (isDrawing && !hasRoom) return null;
  return (
    <div className="sheet-switches" role="group" aria-label="Pointer">
      {isPenInUse && (
        <button
          type="button"
          title="A pen is in use: fingers only move the view"
          onClick={() => useSheetModes.setState({ isPenInUse: false })}
        >
          Pen only ×
        </button>
      )}
      {isSelect && hasSelection && !isDrawing && (
        <button
          type="button"
          title="Move what is selected without dragging: then click where its middle goes"
          onClick={({ currentTarget }) => {
            carrySelection();
            focusSheet(currentTarget);
          }}
        >
          Move
        </button>
      )}
      {isSelect && (isCoarse || isSelectingSeveral) && (
        <button
          type="button"
          aria-pressed={isSelectingSeveral}
          title="Taps add to what is selected"
          onClick={() => useSheetModes.setState({ isSelectingSeveral: !isSelectingSeveral })}
        >
          Several
        </button>
      )}
      <button
        type="button"
        aria-pressed={isSnapping}
        title="Come to rest on edges, middles, equal gaps and steps. Hold Alt to suspend it."
        onClick={() => setSnapping(!isSnapping)}
      >
        Snap
      </button>
    </div>
  );
}
