/** Panning with one button, for pointers that have no other way. */
import { panGesture } from "./gestures.ts";
import type { Tool } from "./tool.ts";

export const panTool: Tool = {
  cursor: "grab",
  press: panGesture,
  hover: () => undefined,
  key: () => false,
  leave: () => undefined,
};
