/** Words of compare on the screen. */

export const viewOfTheLayouts = "View of the layouts";
export const zoomIn = "Zoom in";
export const zoomOut = "Zoom out";
export const fitAll = "Fit all";
export const drawingOf = (title: string) =>
  `Drawing of ${title}; arrow keys move it, plus and minus zoom, the table below says what it shows`;
