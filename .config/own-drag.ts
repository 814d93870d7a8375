/**
 * The built site without the canvas library's own dragging: the sheet's tools move things
 * (src/canvas/tools), nothing drawn is `draggable`, and the library would listen to every move of
 * the pointer in the window to look for what is.
 */
import type { Plugin } from "vite";

const NOTHING_DRAGGED = `
export const DD = {
  isDragging: false,
  node: undefined,
  _dragElements: new Map(),
  _listenToWindow() {},
};
`;

export function ownDrag(): Plugin {
  return {
    name: "own-drag",
    enforce: "pre",
    load: {
      filter: { id: /\/konva\/lib\/DragAndDrop\.js$/ },
      handler: () => NOTHING_DRAGGED,
    },
  };
}
