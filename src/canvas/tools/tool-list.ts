/** The tool behind each name. */
import type { ToolName } from "../../store/window/window-store.ts";
import { drawBedTool } from "./draw-bed.ts";
import { laterTool } from "./later-tool.ts";
import { markLengthTool } from "./mark-length.ts";
import { markSourceTool } from "./mark-source.ts";
import { measureTool } from "./measure.ts";
import { movePictureTool } from "./move-picture.ts";
import { panTool } from "./pan.ts";
import { selectTool } from "./select.ts";
import type { Tool } from "./tool.ts";

export const tools: Readonly<Record<ToolName, Tool>> = {
  select: selectTool,
  pan: panTool,
  "draw-bed": drawBedTool,
  "draw-outline": laterTool(
    "crosshair",
    async () => (await import("./draw-outline.ts")).drawOutlineTool,
  ),
  "mark-source": markSourceTool,
  measure: measureTool,
  "mark-length": markLengthTool,
  "move-picture": movePictureTool,
};
