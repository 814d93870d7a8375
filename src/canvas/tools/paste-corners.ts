/** A list of corners pasted while an outline is drawn goes on with it. */
import { readCornerList } from "../../core/outlines/corner-list.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { pasteCorners } from "./draw-outline.ts";
import { outlineDraftWords as words } from "./outline-draft-words.ts";

export function pasteCornerText(text: string): void {
  const { units } = usePlanStore.getState().plan;
  const read = readCornerList(text, { unit: units, decimalMark: decimalMark(), zeroDeg: 0 });
  if (read.ok && read.list.corners.length > 0) pasteCorners(read.list.corners);
  else {
    const reason = read.ok ? words.noCorner : read.reason;
    useWindowStore.getState().announce(words.notPasted(reason));
  }
}
