import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { focusSheet } from "../scene/focus-sheet.ts";
import { isCoarsePointer } from "../scene/handles.ts";
import { useSheetModes } from "../scene/sheet-modes.ts";
import { useSketch } from "../tools/sketch-store.ts";
import { carrySelection } from "../tools/move-without-dragging.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";
import * as texts from "./words.ts";

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
    <div className="sheet-switches" role="group" aria-label={texts.pointer}>
      {isPenInUse && (
        <button
          type="button"
          title={texts.penHint}
          onClick={() => useSheetModes.setState({ isPenInUse: false })}
        >
          {texts.penOnly}
        </button>
      )}
      {isSelect && hasSelection && !isDrawing && (
        <button
          type="button"
          title={texts.moveHint}
          onClick={({ currentTarget }) => {
            carrySelection();
            focusSheet(currentTarget);
          }}
        >
          {texts.move}
        </button>
      )}
      {isSelect && (isCoarse || isSelectingSeveral) && (
        <button
          type="button"
          aria-pressed={isSelectingSeveral}
          title={texts.severalHint}
          onClick={() => useSheetModes.setState({ isSelectingSeveral: !isSelectingSeveral })}
        >
          {texts.several}
        </button>
      )}
      <button
        type="button"
        aria-pressed={isSnapping}
        title={texts.snapHint}
        onClick={() => setSnapping(!isSnapping)}
      >
        {texts.snap}
      </button>
    </div>
  );
}
