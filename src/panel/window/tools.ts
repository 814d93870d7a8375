/** The sheet's tools: name, key and the strokes of their sign, in a 16 by 16 box. */
import type { ToolName } from "../../store/window/window-store.ts";
import * as words from "./words.ts";

export interface ToolEntry {
  readonly name: ToolName;
  readonly label: string;
  /** The letter that picks it, upper case. */
  readonly key: string;
  /** SVG path data, stroked. */
  readonly strokes: string;
}

export const toolEntries: readonly ToolEntry[] = [
  { name: "select", label: words.selectTool, key: "V", strokes: "M3 2l9 7-4.5.8L5 14z" },
  {
    name: "pan",
    label: words.panTool,
    key: "H",
    strokes: "M8 1.5v13M1.5 8h13M6 3.5l2-2 2 2M6 12.5l2 2 2-2M3.5 6l-2 2 2 2M12.5 6l2 2-2 2",
  },
  { name: "draw-bed", label: words.drawBedTool, key: "B", strokes: "M1.5 11.5l11-6 2 3-11 6z" },
  {
    name: "draw-outline",
    label: words.drawOutlineTool,
    key: "O",
    strokes: "M2 12l2-8 6-2 4 5-4 2 1 5z",
  },
  {
    name: "mark-source",
    label: words.pollenSourceTool,
    key: "P",
    strokes: "M8 6.5v3M6.5 8h3M8 2.5a5.5 5.5 0 1 0 .01 0z",
  },
  {
    name: "measure",
    label: words.measureTool,
    key: "M",
    strokes: "M2 14L14 2M1 11.5l3.5 3.5M11.5 1L15 4.5M6 8l1.5 1.5M8.5 5.5L10 7",
  },
];
