/** Words of sheet on the screen. */

export const whatIsBeingDrawn = "What is being drawn";
export const sheetOf = (siteName: string) =>
  `Sheet: drawing of ${siteName}, use the tables for a list of all objects`;
export const pointer = "Pointer";
export const penHint = "A pen is in use: fingers only move the view";
export const penOnly = "Pen only ×";
export const moveHint = "Move what is selected without dragging: then click where its middle goes";
export const move = "Move";
export const severalHint = "Taps add to what is selected";
export const several = "Several";
export const snapHint = "Snap to edges, middles, equal gaps and steps. Hold Alt to suspend it.";
export const snap = "Snap";
export const exactSize = "Exact size";
export const apply = "Apply";
export const zoom = "Zoom";
export const zoomOut = "Zoom out";
export const zoomIn = "Zoom in";
export const enterApplies = "Enter applies it, Escape cancels.";
export const shadeFailed = "Shade: it could not be worked out.";
