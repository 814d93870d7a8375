/** The tools that draw and measure, the handles and dragging: fetched once the sheet stands. */
import { drawBedTool } from "./draw-bed.ts";
import { drawOutlineTool } from "./draw-outline.ts";
import { markLengthTool } from "./mark-length.ts";
import { markSourceTool } from "./mark-source.ts";
import { measureTool } from "./measure.ts";
import { movePictureTool } from "./move-picture.ts";
import { moveGesture } from "./move-gesture.ts";
import { handleGesture } from "./shape-gestures.ts";
import { shownGaps } from "../snap/neighbour-gaps.ts";
import type { Tool } from "./tool.ts";

export { handleGesture, moveGesture, shownGaps };

export const drawingTools = {
  "draw-bed": drawBedTool,
  "draw-outline": drawOutlineTool,
  "mark-source": markSourceTool,
  measure: measureTool,
  "mark-length": markLengthTool,
  "move-picture": movePictureTool,
} as const satisfies Readonly<Record<string, Tool>>;
