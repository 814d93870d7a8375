/** The tool behind each name. */
import type { ToolName } from "../../store/window/window-store.ts";
import { drawingTool } from "./late-tool.ts";
import { panTool } from "./pan.ts";
import { selectTool } from "./select.ts";
import type { Tool } from "./tool.ts";

export const tools: Readonly<Record<ToolName, Tool>> = {
  select: selectTool,
  pan: panTool,
  "draw-bed": drawingTool("draw-bed", "crosshair"),
  "draw-outline": drawingTool("draw-outline", "crosshair"),
  "mark-source": drawingTool("mark-source", "crosshair"),
  measure: drawingTool("measure", "crosshair"),
  "mark-length": drawingTool("mark-length", "crosshair"),
  "move-picture": drawingTool("move-picture", "move"),
};
